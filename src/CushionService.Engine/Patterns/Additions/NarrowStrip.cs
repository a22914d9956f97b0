using System.Collections.Immutable;
using CushionService.Engine.Geometry;
using CushionService.Engine.Measures;
using CushionService.Engine.Patterns.Panels;
using CushionService.Engine.Specifications.Fabrics;
using CushionService.Engine.Specifications.Trimmings;

namespace CushionService.Engine.Patterns.Additions;

/// <summary>The strip of a tie or a strap: cut four times as wide as it is finished when folded to the middle, or twice and two narrow
/// seams as a turned tube.</summary>
/// <remarks>General geometry; the narrow seam is common practice, no source.</remarks>
internal static class NarrowStrip
{
    /// <summary>The panel of a strip.</summary>
    /// <param name="part">Names it.</param>
    /// <param name="role">Its fabric.</param>
    /// <param name="copies">How many one cover has.</param>
    /// <param name="make">How it is made.</param>
    /// <param name="tubeSeam">Seam of a turned tube.</param>
    /// <param name="width">Finished width.</param>
    /// <param name="length">Finished length.</param>
    /// <param name="start">The finish of its lower end.</param>
    /// <param name="end">The finish of its upper end.</param>
    /// <remarks>A folded strip has raw sides, which its folds enclose; a tube has a seam at each side.</remarks>
    public static Panel Of(
        PartName part,
        FabricRole role,
        int copies,
        StrapMake make,
        Length tubeSeam,
        Length width,
        Length length,
        EdgeFinish start,
        EdgeFinish end
    )
    {
        int layers = make == StrapMake.Folded ? 4 : 2;
        EdgeFinish side = make == StrapMake.Folded ? EdgeFinish.Raw : EdgeFinish.Caught(tubeSeam);
        return new Panel
        {
            Part = part,
            Role = role,
            Copies = copies,
            Layers = layers,
            Edges = PanelOutline.Rectangle(layers * width, length, start, side, end, side),
            Marks =
            [
                .. Enumerable
                    .Range(1, layers - 1)
                    .Select(i => new PanelMark(
                        MarkKind.FoldLine,
                        new Point(i * width, Length.Zero),
                        new Point(i * width, length),
                        make == StrapMake.Folded ? MarkPurpose.FoldInFour : MarkPurpose.FoldTube
                    )),
            ],
        };
    }

    /// <summary>Marks on a panel's edge where ends are caught: short lines inward across the seam line.</summary>
    /// <param name="pattern">The cover.</param>
    /// <param name="edge">The edge.</param>
    /// <param name="distances">From the start of the edge.</param>
    /// <param name="purpose">What is caught there.</param>
    public static Pattern Marked(Pattern pattern, EdgeRef edge, IEnumerable<Length> distances, MarkPurpose purpose)
    {
        Panel panel = pattern[edge.Part];
        Edge at = panel[edge.Edge];
        ImmutableArray<PanelMark> marks =
        [
            .. distances.Select(distance => new PanelMark(MarkKind.TieEnd, at.At(distance).Point, null, purpose)),
        ];
        return pattern with { Panels = pattern.Panels.Replace(panel, panel with { Marks = panel.Marks.AddRange(marks) }) };
    }
}
