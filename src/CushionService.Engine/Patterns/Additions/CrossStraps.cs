using CushionService.Engine.Measures;
using CushionService.Engine.Patterns.Panels;
using CushionService.Engine.Patterns.Sections;
using CushionService.Engine.Specifications;
using CushionService.Engine.Specifications.Fabrics;
using CushionService.Engine.Specifications.Outlines;
using CushionService.Engine.Specifications.Trimmings;

namespace CushionService.Engine.Patterns.Additions;

/// <summary>Straps across the underside, caught at both ends in the left and the right seam.</summary>
internal static class CrossStraps
{
    /// <summary>Adds the straps and the marks where their ends are caught.</summary>
    /// <param name="pattern">The cover.</param>
    /// <param name="cushion">The cushion, for its sides and its practice.</param>
    /// <param name="straps">How many and how wide; they divide each side evenly, so that they lie parallel.</param>
    public static Pattern AddTo(Pattern pattern, CushionSpecification cushion, StrapSpecification straps)
    {
        var caught = EdgeFinish.Caught(cushion.SeamAllowance);
        Panel strap = NarrowStrip.Of(
            new PartName(PartKind.Strap),
            FabricRole.Straps,
            straps.Count,
            straps.Make,
            cushion.Practice.Trims.TubeSeam,
            straps.Width,
            straps.Length,
            caught,
            caught
        );
        // Both ends of a strap are at the same share of their sides, which keeps it level where the sides are equally
        // long.
        foreach (Side side in (Side[])[Side.Left, Side.Right])
        {
            EdgeRef edge = FaceEdge.Of(pattern, cushion, side);
            Length length = pattern[edge.Part][edge.Edge].Length;
            IEnumerable<Length> evenly = Enumerable
                .Range(1, straps.Count)
                .Select(i => Length.FromNanometres((long)((Int128)length.Nanometres * i / (straps.Count + 1))));
            pattern = NarrowStrip.Marked(pattern, edge, evenly, MarkPurpose.CatchStrap);
        }

        return pattern with
        {
            Panels = pattern.Panels.Add(strap),
        };
    }
}
