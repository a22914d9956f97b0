using CushionService.Engine.Measures;
using CushionService.Engine.Patterns;
using CushionService.Engine.Specifications;

namespace CushionService.Engine.Materials;

/// <summary>How much is sewn, and how much thread that takes.</summary>
public static class Threading
{
    /// <summary>The length of all machine stitching in a cover: each seam once, strip joins from raw edge to raw edge, a zipper along both its
    /// tapes, hems, stitching lines, gathering rows, the run round a welt's cord, and the handle's edges and boxed Xs.</summary>
    /// <param name="cushion">The cushion.</param>
    /// <param name="pattern">Its pattern.</param>
    public static Length Stitching(CushionSpecification cushion, Pattern pattern)
    {
        var total = Length.Zero;
        foreach (Seam seam in pattern.Seams)
        {
            Length length = pattern.LengthOf(seam);
            total += seam.Kind switch
            {
                SeamKind.StripJoin => length + 2 * cushion.SeamAllowance,
                SeamKind.Zipper => 2 * length,
                SeamKind.Gathered => length + seam.OtherFor(length),
                _ => length,
            };
        }

        foreach (Panel panel in pattern.Panels)
        {
            foreach (Edge edge in panel.Edges)
            {
                total += edge.Finish.Kind == FinishKind.Hem ? edge.Length : Length.Zero;
            }

            foreach (PanelMark mark in panel.Marks)
            {
                total += mark is { Kind: MarkKind.StitchLine, To: { } to } ? new Geometry.Segment(mark.From, to).Length : Length.Zero;
            }
        }

        // A welt is stitched round its cord once besides.
        if (cushion.Trim.Edging is WeltSpecification welt)
        {
            total += welt.At.Aggregate(Length.Zero, (sum, place) => sum + EdgingLoop.Of(pattern, place).WeltLength(cushion.SeamAllowance));
        }

        return cushion.Handle is { } handle ? total + 2 * handle.Length + 2 * BoxedX(handle.Width, handle.Width) : total;
    }

    /// <summary>A rectangle of stitching with both diagonals: 2(a + b) + 2√(a² + b²) (general geometry).</summary>
    /// <param name="a">One side.</param>
    /// <param name="b">The other side.</param>
    public static Length BoxedX(Length a, Length b)
    {
        double diagonal = Math.Sqrt(((double)a.Nanometres * a.Nanometres) + ((double)b.Nanometres * b.Nanometres));
        return 2 * (a + b) + Length.FromNanometres((long)Math.Round(2 * diagonal));
    }

    /// <summary>Thread in one unit of seam by stitch type, from the geometry of the stitch (textilecalculations.com, calculate amount of
    /// sewing thread consumption): 101: 3 + 2TS; 301: 2 + 2TS; 401: 4 + 2TS; 504: 3 + 4WS + 4TS.</summary>
    /// <param name="stitchType">ISO 4915 number: 101, 301, 401 or 504.</param>
    /// <param name="thickness">T, thickness of what is sewn, in the unit of the seam.</param>
    /// <param name="stitches">S, stitches in one unit of seam.</param>
    /// <param name="bight">W, width of an overedge stitch, in the unit of the seam.</param>
    public static decimal Consumption(int stitchType, decimal thickness, decimal stitches, decimal bight = 0) => stitchType switch
    {
        101 => 3 + (2 * thickness * stitches),
        301 => 2 + (2 * thickness * stitches),
        401 => 4 + (2 * thickness * stitches),
        504 => 3 + (4 * bight * stitches) + (4 * thickness * stitches),
        _ => throw new ArgumentOutOfRangeException(nameof(stitchType)),
    };

    /// <summary>Thread for a length of stitching: × ratio × (1 + waste).</summary>
    public static Length Thread(Length stitching, decimal ratio, decimal waste) =>
        Length.FromNanometres((long)Math.Ceiling(stitching.Nanometres * ratio * (1 + waste)));
}
