using System.Collections.Immutable;
using CushionService.Engine.Geometry;
using CushionService.Engine.Measures;
using CushionService.Engine.Patterns.Panels;
using CushionService.Engine.Specifications;

namespace CushionService.Engine.Patterns.Additions;

/// <summary>What a face that is tufted deep is longer, before it is drawn in, than what it is sewn to: it is eased into pleats opposite the
/// tufts within the seam (common practice, no source).</summary>
public static class TuftEase
{
    // Chords that an arc is measured by once it is stretched; the error is below a thousandth of what is stated.
    private const int Chords = 64;

    /// <summary>The faces that are eased; none where the tufts are shallow.</summary>
    /// <param name="cushion">The cushion.</param>
    /// <param name="pattern">Its pattern.</param>
    public static ImmutableArray<Panel> Faces(CushionSpecification cushion, Pattern pattern) =>
        cushion.Trim.Tufts is { PullDepth.Nanometres: > 0 }
            ? [.. pattern.Panels.Where(panel => panel.Marks.Any(mark => mark.Purpose == MarkPurpose.Tuft))]
            : [];

    /// <summary>The length of one side of a seam, as it is cut, for each length of the other.</summary>
    /// <param name="cushion">The cushion.</param>
    /// <param name="pattern">Its pattern.</param>
    /// <param name="seam">A seam of it.</param>
    /// <returns>Above 1 where the other side is eased, below 1 where the one side is; null where both are as long.</returns>
    public static double? Of(CushionSpecification cushion, Pattern pattern, Seam seam)
    {
        if (seam.RestsOnSeam || Faces(cushion, pattern) is not { IsEmpty: false } faces)
        {
            return null;
        }

        // What laps over itself on the other side is no longer for that.
        double ratio = (Flat(cushion, pattern, faces, seam.Other) - seam.Lap.Nanometres) / Flat(cushion, pattern, faces, seam.One);
        return Math.Abs(ratio - 1) < 1e-6 ? null : ratio;
    }

    private static double Flat(CushionSpecification cushion, Pattern pattern, ImmutableArray<Panel> faces, ImmutableArray<EdgeRef> edges) =>
        edges.Sum(named =>
        {
            Panel panel = pattern[named.Part];
            return faces.Contains(panel) ? Stretched(cushion, panel, panel[named.Edge]) : panel[named.Edge].Length.Nanometres;
        });

    // The take-up is spread evenly over the face, across and along.
    private static double Stretched(CushionSpecification cushion, Panel face, Edge edge)
    {
        (Length across, Length along) = cushion.Trim.Tufts!.TakeUpOf(cushion.Width, cushion.Depth);
        double wider = 1 + ((double)across.Nanometres / face.Width.Nanometres),
            longer = 1 + ((double)along.Nanometres / face.Height.Nanometres);
        return edge.Path.Sum(segment =>
        {
            int parts = segment.IsStraight ? 1 : Chords;
            return Enumerable.Range(0, parts).Sum(i => Chord(segment.At((double)i / parts), segment.At((i + 1.0) / parts)));
        });

        double Chord(Point from, Point to)
        {
            (double x, double y) = ((to.X - from.X).Nanometres * wider, (to.Y - from.Y).Nanometres * longer);
            return Math.Sqrt((x * x) + (y * y));
        }
    }
}
