using System.Collections.Immutable;
using CushionService.Engine.Measures;
using CushionService.Engine.Patterns.Panels;
using CushionService.Engine.Specifications;
using CushionService.Engine.Specifications.Trimmings;

namespace CushionService.Engine.Instructions;

/// <summary>The steps of what is added to a cover: what is sewn on or basted before the seams, and what is done once it is
/// filled.</summary>
/// <remarks>Ties, straps and handles are basted to the raw edge before the seam that catches them, and point inward (common practice, no
/// source).</remarks>
internal sealed class AdditionSteps(CushionSpecification cushion, Pattern pattern, LengthUnit unit)
{
    /// <summary>What is done before the seams.</summary>
    public IEnumerable<(string Text, ImmutableArray<PartName> Parts)> BeforeSeams()
    {
        TrimSpecification trim = cushion.Trim;
        if (trim.Pocket is { } pocket)
        {
            PartName side = Marked(MarkPurpose.SewPocket);
            yield return (
                $"Hem the mouth of the pocket twice by {Text(PocketSpecification.HemFold)}, turn its other edges under by {Text(PocketSpecification.TurnUnder)}, and edge-stitch it to {side} on its lines, {Text(pocket.Width)} apart; back-tack the ends at the mouth.",
                [new(PartKind.Pocket), side]
            );
        }

        if (trim.Vents > 0)
        {
            PartName side = Marked(MarkPurpose.SetEyelet);
            yield return ($"Set {trim.Vents} eyelets in {side} at their marks, a scrap of the fabric behind each.", [side]);
        }

        if (trim.Ties is { } ties)
        {
            yield return (
                $"Turn one end of each tie in by {Text(TieSpecification.EndFold)}. {Make(PartKind.Tie, 2 * ties.Pairs, ties.Make, ties.Width)}.",
                [new(PartKind.Tie)]
            );
            PartName face = Marked(MarkPurpose.CatchTies);
            yield return (
                $"Baste the ties, two by two, to the raw edge of {face} at their marks, pointing inward.",
                [new(PartKind.Tie), face]
            );
        }

        if (trim.Straps is { } straps)
        {
            yield return ($"{Make(PartKind.Strap, straps.Count, straps.Make, straps.Width)}.", [new(PartKind.Strap)]);
            PartName face = Marked(MarkPurpose.CatchStrap);
            yield return (
                $"Lay the {new PartName(PartKind.Strap)}{(straps.Count == 1 ? "" : "s")} across the right side of {face} and baste both ends to its raw edges at their marks.",
                [new(PartKind.Strap), face]
            );
        }

        if (trim.Base == BaseKind.AntiSlip)
        {
            yield return (
                "Cut the anti-slip base like bottom, lay it on the right side of bottom, grip outward, and baste it round inside the allowance.",
                [PartName.Bottom]
            );
        }
    }

    /// <summary>What is done once the cover is filled.</summary>
    public IEnumerable<(string Text, ImmutableArray<PartName> Parts)> AfterFilling()
    {
        if (cushion.Trim.Tufts is not { } tufts)
        {
            yield break;
        }

        if (tufts.Covered)
        {
            yield return (
                $"Cut the button covers round, {Text(2 * tufts.ButtonDiameter)} across, and cover {2 * tufts.Count} buttons.",
                [new(PartKind.ButtonCover)]
            );
        }

        string depth = tufts.PullDepth > Length.Zero ? $" {Text(tufts.PullDepth)} deep" : "";
        yield return (
            $"Tuft through the marks from the middle outward: twine through a button above and one below, pulled{depth} alike at all {tufts.Count} tufts and knotted.",
            [PartName.Top, PartName.Bottom]
        );
    }

    private string Make(PartKind kind, int count, StrapMake make, Length width)
    {
        string them = $"{(count == 1 ? "the" : "each")} {new PartName(kind)}";
        return make == StrapMake.Folded
            ? $"Fold the long edges of {them} to the middle, fold it in half to {Text(width)}, and edge-stitch it"
            : $"Sew {them} into a tube with a {Text(TieSpecification.TubeSeam)} seam, turn it right side out and press it to {Text(width)}";
    }

    private PartName Marked(MarkPurpose purpose) => pattern.Panels.First(panel => panel.Marks.Any(mark => mark.Purpose == purpose)).Part;

    private string Text(Length length) => LengthText.Format(length, unit);
}
