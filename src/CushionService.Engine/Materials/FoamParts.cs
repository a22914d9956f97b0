using CushionService.Engine.Measures;

namespace CushionService.Engine.Materials;

/// <summary>The equal parts that a base of foam is glued from, where it is larger than a sheet.</summary>
/// <param name="Across">How many across.</param>
/// <param name="Along">How many along.</param>
/// <param name="Width">Width of one, up to a nanometre.</param>
/// <param name="Depth">Depth of one, up to a nanometre.</param>
public readonly record struct FoamParts(int Across, int Along, Length Width, Length Depth)
{
    /// <summary>How many there are.</summary>
    public int Count => Across * Along;

    /// <summary>The fewest parts that a sheet holds; of two ways, the one with the shorter joints (common practice, no source).</summary>
    /// <param name="width">Width of the base, above zero.</param>
    /// <param name="depth">Depth of the base, above zero.</param>
    /// <param name="sheetWidth">Width of a sheet, above zero.</param>
    /// <param name="sheetLength">Length of a sheet, above zero.</param>
    public static FoamParts Of(Length width, Length depth, Length sheetWidth, Length sheetLength)
    {
        (Length narrow, Length wide) = (Length.Min(sheetWidth, sheetLength), Length.Max(sheetWidth, sheetLength));
        FoamParts one = Split(width, depth, narrow, wide),
            other = Split(width, depth, wide, narrow);
        return one.Count != other.Count ? (one.Count < other.Count ? one : other)
            : one.JointLength <= other.JointLength ? one
            : other;
    }

    /// <summary>Length of all joints between the parts.</summary>
    public Length JointLength => (Across - 1) * (Along * Depth) + (Along - 1) * (Across * Width);

    // Equal parts, each up to a nanometre, so that together they are never smaller than the base.
    private static FoamParts Split(Length width, Length depth, Length acrossSheet, Length alongSheet)
    {
        var across = (int)((width.Nanometres + acrossSheet.Nanometres - 1) / acrossSheet.Nanometres);
        var along = (int)((depth.Nanometres + alongSheet.Nanometres - 1) / alongSheet.Nanometres);
        return new FoamParts(
            across,
            along,
            Length.FromNanometres((width.Nanometres + across - 1) / across),
            Length.FromNanometres((depth.Nanometres + along - 1) / along)
        );
    }
}
