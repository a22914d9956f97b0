using CushionService.Engine.Patterns.Panels;

namespace CushionService.Engine.Instructions;

/// <summary>What kind of work the seams of a cover are.</summary>
internal static class CoverSeams
{
    /// <summary>Whether a zipper is between edges turned under for it, not in a seam.</summary>
    /// <param name="pattern">The pattern of the cover.</param>
    /// <param name="seam">A seam of it.</param>
    /// <remarks>The finish of the first edge tells: in a seam between faces the zipper is sewn to plain seam allowances.</remarks>
    public static bool IsInSection(Pattern pattern, Seam seam) =>
        seam.Kind == SeamKind.Zipper && pattern[seam.One[0].Part][seam.One[0].Edge].Finish.Kind == FinishKind.ZipperTurnUnder;

    /// <summary>Whether it is a notch that is opened and sewn across: the same panels are on both sides.</summary>
    /// <remarks>Opened for a boxed corner: the seam crosses the one that joins the faces, so it is sewn after it.</remarks>
    public static bool IsNotch(Seam seam) =>
        seam.One.Length > 1 && seam.One.Select(edge => edge.Part).SequenceEqual(seam.Other.Select(edge => edge.Part));

    /// <summary>Whether it joins panels that one part was too long for.</summary>
    /// <remarks>A strip join that closes a loop is none, for it joins the two ends of one part or two parts; nor are those of a part whose
    /// panels go all round, as many joins as panels: they are the loop.</remarks>
    /// <param name="pattern">The pattern of the cover.</param>
    /// <param name="seam">A seam of it.</param>
    public static bool IsRun(Pattern pattern, Seam seam) =>
        IsWithin(seam)
        && pattern.Seams.Count(other => IsWithin(other) && Base(other.One[0].Part) == Base(seam.One[0].Part))
            < pattern.Panels.Count(panel => Base(panel.Part) == Base(seam.One[0].Part));

    // Both its edges are of one part.
    private static bool IsWithin(Seam seam) =>
        seam.Kind == SeamKind.StripJoin
        && seam.One.Concat(seam.Other).All(edge => edge.Part.Stretch > 0 && Base(edge.Part) == Base(seam.One[0].Part));

    /// <summary>The part that a panel was joined into.</summary>
    /// <remarks>Panels of a joined part count from stretch 1; 0 is the whole part, which is what people call it.</remarks>
    public static PartName Base(PartName part) => part with { Stretch = 0 };
}
