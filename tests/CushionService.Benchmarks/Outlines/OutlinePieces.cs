using System.Collections.Immutable;
using CushionService.Nesting;

namespace CushionService.Benchmarks.Outlines;

/// <summary>Cut pieces of the shapes that cushions have, in micrometres.</summary>
internal static class OutlinePieces
{
    private const double Flatness = 400;

    /// <summary>A disc as a polygon round it, whose corners lie at most 0.4 mm out.</summary>
    public static NestingPiece Disc(double diameter, int quantity)
    {
        var radius = diameter / 2;
        var corners = (int)Math.Ceiling(Math.PI / Math.Acos(radius / (radius + Flatness)) / 4) * 4;
        var reach = radius / Math.Cos(Math.PI / corners);
        return Piece(
            quantity,
            Enumerable
                .Range(0, corners)
                .Select(corner =>
                {
                    var (sine, cosine) = Math.SinCos(2 * Math.PI * (corner + 0.5) / corners);
                    return (reach * cosine, reach * sine);
                })
        );
    }

    public static NestingPiece Rectangle(double width, double length, int quantity) =>
        new()
        {
            Width = (long)width,
            Length = (long)length,
            Quantity = quantity,
        };

    /// <summary>A bay or a wedge side: parallel edges of two lengths, the shorter one shifted.</summary>
    public static NestingPiece Trapezoid(double longEdge, double shortEdge, double depth, double shift, int quantity) =>
        Piece(quantity, [(0, 0), (longEdge, 0), (shift + shortEdge, depth), (shift, depth)]);

    /// <summary>A tee: a seat whose front has an ear on either side.</summary>
    public static NestingPiece Tee(double width, double depth, double ear, double earDepth, int quantity) =>
        Piece(
            quantity,
            [
                (ear, 0),
                (width - ear, 0),
                (width - ear, depth - earDepth),
                (width, depth - earDepth),
                (width, depth),
                (0, depth),
                (0, depth - earDepth),
                (ear, depth - earDepth),
            ]
        );

    /// <summary>A gore of a round: a triangle with a flat tip.</summary>
    public static NestingPiece Gore(double foot, double height, int quantity) =>
        Piece(quantity, [(0, 0), (foot, 0), (0.55 * foot, height), (0.45 * foot, height)]);

    public static NestingPiece Piece(int quantity, IEnumerable<(double X, double Y)> corners)
    {
        var whole = corners.Select(corner => new GridPoint((long)Math.Round(corner.X), (long)Math.Round(corner.Y))).ToList();
        var (left, lower) = (whole.Min(corner => corner.X), whole.Min(corner => corner.Y));
        ImmutableArray<GridPoint> outline = [.. whole.Select(corner => new GridPoint(corner.X - left, corner.Y - lower))];
        return new NestingPiece
        {
            Width = outline.Max(corner => corner.X),
            Length = outline.Max(corner => corner.Y),
            Quantity = quantity,
            Outline = outline,
        };
    }
}
