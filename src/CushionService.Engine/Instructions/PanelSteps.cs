using CushionService.Engine.Measures;
using CushionService.Engine.Patterns.Panels;
using CushionService.Engine.Specifications;
using CushionService.Engine.Specifications.Closures;
using CushionService.Engine.Specifications.Shapes;

namespace CushionService.Engine.Instructions;

/// <summary>What is done to a panel by itself: before its seams, or once the cover is turned.</summary>
internal static class PanelSteps
{
    private static readonly Length Row = Length.FromInches(0.125m);

    /// <summary>Trimming, channels and gathers, each with the panel that it is done to.</summary>
    public static IEnumerable<(string Text, PartName Part)> Before(CushionSpecification cushion, Pattern pattern, LengthUnit unit)
    {
        foreach (Panel panel in pattern.Panels)
        {
            if (panel.Marks.Any(mark => mark.Kind == MarkKind.TaperLine))
            {
                yield return (
                    $"Mark the taper lines of {panel.Part}, trim its corners a seam allowance outside them, and cut the other face to match.",
                    panel.Part
                );
            }

            int lines = panel.Marks.Count(mark => mark.Kind == MarkKind.StitchLine);
            if (panel.TakeUpAcross > Length.Zero && lines > 0)
            {
                yield return (
                    $"Back {panel.Part} with wadding, stitch its {lines} channel lines, and check that it has drawn in to {Text(panel.Width)} by {Text(panel.Height)} on the seam line.",
                    panel.Part
                );
            }

            foreach (IGrouping<Length, Gather> gathers in panel.Gathers.GroupBy(gather => gather.To))
            {
                string edges = string.Join(", ", gathers.Select(gather => gather.Edge));
                yield return (
                    $"Run two gathering rows along {edges} of {panel.Part}, {Text(Row)} on each side of the seam line, and draw each up from {Text(panel[gathers.First().Edge].Length)} to {Text(gathers.Key)}.",
                    panel.Part
                );
            }
        }

        string Text(Length length) => LengthText.Format(length, unit);
    }

    /// <summary>Ends that are drawn up or tied, and the line round a flanged body.</summary>
    public static IEnumerable<(string Text, PartName Part)> After(CushionSpecification cushion, Pattern pattern, LengthUnit unit)
    {
        if (cushion.Ends is { Kind: not BolsterEndKind.Flat } ends)
        {
            Panel body = pattern.Panels[0];
            yield return ends.Kind == BolsterEndKind.Gathered
                ? (
                    $"Turn each end of {body.Part} in by {Text(ends.Turning)}, run a strong thread round it, draw it up to the middle of the end and fasten it off.",
                    body.Part
                )
                : ($"Once it is filled, tie {body.Part} at its two marks.", body.Part);
        }

        if (
            cushion.Flange is { } flange
            && pattern.Panels.FirstOrDefault(panel => panel.Marks.Any(mark => mark.Kind == MarkKind.StitchLine)) is { } face
        )
        {
            string lay =
                flange.Layers == FlangeLayers.Double ? "Lay the two faces on each other, wrong sides together, and stitch" : "Stitch";
            string gap = cushion.Closure is HandSewnClosure ? ", leaving a gap at the back for the fill" : "";
            yield return (
                $"{lay} round the body on the line of {face.Part}, {Text(flange.Width)} in from the edge, through all layers{gap}.",
                face.Part
            );
        }

        string Text(Length length) => LengthText.Format(length, unit);
    }
}
