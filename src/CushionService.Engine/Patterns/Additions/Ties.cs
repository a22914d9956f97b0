using CushionService.Engine.Measures;
using CushionService.Engine.Patterns.Panels;
using CushionService.Engine.Patterns.Sections;
using CushionService.Engine.Specifications;
using CushionService.Engine.Specifications.Fabrics;
using CushionService.Engine.Specifications.Trimmings;

namespace CushionService.Engine.Patterns.Additions;

/// <summary>Ties caught two by two in the seam of a side: each is finished length + seam + turned-in end long when cut.</summary>
/// <remarks>Common practice, no source: pairs of 10 to 14 in, two pairs on a seat pad.</remarks>
internal static class Ties
{
    /// <summary>Adds the ties and the marks where they are caught.</summary>
    /// <param name="pattern">The cover.</param>
    /// <param name="cushion">The cushion, for its allowance and practice.</param>
    /// <param name="ties">How many pairs, their sizes, and their side.</param>
    public static Pattern AddTo(Pattern pattern, CushionSpecification cushion, TieSpecification ties)
    {
        Panel tie = NarrowStrip.Of(
            new PartName(PartKind.Tie),
            FabricRole.Ties,
            2 * ties.Pairs,
            ties.Make,
            cushion.Practice.Trims.TubeSeam,
            ties.Width,
            ties.Length,
            EdgeFinish.Caught(cushion.SeamAllowance),
            EdgeFinish.TurnIn(cushion.Practice.Trims.TieEndFold)
        );
        EdgeRef edge = FaceEdge.Of(pattern, cushion, ties.Side);
        Length side = pattern[edge.Part][edge.Edge].Length;
        Pattern marked = NarrowStrip.Marked(
            pattern,
            edge,
            Spread(ties.Pairs, side, cushion.Practice.Trims.TieFromCorner),
            MarkPurpose.CatchTies
        );
        return marked with { Panels = marked.Panels.Add(tie) };
    }

    // One pair is in the middle; more are spaced evenly, the outermost near the corners.
    private static IEnumerable<Length> Spread(int pairs, Length side, Length fromCorner)
    {
        // On a short side the workroom's distance from the corner gives way: a quarter of the side at most.
        Length from = Length.Min(fromCorner, Length.FromNanometres(side.Nanometres / 4)),
            span = side - 2 * from;
        return pairs == 1
            ? [Length.FromNanometres(side.Nanometres / 2)]
            : Enumerable.Range(0, pairs).Select(i => from + Length.FromNanometres((long)((Int128)span.Nanometres * i / (pairs - 1))));
    }
}
