using CushionService.Contract.Orders;
using CushionService.Engine.Measures;
using CushionService.Engine.Specifications.Outlines;
using CushionService.Engine.Specifications.Practices;
using CushionService.Engine.Specifications.Trimmings;

namespace CushionService.Intake;

/// <summary>Checks ties and straps against the seams that hold them, and specifies them.</summary>
internal static class StrapIntake
{
    private static readonly LengthField<Ties> TieLength = RecordForm<Ties>.Length(nameof(Ties.Length)),
        TieWidth = RecordForm<Ties>.Length(nameof(Ties.Width));

    private static readonly LengthField<Straps> StrapLength = RecordForm<Straps>.Length(nameof(Straps.Length)),
        StrapWidth = RecordForm<Straps>.Length(nameof(Straps.Width));

    /// <summary>The ties; null where they were refused.</summary>
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

        int pairs = ties.Pairs ?? usual.TiePairs;
        if (length > usual.LongestTie)
        {
            findings.Warn(TieLength.Name, "long-ties", TrimTexts.LongTies(length, usual.LongestTie));
        }

        if (body.SideLength(side) is { } stretch && 2 * pairs * width > stretch)
        {
            findings.Refuse(nameof(ties.Pairs), "side-too-short", TrimTexts.TiesOnShortSide(stretch, pairs));
        }

        return new TieSpecification(pairs, side, length, width, ties.Make ?? StrapMake.Folded);
    }

    /// <summary>The straps; null where they were refused.</summary>
    public static StrapSpecification? ReadStraps(Straps straps, CushionBody body, Findings findings)
    {
        Fields<Straps> fields = RecordForm<Straps>.Read(straps, findings);
        TrimPractice usual = body.Practice.Trims;
        body.NeedsSide(Side.Left, nameof(Cushion.Straps));
        body.NeedsSide(Side.Right, nameof(Cushion.Straps));
        if (body.ClosureSide == Side.Bottom)
        {
            body.At.Refuse(nameof(Cushion.Straps), "not-combinable", TrimTexts.StrapsOverClosure);
        }

        if (body.Outline is not { Width: var across } || !fields.IsSound || fields.Or(StrapWidth, usual.StrapWidth) is not { } width)
        {
            return null;
        }

        Length length = fields[StrapLength] ?? across;
        if (length < across)
        {
            findings.RefuseRange(StrapLength.Name, "out-of-range", TrimTexts.StrapTooShort(across), across, null);
        }

        return new StrapSpecification(straps.Count ?? usual.StrapCount, width, length, straps.Make ?? StrapMake.Folded);
    }
}
