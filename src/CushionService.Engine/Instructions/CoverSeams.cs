using CushionService.Engine.Patterns.Panels;

namespace CushionService.Engine.Instructions;

/// <summary>What kind of work the seams of a cover are.</summary>
internal static class CoverSeams
{
    /// <summary>Whether a zipper stands between edges turned under for it, not in a seam.</summary>
    public static bool IsInSection(Pattern pattern, Seam seam) =>
        seam.Kind == SeamKind.Zipper && pattern[seam.One[0].Part][seam.One[0].Edge].Finish.Kind == FinishKind.ZipperTurnUnder;

    /// <summary>Whether it is a notch that is opened and sewn across: the same panels are on both sides.</summary>
    public static bool IsNotch(Seam seam) =>
        seam.One.Length > 1 && seam.One.Select(edge => edge.Part).SequenceEqual(seam.Other.Select(edge => edge.Part));

    /// <summary>Whether it joins panels that one part was too long for.</summary>
    public static bool IsRun(Seam seam) =>
        seam.Kind == SeamKind.StripJoin
        && seam.One.Concat(seam.Other).All(edge => edge.Part.Stretch > 0 && Base(edge.Part) == Base(seam.One[0].Part));

    /// <summary>The part that a panel was joined into.</summary>
    public static PartName Base(PartName part) => part with { Stretch = 0 };
}
