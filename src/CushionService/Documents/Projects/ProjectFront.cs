using CushionService.Contract.Answers;
using CushionService.Documents.CutSheets;
using CushionService.Documents.Sheets;
using CushionService.Engine.Measures;
using CushionService.Engine.Messages;
using CushionService.Engine.Specifications.Stocks;
using CushionService.Wording;

namespace CushionService.Documents.Projects;

/// <summary>The first page of a project sheet: what will be made, what to buy, what to have at hand, what the words mean.</summary>
internal static class ProjectFront
{
    private const double PictureWidth = 110;
    private const double PictureHeight = 70;
    private const string Welt = "step.welt-wrap";

    // What concerns prices is not on the sheet, and how a fabric shrinks is its first step.
    private static readonly string[] OfTheOrder = ["unpriced", "price-without-size", "shrinkage-unknown"];

    /// <summary>What is on it.</summary>
    public static IEnumerable<Block> Of(Job job, ShopDetails shop, string title)
    {
        if (shop.Name is { } name)
        {
            yield return new Paragraph([new Run(job.Say(ProjectTexts.By(name)), true)]);
        }

        yield return new Heading(title, 1);
        foreach (CushionAnswer cushion in job.Quote.Cushions)
        {
            if (job.Quote.Cushions.Count > 1)
            {
                yield return new Heading(cushion.Label ?? cushion.Id, 3);
            }

            yield return new Paragraph(job.Say(ProjectTexts.WillMake(ProjectSize.Of(job, cushion), cushion.Quantity)), Tone.Large);
            if (job.Pictures.Cushion(cushion.Id) is { } picture)
            {
                yield return new Figure(picture, PictureWidth, PictureHeight);
            }
        }

        yield return new Paragraph(job.Say(ProjectTexts.ReadFirst));
        string[] warnings = [.. job.Quote.Warnings.Where(one => !OfTheOrder.Contains(one.Code)).Select(one => one.Detail)];
        if (warnings.Length > 0)
        {
            yield return new Heading(job.Say(SheetTexts.Warnings), 2);
        }

        foreach (string warning in warnings)
        {
            yield return new Paragraph(warning, Tone.Notice);
        }

        yield return new Heading(job.Say(ProjectTexts.Buy), 2);
        yield return new Bullets([.. job.Quote.Materials.Select(material => Bought(job, material))], true);
        yield return new Heading(job.Say(ProjectTexts.Tools), 2);
        yield return TwoColumns([.. job.Quote.Tools.Select(use => job.Say(ToolNameTexts.Tool(use.Tool)))], true);
        yield return new Heading(job.Say(ProjectTexts.Words), 2);
        yield return TwoColumns([.. Words(job).Select(job.Say)], false);
    }

    private static List<Run> Bought(Job job, MaterialAnswer material)
    {
        string quantity = job.Units.Sale(material.Quantity, material.Unit);
        string words = job.Say(SheetTexts.Material(material.Kind)),
            name = job.NameOf(material);
        // A name of the service's own in the reader's words says what it is.
        bool known = name != material.Item && name == job.Say(AnswerTexts.Item(material.Item));
        string? kind = known || name.Replace('-', ' ').Contains(words.Replace('-', ' '), StringComparison.OrdinalIgnoreCase) ? null : words;

        LengthUnit? other = (material.Kind, material.Unit) switch
        {
            (MaterialKind.Fabric, SaleUnit.Yd) => LengthUnit.Metre,
            (MaterialKind.Fabric, SaleUnit.M) => LengthUnit.Yard,
            _ => null,
        };
        Message line =
            other is { } unit && job.Units.Sale(unit, material.Quantity, material.Unit) is { } also
                ? ProjectTexts.BuyMetric(quantity, also, name, kind)
                : ProjectTexts.BuyLine(quantity, material.Unit != SaleUnit.Each, name, kind);
        List<Run> runs = [new Run(job.Say(line))];
        if (material.Cuts.Count == 0 && ExtentOf(job, material) is { } extent)
        {
            runs.Add(new Run(job.Say(extent)));
        }

        runs.AddRange(FabricNotes.Of(job, material).Select(note => new Run(note)));
        runs.AddRange(material.Cuts.Select(cut => new Run(job.Say(ProjectTexts.FoamCut(cut.Quantity, Extent(job, cut.Size))))));
        if (job.LinkOf(material) is { } link)
        {
            runs.Add(new Run(job.Say(ProjectTexts.ShopLink), false, link));
        }

        return runs;
    }

    // Of a zipper its length is what it must have; of what is cut from a roll it is what the roll holds.
    private static Message? ExtentOf(Job job, MaterialAnswer material) =>
        material is { Kind: MaterialKind.Zipper, Length: { } length } ? ProjectTexts.OfLength(job.Units.Text(length))
        : material is { Kind: not MaterialKind.Fabric, Size: { } size } ? ProjectTexts.OfSize(Extent(job, size))
        : null;

    private static string Extent(Job job, MaterialSizeAnswer size)
    {
        double[] sides = [.. new[] { size.Width, size.Depth, size.Thickness }.OfType<double>()];
        return string.Join(" × ", [.. sides[..^1].Select(job.Units.Number), job.Units.Text(sides[^1])]);
    }

    private static Block TwoColumns(string[] entries, bool ticked)
    {
        Bullets[] columns =
        [
            .. entries
                .Chunk(Math.Max(1, (entries.Length + 1) / 2))
                .Select(half => new Bullets([.. half.Select(entry => (Run[])[new Run(entry)])], ticked)),
        ];
        return columns is [var left, var right] ? new Beside([(0.5, [left]), (0.5, [right])])
            : columns is [var only] ? only
            : new Bullets([], ticked);
    }

    private static IEnumerable<Message> Words(Job job)
    {
        bool boxed = job.Quote.Cushions.Any(cushion => cushion.Loop is not null);
        bool welted = job.Steps.Any(step => step.Key == Welt);
        return
        [
            ProjectTexts.RightSide,
            ProjectTexts.RawEdge,
            ProjectTexts.SeamLine,
            ProjectTexts.SeamAllowance,
            ProjectTexts.Selvedge,
            ProjectTexts.Notch,
            ProjectTexts.Backstitch,
            ProjectTexts.Press,
            ProjectTexts.Clip,
            ProjectTexts.Baste,
            ProjectTexts.Face,
            ProjectTexts.Sides,
            .. boxed ? [ProjectTexts.Boxing] : (Message[])[],
            .. welted ? [ProjectTexts.Welt] : (Message[])[],
        ];
    }
}
