using System.Collections.Immutable;
using CsCheck;
using NetTopologySuite.Geometries;
using NetTopologySuite.Geometries.Utilities;

namespace CushionService.Nesting.Tests.Outlines;

/// <summary>Outlines for tests, and what NetTopologySuite makes of them.</summary>
internal static class Shapes
{
    private static readonly GeometryFactory Factory = new();

    /// <summary>Pieces whose outline is a random simple polygon, star-shaped but seldom convex.</summary>
    public static readonly Gen<NestingPiece> GenPiece = Gen.Select(
            Gen.Int[3, 30].Array[3, 11],
            Gen.Int[1, 3],
            Gen.Enum<Rotations>(),
            (reaches, quantity, turns) => Star(reaches) with { Quantity = quantity, Rotations = turns }
        )
        .Where(IsSimple);

    /// <summary>Pieces with a level foot and a top of square steps, one unit wide each.</summary>
    public static readonly Gen<NestingPiece> GenBattlement = Gen.Int[1, 4]
        .Array[2, 7]
        .Select(heights =>
            Piece([
                (0, 0),
                (heights.Length, 0),
                .. heights.Index().Reverse().SelectMany(step => new[] { (step.Index + 1L, (long)step.Item), (step.Index, step.Item) }),
            ])
        );

    public static NestingPiece Star(int[] reaches) =>
        Piece([
            .. reaches.Select(
                (reach, index) =>
                {
                    var (sine, cosine) = Math.SinCos(2 * Math.PI * index / reaches.Length);
                    return ((long)Math.Round(reach * cosine), (long)Math.Round(reach * sine));
                }
            ),
        ]);

    public static NestingPiece Piece(params (long X, long Y)[] corners)
    {
        var (left, lower) = (corners.Min(corner => corner.X), corners.Min(corner => corner.Y));
        ImmutableArray<GridPoint> outline = [.. corners.Select(corner => new GridPoint(corner.X - left, corner.Y - lower))];
        return new NestingPiece
        {
            Width = outline.Max(corner => corner.X),
            Length = outline.Max(corner => corner.Y),
            Outline = outline,
        };
    }

    /// <summary>A regular polygon round a disc, with two corners level at the top: its sides touch the disc.</summary>
    public static NestingPiece Disc(double diameter, int corners) =>
        Piece([
            .. Enumerable
                .Range(0, corners)
                .Select(corner =>
                {
                    var reach = diameter / 2 / Math.Cos(Math.PI / corners);
                    var (sine, cosine) = Math.SinCos(2 * Math.PI * (corner + 0.5) / corners);
                    return ((long)Math.Round(reach * cosine), (long)Math.Round(reach * sine));
                }),
        ]);

    public static Polygon ToPolygon(GridPoint[] corners) =>
        Factory.CreatePolygon([.. corners.Append(corners[0]).Select(corner => new Coordinate(corner.X, corner.Y))]);

    /// <summary>A piece where it lies, turned and moved by NetTopologySuite.</summary>
    public static Geometry Placed(NestingPiece piece, Placement placement)
    {
        GridPoint[] drawn = piece.Outline.IsDefaultOrEmpty
            ? [new(0, 0), new(piece.Width, 0), new(piece.Width, piece.Length), new(0, piece.Length)]
            : [.. piece.Outline];
        var (sine, cosine) = ((double[])[0, 1, 0, -1], (double[])[1, 0, -1, 0]);
        var turned = new AffineTransformation(
            cosine[placement.Turn / 90],
            -sine[placement.Turn / 90],
            0,
            sine[placement.Turn / 90],
            cosine[placement.Turn / 90],
            0
        ).Transform(ToPolygon(drawn));
        var (left, lower) = (turned.EnvelopeInternal.MinX, turned.EnvelopeInternal.MinY);
        return AffineTransformation.TranslationInstance(placement.X - left, placement.Y - lower).Transform(turned);
    }

    /// <summary>The largest area that any two placed outlines share, by NetTopologySuite.</summary>
    public static double LargestSharedArea(StripProblem problem, StripLayout layout)
    {
        var placed = layout
            .Placements.Select(placement => Placed(problem.Pieces[placement.Piece], placement))
            .Concat(
                problem.Flaws.Select(flaw =>
                    (Geometry)ToPolygon([
                        new(flaw.X, flaw.Y),
                        new(flaw.X + flaw.Width, flaw.Y),
                        new(flaw.X + flaw.Width, flaw.Y + flaw.Length),
                        new(flaw.X, flaw.Y + flaw.Length),
                    ])
                )
            )
            .ToList();
        var largest = 0.0;
        for (var one = 0; one < layout.Placements.Length; one++)
        {
            for (var other = one + 1; other < placed.Count; other++)
            {
                if (placed[one].EnvelopeInternal.Intersects(placed[other].EnvelopeInternal))
                {
                    largest = Math.Max(largest, placed[one].Intersection(placed[other]).Area);
                }
            }
        }

        return largest;
    }

    private static bool IsSimple(NestingPiece piece) =>
        piece is { Width: > 0, Length: > 0 } && ToPolygon([.. piece.Outline]) is { IsValid: true, Area: > 0 };
}
