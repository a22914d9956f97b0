using CushionService.Contract;
using CushionService.Contract.Answers;
using CushionService.Nesting;

namespace CushionService.Tests.Documents;

/// <summary>Layouts of random pieces, rectangles and odd outlines, in every turn and unit.</summary>
internal static class RandomLayouts
{
    /// <summary>The layout of a seed, always the same.</summary>
    public static LayoutsAnswer Of(int seed)
    {
        var random = new Random(seed);
        Units units = (Units)random.Next(3);
        double scale = units switch
        {
            Units.In => 1,
            Units.Cm => 2.5,
            _ => 25,
        };
        double width = scale * (20 + random.Next(60));
        PieceAnswer[] pieces = [.. Enumerable.Range(0, 1 + random.Next(10)).Select(i => Piece(random, i, width, scale))];
        return new LayoutsAnswer
        {
            Units = units,
            Engine = "1.0.0",
            Layouts = [Shelves.Lay("fabric", width, pieces, random)],
            Pieces = pieces,
            Warnings = [],
        };
    }

    private static PieceAnswer Piece(Random random, int i, double fabricWidth, double scale)
    {
        double width = Sixteenths(random, Math.Min(50 * scale, fabricWidth), scale);
        double length = Sixteenths(random, 40 * scale, scale);
        PieceAnswer piece = ScenarioPieces.Piece(
            $"cushion-{i}/part",
            "fabric",
            1 + random.Next(5),
            width,
            length,
            (Rotations)random.Next(3),
            "at random"
        );
        return random.Next(3) == 0 ? piece with { Points = Corners(random, width, length) } : piece;
    }

    private static double Sixteenths(Random random, double most, double scale) =>
        scale / 16 * (8 + random.Next((int)(most / scale * 16) - 8));

    // An ell, a trapezoid or a polygon inscribed in the box's ellipse; each touches all four sides.
    private static PointAnswer[] Corners(Random random, double width, double length)
    {
        double x = width * (0.2 + 0.6 * random.NextDouble());
        double y = length * (0.2 + 0.6 * random.NextDouble());
        return random.Next(3) switch
        {
            0 => [new(0, 0), new(width, 0), new(width, y), new(x, y), new(x, length), new(0, length)],
            1 => [new(0, 0), new(width, 0), new(x, length), new(x / 2, length)],
            _ =>
            [
                .. Enumerable
                    .Range(0, 24)
                    .Select(i => Math.PI * i / 12)
                    .Select(angle => new PointAnswer(width / 2 * (1 + Math.Cos(angle)), length / 2 * (1 + Math.Sin(angle)))),
            ],
        };
    }
}
