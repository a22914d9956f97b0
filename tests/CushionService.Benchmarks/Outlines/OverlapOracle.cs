using CushionService.Nesting;
using CushionService.Nesting.Audit;
using NetTopologySuite.Geometries;
using NetTopologySuite.Geometries.Utilities;

namespace CushionService.Benchmarks.Outlines;

/// <summary>What NetTopologySuite makes of a layout.</summary>
internal static class OverlapOracle
{
    /// <summary>It works in doubles: what it rounds is far below one square unit.</summary>
    private const double MostShared = 0.5;

    private static readonly GeometryFactory Factory = new();

    /// <summary>The largest area that two placed outlines share, in square grid units; the layout has passed our own audit once
    /// more.</summary>
    /// <exception cref="InvalidOperationException">Two outlines share more than rounding explains.</exception>
    public static double Check(StripProblem problem, StripLayout layout)
    {
        OutlineAudit.Check(problem, layout);
        var placed = layout.Placements.Select(placement => Placed(problem.Pieces[placement.Piece], placement)).ToList();
        var largest = 0.0;
        for (var one = 0; one < placed.Count; one++)
        {
            for (var other = one + 1; other < placed.Count; other++)
            {
                if (placed[one].EnvelopeInternal.Intersects(placed[other].EnvelopeInternal))
                {
                    largest = Math.Max(largest, placed[one].Intersection(placed[other]).Area);
                }
            }
        }

        return largest < MostShared
            ? largest
            : throw new InvalidOperationException($"NetTopologySuite finds {largest} square units shared by two outlines.");
    }

    private static Geometry Placed(NestingPiece piece, Placement placement)
    {
        GridPoint[] drawn = piece.Outline.IsDefaultOrEmpty
            ? [new(0, 0), new(piece.Width, 0), new(piece.Width, piece.Length), new(0, piece.Length)]
            : [.. piece.Outline];
        var polygon = Factory.CreatePolygon([.. drawn.Append(drawn[0]).Select(corner => new Coordinate(corner.X, corner.Y))]);
        var (sine, cosine) = ((double[])[0, 1, 0, -1], (double[])[1, 0, -1, 0]);
        var quarter = placement.Turn / 90;
        var turned = new AffineTransformation(cosine[quarter], -sine[quarter], 0, sine[quarter], cosine[quarter], 0).Transform(polygon);
        var (left, lower) = (turned.EnvelopeInternal.MinX, turned.EnvelopeInternal.MinY);
        return AffineTransformation.TranslationInstance(placement.X - left, placement.Y - lower).Transform(turned);
    }
}
