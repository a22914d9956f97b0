using CushionService.Contract.Answers;
using CushionService.Documents.CutSheets;
using CushionService.Documents.Sheets;
using CushionService.Engine.Measures;
using CushionService.Engine.Messages;
using CushionService.Engine.Specifications.Stocks;

namespace CushionService.Documents.Projects;

/// <summary>The first page of a project sheet: what will be made, what to buy, what to have at hand, what the words mean.</summary>
internal static class ProjectFront
{
    private const double PictureWidth = 110;
    private const double PictureHeight = 70;
    private const string Welt = "step.welt-wrap";

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

            yield return new Paragraph(job.Say(ProjectTexts.WillMake(CushionPage.Size(job, cushion), cushion.Quantity)), Tone.Large);
            if (job.Pictures.Cushion(cushion.Id) is { } picture)
            {
                yield return new Figure(picture, PictureWidth, PictureHeight);
            }
        }

        yield return new Paragraph(job.Say(ProjectTexts.ReadFirst));
        foreach (Block warning in NoticesSection.Warnings(job))
        {
            yield return warning;
        }

        yield return new Heading(job.Say(ProjectTexts.Buy), 2);
        yield return new Bullets([.. job.Quote.Materials.Select(material => Bought(job, material))], true);
        yield return new Heading(job.Say(ProjectTexts.Tools), 2);
        yield return new Bullets([.. job.Quote.Tools.Select(use => (Run[])[new Run(job.Say(ToolNameTexts.Tool(use.Tool)))])], true);
        yield return new Heading(job.Say(ProjectTexts.Words), 2);
        yield return new Bullets([.. Words(job).Select(word => (Run[])[new Run(job.Say(word), false)])], false);
    }

    private static List<Run> Bought(Job job, MaterialAnswer material)
    {
        string quantity = job.Units.Sale(material.Quantity, material.Unit);
        string? kind = job.Say(SheetTexts.Material(material.Kind));
        string name = job.NameOf(material);
        if (string.Equals(kind, name, StringComparison.OrdinalIgnoreCase))
        {
            kind = null;
        }

        LengthUnit? other = (material.Kind, material.Unit) switch
        {
            (MaterialKind.Fabric, SaleUnit.Yd) => LengthUnit.Metre,
            (MaterialKind.Fabric, SaleUnit.M) => LengthUnit.Yard,
            _ => null,
        };
        Message line =
            other is { } unit && job.Units.Sale(unit, material.Quantity, material.Unit) is { } also
                ? ProjectTexts.BuyMetric(quantity, also, name, kind)
                : ProjectTexts.BuyLine(quantity, name, kind);
        List<Run> runs = [new Run(job.Say(line))];
        runs.AddRange(FabricNotes.Of(job, material).Select(note => new Run(note)));
        runs.AddRange(material.Cuts.Select(cut => new Run(job.Say(ProjectTexts.FoamCut(cut.Quantity, Extent(job, cut.Size))))));
        if (job.LinkOf(material) is { } link)
        {
            runs.Add(new Run(job.Say(ProjectTexts.ShopLink), false, link));
        }

        return runs;
    }

    private static string Extent(Job job, MaterialSizeAnswer size) =>
        string.Join(
            " × ",
            new[] { size.Width, size.Depth }.OfType<double>().Select(job.Units.Number).Append(job.Units.Text(size.Thickness ?? 0))
        );

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
            ProjectTexts.Notch,
            ProjectTexts.Backstitch,
            ProjectTexts.Press,
            ProjectTexts.Clip,
            ProjectTexts.Baste,
            ProjectTexts.Face,
            .. boxed ? [ProjectTexts.Boxing] : (Message[])[],
            .. welted ? [ProjectTexts.Welt] : (Message[])[],
        ];
    }
}
