using CushionService.Contract.Orders;
using CushionService.Engine.Measures;
using CushionService.Engine.Patterns.Additions;
using CushionService.Engine.Specifications.Outlines;
using CushionService.Engine.Specifications.Practices;
using CushionService.Engine.Specifications.Trimmings;

namespace CushionService.Intake;

/// <summary>Checks ties and straps against the seams that hold them, and specifies them.</summary>
/// <remarks>Ties hold a cushion to its seat, two to a pair, with their ends caught in the seam of one side. Straps run across the
/// underside from the left seam to the right, and hold a pad on a chair.</remarks>
internal static class StrapIntake
{
    private static readonly LengthField<Ties> TieLength = RecordForm<Ties>.Length(nameof(Ties.Length)),
        TieWidth = RecordForm<Ties>.Length(nameof(Ties.Width));

    private static readonly LengthField<Straps> StrapLength = RecordForm<Straps>.Length(nameof(Straps.Length)),
        StrapWidth = RecordForm<Straps>.Length(nameof(Straps.Width));

    /// <summary>The ties; null where they were refused.</summary>
    /// <param name="ties">The ties as written.</param>
    /// <param name="body">The cushion.</param>
    /// <param name="findings">Takes what is wrong with the ties.</param>
    public static TieSpecification? ReadTies(Ties ties, CushionBody body, Findings findings)
    {
        Fields<Ties> fields = RecordForm<Ties>.Read(ties, findings);
        TrimPractice usual = body.Practice.Trims;
        Side side = ties.Side ?? Side.Back;
        body.NeedsSide(side, $"{nameof(Cushion.Ties)}.{nameof(ties.Side)}");
        if (
            !fields.IsSound
            || fields.Or(TieLength, usual.TieLength) is not { } length
            || fields.Or(TieWidth, usual.TieWidth) is not { } width
        )
        {
            return null;
        }

        // Long ties are a hazard to infants, so they are allowed with a warning.
        int pairs = ties.Pairs ?? usual.TiePairs;
        if (length > usual.LongestTie)
        {
            findings.Warn(TieLength.Name, "long-ties", TrimTexts.LongTies(length, usual.LongestTie));
        }

        // Every tie takes its width of the seam; a side that the outline lacks is refused already.
        if (body.SideLength(side) is { Nanometres: > 0 } stretch && 2 * pairs * width > stretch)
        {
            findings.Refuse(nameof(ties.Pairs), "side-too-short", TrimTexts.TiesOnShortSide(stretch, pairs));
        }

        return new TieSpecification(pairs, side, length, width, ties.Make ?? StrapMake.Folded);
    }

    /// <summary>The straps; null where they were refused.</summary>
    /// <param name="straps">The straps as written.</param>
    /// <param name="body">The cushion.</param>
    /// <param name="findings">Takes what is wrong with the straps.</param>
    public static StrapSpecification? ReadStraps(Straps straps, CushionBody body, Findings findings)
    {
        Fields<Straps> fields = RecordForm<Straps>.Read(straps, findings);
        TrimPractice usual = body.Practice.Trims;
        // The seams at both ends hold it.
        body.NeedsSide(Side.Left, nameof(Cushion.Straps));
        body.NeedsSide(Side.Right, nameof(Cushion.Straps));
        if (body.ClosureSide == Side.Bottom)
        {
            body.At.Refuse(nameof(Cushion.Straps), "not-combinable", TrimTexts.StrapsOverClosure);
        }

        if (body.Outline is not { } outline || !fields.IsSound || fields.Or(StrapWidth, usual.StrapWidth) is not { } width)
        {
            return null;
        }

        // Finished, between the seams: the underside's width unless the order gives more. It is measured where each strap lies, for an
        // outline may narrow.
        int count = straps.Count ?? usual.StrapCount;
        Length across = StrapLevels.Longest(outline, count);
        Length? length = fields[StrapLength];
        // Side by side they leave the seam room for nothing else.
        if (count * width > outline.Depth)
        {
            findings.Refuse(nameof(straps.Count), "side-too-short", TrimTexts.StrapsSideBySide(outline.Depth, count));
        }

        if (length < across)
        {
            findings.RefuseRange(StrapLength.Name, "out-of-range", TrimTexts.StrapTooShort(across), across, null);
        }

        return new StrapSpecification(count, width, length, straps.Make ?? StrapMake.Folded);
    }
}
