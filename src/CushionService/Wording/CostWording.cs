using CushionService.Contract.Answers;
using CushionService.Engine.Costing;
using CushionService.Engine.Materials;
using CushionService.Engine.Measures;
using CushionService.Engine.Messages;
using CushionService.Engine.Specifications;
using CushionService.Engine.Specifications.Pricing;

namespace CushionService.Wording;

/// <summary>Puts what an order costs into the contract's records.</summary>
internal static class CostWording
{
    /// <summary>The cost.</summary>
    /// <param name="cost">The engine's cost.</param>
    /// <param name="book">The price book that the prices are from; null for the order's own alone.</param>
    /// <param name="writer">Writes how additions come about.</param>
    public static CostAnswer Of(Cost cost, PriceBookSpecification? book, MessageWriter writer) =>
        new()
        {
            Currency = cost.Total.Currency.Code,
            PriceBook = book is null ? null : new PriceBookAnswer { Name = book.Name, Version = book.Version },
            Lines = [.. cost.Lines.Select(Line)],
            Labour =
            [
                .. cost.Labour.Select(line => new LabourLineAnswer
                {
                    Cushion = line.Cushion,
                    Operation = line.Operation,
                    Times = line.Times,
                    Minutes = (double)line.Minutes,
                    Amount = line.Amount.ToString(),
                }),
            ],
            Additions = [.. cost.Additions.Select(addition => Addition(addition, writer))],
            Shares =
            [
                .. cost.Shares.Select(share => new CostShareAnswer
                {
                    Cushion = share.Cushion,
                    Quantity = share.Quantity,
                    Amount = share.Amount.ToString(),
                }),
            ],
            Groups =
            [
                .. cost.Groups.Select(group => new CostGroupAnswer
                {
                    Group = group.Group,
                    Quantity = group.Quantity,
                    Amount = group.Amount.ToString(),
                }),
            ],
            Total = cost.Total.ToString(),
            Tax = cost.Tax is null ? "excluded" : "included",
            BeforeTax = cost.BeforeTax.ToString(),
            Unpriced = cost.Unpriced,
        };

    private static CostLineAnswer Line(CostLine line) =>
        new()
        {
            Item = line.Material.Item,
            Label = line.Material.Label,
            Quantity = (double)line.Material.Quantity,
            Unit = line.Material.Unit,
            UnitPrice = Price(line.UnitPrice),
            CutFee = line.CutFee?.ToString(),
            Amount = line.Amount.ToString(),
        };

    private static CostAdditionAnswer Addition(CostAddition addition, MessageWriter writer) =>
        new()
        {
            Kind = addition.Kind,
            Amount = addition.Amount.ToString(),
            Label = addition.Label ?? (addition.Kind == CostAdditionKind.Tax ? writer.Text(AnswerTexts.Tax) : null),
            Quantity = (double?)addition.Quantity,
            UnitPrice = addition.UnitPrice is { } each ? Price(each) : null,
            Because = writer.Text(addition.Because),
        };

    // A unit price may be finer than the smallest coin, and is never rounded.
    private static string Price(Money price)
    {
        string coins = price.ToString();
        string exact = price.Amount.ToString("0.######", System.Globalization.CultureInfo.InvariantCulture);
        return exact.Length > coins.Length ? exact : coins;
    }

    /// <summary>What the total leaves out.</summary>
    /// <param name="cost">The engine's cost.</param>
    /// <param name="materials">What is bought, whose labels name it.</param>
    /// <returns>Warnings, not refusals: code <c>unpriced</c> for items without a price, and <c>price-without-size</c> for
    /// a price each of what is made to size.</returns>
    public static IEnumerable<Violation> Left(Cost cost, IEnumerable<Material> materials)
    {
        if (!cost.Unpriced.IsEmpty)
        {
            yield return new Violation("/prices", "unpriced", AnswerTexts.Unpriced(cost.Unpriced.Select(Name)));
        }

        foreach (Material material in cost.Unsized)
        {
            yield return new Violation(
                "/prices",
                "price-without-size",
                AnswerTexts.PriceWithoutSize(Name(material.Item), material.Because)
            );
        }

        string Name(string item) => materials.FirstOrDefault(material => material.Item == item)?.Label ?? item;
    }
}
