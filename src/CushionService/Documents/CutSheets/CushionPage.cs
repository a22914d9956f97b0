using CushionService.Contract.Answers;
using CushionService.Documents.Sheets;

namespace CushionService.Documents.CutSheets;

/// <summary>The page of one cushion: what it will be, its pieces, its marks, its steps.</summary>
internal static class CushionPage
{
    private const double PictureWidth = 75;
    private const double PictureHeight = 48;

    /// <summary>What is on the page.</summary>
    public static IEnumerable<Block> Of(Job job, CushionAnswer cushion)
    {
        PieceAnswer[] pieces = [.. job.Quote.Pieces.Where(piece => piece.Cushion == cushion.Id)];
        yield return new Heading(cushion.Label ?? cushion.Id, 1);
        yield return Intro(job, cushion, pieces);
        if (pieces.Length > 0)
        {
            yield return new Heading(job.Say(SheetTexts.PiecesToCut), 2);
            yield return new Paragraph(job.Say(SheetTexts.LiesLead), Tone.Small);
            yield return PiecesSection.Placed(job, cushion.Id);
            foreach (Block mark in NeededMarks.Of(job, pieces))
            {
                yield return mark;
            }
        }

        if (StepsSection.Of(job, cushion.Id) is { Steps.Count: > 0 } steps)
        {
            yield return new Heading(job.Say(SheetTexts.Steps), 2);
            yield return steps;
        }
    }

    /// <summary>The finished size: width, depth and thickness.</summary>
    public static string Size(Job job, CushionAnswer cushion)
    {
        FinishedSizeAnswer size = cushion.Finished;
        return size.Thickness is { } thickness
            ? $"{job.Units.Number(size.Width)} × {job.Units.Number(size.Depth)} × {job.Units.Text(thickness)}"
            : job.Units.Size(size.Width, size.Depth);
    }

    private static Beside Intro(Job job, CushionAnswer cushion, IReadOnlyList<PieceAnswer> pieces)
    {
        Block[] facts = [.. Facts(job, cushion, pieces)];
        return job.Pictures.Cushion(cushion.Id) is { } drawing
            ? new Beside([(0.45, [new Figure(drawing, PictureWidth, PictureHeight)]), (0.55, facts)])
            : new Beside([.. facts.Chunk((facts.Length + 1) / 2).Select(half => (0.5, (IReadOnlyList<Block>)half))]);
    }

    private static IEnumerable<Block> Facts(Job job, CushionAnswer cushion, IReadOnlyList<PieceAnswer> pieces)
    {
        yield return JobSection.Line(job, SheetTexts.MakeHead, job.Say(SheetTexts.Made(cushion.Quantity)));
        yield return JobSection.Line(job, SheetTexts.FinishedHead, Finished(job, cushion));
        if (cushion.Loop is { } loop)
        {
            yield return JobSection.Line(job, SheetTexts.LoopHead, job.Units.Text(loop));
        }

        if (job.Allowances.TryGetValue(cushion.Id, out double allowance))
        {
            yield return JobSection.Line(job, SheetTexts.AllowanceHead, job.Units.Text(allowance));
        }

        yield return JobSection.Line(job, SheetTexts.GrainHead, job.Say(SheetTexts.Grain(cushion.Grain)));
        string[] fabrics = [.. pieces.Select(piece => piece.Fabric).Distinct().Select(job.FabricName)];
        if (fabrics.Length > 0)
        {
            yield return JobSection.Line(job, SheetTexts.Fabrics, job.Say(SheetTexts.FabricList(fabrics)));
        }

        if (cushion.Fill is { } fill)
        {
            yield return JobSection.Line(job, SheetTexts.FillHead, Fill(job, fill));
        }

        if (cushion.Group is { } group)
        {
            yield return JobSection.Line(job, SheetTexts.Group, group);
        }

        foreach (
            (Engine.Messages.Message name, string? text) in new[]
            {
                (SheetTexts.Reference, job.Quote.Reference),
                (SheetTexts.Customer, job.Quote.Customer),
                (SheetTexts.Due, job.Due),
            }
        )
        {
            if (text is { Length: > 0 })
            {
                yield return JobSection.Line(job, name, text);
            }
        }
    }

    private static string Finished(Job job, CushionAnswer cushion) =>
        job.Say(SheetTexts.Finished(Size(job, cushion), job.Units.Text(cushion.Finished.Tolerance)));

    private static string Fill(Job job, CushionFillAnswer fill)
    {
        MaterialSizeAnswer? size = fill.Size;
        string? extent = size is { Width: { } width, Depth: { } depth }
            ? size.Thickness is { } thick
                ? $"{job.Units.Number(width)} × {job.Units.Number(depth)} × {job.Units.Text(thick)}"
                : job.Units.Size(width, depth)
            : null;
        return job.Say(SheetTexts.Fill(job.NameOf(fill.Stock), extent));
    }
}
