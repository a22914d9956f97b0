using CushionService.Contract.Answers;
using CushionService.Documents.Sheets;

namespace CushionService.Documents.CutSheets;

/// <summary>What the order costs and each cushion's share of it, and whether tax is in it.</summary>
internal static class CostSection
{
    /// <summary>The tables; nothing for an order without prices.</summary>
    /// <param name="job">The quote.</param>
    /// <param name="isWhole">Whether it has a line for each material and each cushion; not where other lists have their amounts.</param>
    public static IEnumerable<Block> Of(Job job, bool isWhole = true)
    {
        if (job.Quote.Cost is not { } cost)
        {
            yield break;
        }

        string amount = job.Say(SheetTexts.Amount(cost.Currency));
        // Without a line for a material or for labour there is nothing in the columns of quantities and prices.
        bool isWide = isWhole || cost.Labour.Count > 0;
        yield return new Heading(job.Say(SheetTexts.Cost), 2);
        yield return new Table(
            "",
            [
                new Column(job.Say(SheetTexts.Item), ColumnKind.Name),
                .. isWide
                    ?
                    [
                        new Column(job.Say(SheetTexts.Quantity), ColumnKind.Number),
                        new Column(job.Say(SheetTexts.Price), ColumnKind.Number),
                    ]
                    : (Column[])[],
                new Column(amount, ColumnKind.Number),
            ],
            [
                .. (isWhole ? cost.Lines : []).Select(line =>
                    Row.Of(null, line.Label ?? job.NameOf(line.Item), Quantity(job, line), Price(job, line), job.Units.Amount(line.Amount))
                ),
                .. cost.Labour.Select(line => Labour(job, line)),
                .. cost.Additions.Select(addition => Addition(job, addition, isWide)),
                Row.Of(null, [job.Say(SheetTexts.Total(cost.Tax == "included")), .. Between(isWide), job.Units.Amount(cost.Total)]) with
                {
                    IsTotal = true,
                },
            ]
        );
        if (isWhole && cost.Shares.Count > 1)
        {
            yield return Parts(job, SheetTexts.Quantity, amount, [.. cost.Shares.Select(share => Share(job, share))]);
        }

        if (cost.Groups.Count > 0)
        {
            yield return Parts(job, SheetTexts.Cushions, amount, [.. cost.Groups.Select(group => Group(job, group))]);
        }

        if (isWhole && cost.Unpriced.Count > 0)
        {
            yield return new Paragraph(job.Say(SheetTexts.Unpriced([.. cost.Unpriced.Select(job.NameOf)])), Tone.Notice);
        }
    }

    private static string Quantity(Job job, CostLineAnswer line) => job.Units.Sale(line.Quantity, line.Unit);

    /// <summary>The price of one, and of the cut.</summary>
    public static string Price(Job job, CostLineAnswer line) =>
        job.Say(SheetTexts.UnitPrice(job.Units.Amount(line.UnitPrice), line.Unit, line.CutFee is { } fee ? job.Units.Amount(fee) : null));

    private static Row Labour(Job job, LabourLineAnswer line) =>
        Row.Of(
            null,
            job.Say(SheetTexts.Labour(job.CushionName(line.Cushion), line.Operation)),
            job.Say(SheetTexts.Times(line.Times)),
            job.Say(SheetTexts.Minutes((decimal)Math.Round(line.Minutes, 2))),
            job.Units.Amount(line.Amount)
        );

    private static Row Addition(Job job, CostAdditionAnswer addition, bool isWide) =>
        Row.Of(
            addition.Because,
            [addition.Label ?? job.Say(SheetTexts.Addition(addition.Kind)), .. Between(isWide), job.Units.Amount(addition.Amount)]
        );

    private static string[] Between(bool isWide) => isWide ? ["", ""] : [];

    private static Table Parts(Job job, Engine.Messages.Message count, string amount, IReadOnlyList<Row> rows) =>
        new(
            "",
            [
                new Column(job.Say(SheetTexts.OfTheTotal), ColumnKind.Name),
                new Column(job.Say(count), ColumnKind.Number),
                new Column(amount, ColumnKind.Number),
            ],
            rows
        );

    private static Row Share(Job job, CostShareAnswer share) =>
        Row.Of(
            null,
            share.Cushion is { } id ? job.CushionName(id) : job.Say(SheetTexts.OwnShare),
            Number(share.Quantity),
            job.Units.Amount(share.Amount)
        );

    private static Row Group(Job job, CostGroupAnswer group) =>
        Row.Of(null, group.Group ?? job.Say(SheetTexts.WithoutGroup), Number(group.Quantity), job.Units.Amount(group.Amount));

    private static string Number(int number) => number.ToString(System.Globalization.CultureInfo.InvariantCulture);
}
