using CushionService.Contract.Answers;
using CushionService.Documents.Sheets;
using CushionService.Engine.Measures;
using CushionService.Engine.Specifications.Stocks;

namespace CushionService.Documents.CutSheets;

/// <summary>What to buy: the fabric by the yard and by the metre side by side, then everything else.</summary>
internal static class BuyingSection
{
    /// <summary>All there is to say.</summary>
    public static IEnumerable<Block> Of(Job job)
    {
        yield return new Heading(job.Say(SheetTexts.WhatToBuy), 2);
        yield return Fabrics(job);
        if (Others(job) is { Length: > 0 } others)
        {
            yield return new Table(
                job.Say(SheetTexts.EverythingElse),
                [
                    new Column(job.Say(SheetTexts.Item), ColumnKind.Name),
                    new Column(job.Say(SheetTexts.Kind)),
                    new Column(job.Say(SheetTexts.Buy)),
                ],
                [.. others.Select(material => Row.Of(material.Because, job.NameOf(material), Kind(job, material), Sale(job, material)))]
            );
        }
    }

    /// <summary>Everything in one list, with boxes to tick.</summary>
    public static IEnumerable<Block> Short(Job job)
    {
        yield return new Heading(job.Say(SheetTexts.WhatToBuy), 2);
        yield return new Table(
            "",
            [
                new Column(job.Say(SheetTexts.Done), ColumnKind.Tick),
                new Column(job.Say(SheetTexts.Item), ColumnKind.Name),
                new Column(job.Say(SheetTexts.Kind)),
                new Column(job.Say(SheetTexts.Buy), ColumnKind.Number),
                new Column(job.Say(SheetTexts.Also), ColumnKind.Number),
                .. job.Quote.Cost is { } cost
                    ? [new Column(job.Say(SheetTexts.Price)), new Column(job.Say(SheetTexts.Amount(cost.Currency)), ColumnKind.Number)]
                    : (Column[])[],
            ],
            [.. job.Quote.Materials.Select(material => Short(job, material))]
        );
    }

    private static Row Short(Job job, MaterialAnswer material)
    {
        LengthUnit? other = material.Unit switch
        {
            SaleUnit.Yd => LengthUnit.Metre,
            SaleUnit.M => LengthUnit.Yard,
            _ => null,
        };
        string? also = other is { } unit ? job.Units.Sale(unit, material.Quantity, material.Unit) : null;
        IEnumerable<string> notes = [.. FabricNotes.Of(job, material), material.Because];
        CostLineAnswer? priced = job.Quote.Cost.LineOf(material.Item, material.Quantity, material.Unit);
        return Row.Of(
            string.Join(' ', notes),
            [
                "",
                job.NameOf(material),
                Kind(job, material),
                Sale(job, material),
                also,
                .. job.Quote.Cost is null ? []
                : priced is null ? (string?[])["", null]
                : [CostSection.Price(job, priced), job.Units.Amount(priced.Amount)],
            ]
        );
    }

    private static Table Fabrics(Job job) =>
        new(
            job.Say(SheetTexts.Fabric),
            [
                new Column(job.Say(SheetTexts.Fabric), ColumnKind.Name),
                new Column(job.Say(SheetTexts.Buy)),
                new Column(job.Say(SheetTexts.Yards), ColumnKind.Number),
                new Column(job.Say(SheetTexts.Metres), ColumnKind.Number),
                new Column(job.Say(SheetTexts.Less)),
            ],
            [
                .. job.Quote.Yardage.Select(line =>
                    Row.Of(
                        line.Because,
                        line.Label ?? line.Fabric,
                        job.Units.Sale(line.SoldLength, line.SoldUnit),
                        job.Units.Sale(LengthUnit.Yard, line.SoldLength, line.SoldUnit),
                        job.Units.Sale(LengthUnit.Metre, line.SoldLength, line.SoldUnit),
                        job.Say(line.ProvenMinimal ? SheetTexts.Proven : SheetTexts.NotProven)
                    )
                ),
            ]
        );

    private static MaterialAnswer[] Others(Job job) => [.. job.Quote.Materials.Where(material => material.Kind != MaterialKind.Fabric)];

    private static string Kind(Job job, MaterialAnswer material) => job.Say(SheetTexts.Material(material.Kind));

    private static string Sale(Job job, MaterialAnswer material) => job.Units.Sale(material.Quantity, material.Unit);
}
