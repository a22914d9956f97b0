using CushionService.Nesting;

namespace CushionService.Benchmarks.Outlines;

/// <summary>Invented orders of one to three kinds of cushion, up to 20 pieces, at least one of them no rectangle: rounds,
/// bays, tees, wedges and gores with their boxing, on 54 in fabric sold by the eighth of a yard.</summary>
internal static class CushionOrders
{
    private const double Inch = 25_400;
    private const int MostPieces = 20;

    public static IEnumerable<StripProblem> Generate(int count)
    {
        var random = new Random(54);
        for (var order = 0; order < count; order++)
        {
            yield return Order(random);
        }
    }

    private static StripProblem Order(Random random)
    {
        var rotations = random.Next(10) switch
        {
            < 3 => Rotations.None,
            < 8 => Rotations.HalfTurn,
            _ => Rotations.QuarterTurns,
        };
        var pieces = new List<NestingPiece>();
        for (var kinds = random.Next(1, 4); kinds > 0; kinds--)
        {
            var cushion = Cushion(random, random.Next(1, 4)).ToList();
            if (pieces.Count == 0 || pieces.Concat(cushion).Sum(piece => piece.Quantity) <= MostPieces)
            {
                pieces.AddRange(cushion);
            }
        }

        return new StripProblem
        {
            Width = (long)(53 * Inch),
            Pieces = [.. pieces.Select(piece => piece with { Rotations = rotations })],
            Sale = new SaleLadder(0, (long)(4.5 * Inch), 1, 1),
        };
    }

    private static IEnumerable<NestingPiece> Cushion(Random random, int quantity)
    {
        double width = Halves(14, 26),
            depth = Halves(14, 22),
            height = Halves(3, 5);
        switch (random.Next(5))
        {
            case 0:
                return
                [
                    OutlinePieces.Disc(width, 2 * quantity),
                    OutlinePieces.Rectangle(Math.Min(52 * Inch, Math.PI * width), height, quantity),
                ];
            case 1:
                var back = Math.Floor(width * (0.5 + 0.4 * random.NextDouble()));
                return
                [
                    OutlinePieces.Trapezoid(width, back, depth, Math.Floor((width - back) / 2), 2 * quantity),
                    OutlinePieces.Rectangle(Math.Min(52 * Inch, 2 * width), height, quantity),
                ];
            case 2:
                var ear = Halves(2, 4);
                return
                [
                    OutlinePieces.Tee(width + 2 * ear, depth + ear, ear, Halves(3, 6), 2 * quantity),
                    OutlinePieces.Rectangle(width, height, 2 * quantity),
                ];
            case 3:
                return
                [
                    OutlinePieces.Rectangle(width, depth, 2 * quantity),
                    OutlinePieces.Trapezoid(depth, depth, 2 * height, 0, 0 + quantity) with
                    {
                        Outline = [],
                    },
                    OutlinePieces.Trapezoid(depth, Math.Floor(depth * 0.3), height, 0, 2 * quantity),
                ];
            default:
                return
                [
                    OutlinePieces.Gore(Halves(5, 8), Halves(9, 14), 6 * Math.Min(2, quantity)),
                    OutlinePieces.Disc(Halves(3, 6), quantity),
                ];
        }

        double Halves(int least, int most) => random.Next(2 * least, 2 * most + 1) * Inch / 2 + Inch;
    }
}
