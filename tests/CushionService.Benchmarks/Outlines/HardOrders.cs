using CushionService.Nesting;

namespace CushionService.Benchmarks.Outlines;

/// <summary>Orders that once ran out of time, and worse ones: rounds on a repeat, tiny repeats, hundreds of discs, jagged
/// outlines.</summary>
internal static class HardOrders
{
    private const double Inch = 25_400;
    private const double Width = 54 * Inch;

    /// <summary>Each with a name.</summary>
    public static IEnumerable<(string Name, StripProblem Problem)> All()
    {
        foreach (var repeat in (double[])[27, 13.5, 9, 1, 0.25])
        {
            yield return ($"round 16 on {repeat} x {repeat}", OnRepeat(repeat, repeat, 2));
            yield return ($"20 rounds 16 on {repeat} x {repeat}", OnRepeat(repeat, repeat, 20));
            yield return ($"200 rounds 16 on {repeat} x {repeat}", OnRepeat(repeat, repeat, 200));
            yield return ($"20 rounds 16 on bands of {repeat}", OnRepeat(0, repeat, 20));
        }

        foreach (var discs in (int[])[20, 100, 300, 1_000, 3_000, 10_000])
        {
            yield return ($"{discs} discs", Strip(OutlinePieces.Disc(8 * Inch, discs)));
            yield return (
                $"{discs} discs of two sizes and strips",
                Strip(
                    OutlinePieces.Disc(8 * Inch, discs / 2),
                    OutlinePieces.Disc(5 * Inch, discs / 4),
                    OutlinePieces.Rectangle(30 * Inch, 3 * Inch, discs / 4)
                )
            );
            yield return ($"{discs} discs, each another size", Strip([.. Different(discs)]));
        }

        foreach (var corners in (int[])[20, 60, 100, 200])
        {
            yield return ($"4 stars of {corners} corners", Strip([.. Enumerable.Range(1, 4).Select(number => Star(number, corners, 1))]));
            yield return ($"40 stars of {corners} corners", Strip([.. Enumerable.Range(1, 40).Select(number => Star(number, corners, 5))]));
        }

        yield return (
            "20 tees among flaws",
            Strip(OutlinePieces.Tee(20 * Inch, 20 * Inch, 3 * Inch, 5 * Inch, 20)) with
            {
                Flaws =
                [
                    .. Enumerable
                        .Range(0, 40)
                        .Select(flaw => new GridRectangle((long)(flaw * 7 % 54 * Inch), (long)(flaw * 5 * Inch), 25_400, 25_400)),
                ],
            }
        );
        yield return ("1000 tees", Strip(OutlinePieces.Tee(20 * Inch, 20 * Inch, 3 * Inch, 5 * Inch, 1_000)));
    }

    /// <summary>Faces of round cushions on a repeat, and their boxing beside them.</summary>
    private static StripProblem OnRepeat(double across, double along, int discs)
    {
        var (width, length) = ((long)(across * Inch), (long)(along * Inch));
        var disc = OutlinePieces.Disc(17 * Inch, discs) with { };
        var phase = across == 0 ? 0 : ((long)(Width / 2) - disc.Width / 2) % width;
        return Strip(disc with { Alignment = new Alignment(phase, 0) }, OutlinePieces.Rectangle(52 * Inch, 4 * Inch, discs / 2)) with
        {
            Repeat = new RepeatLattice(width, length, 0),
        };
    }

    private static IEnumerable<NestingPiece> Different(int count) =>
        Enumerable.Range(0, count).Select(number => OutlinePieces.Disc((4 + 8.0 * number / count) * Inch, 1));

    private static NestingPiece Star(int number, int corners, int quantity) =>
        OutlinePieces.Piece(
            quantity,
            Enumerable
                .Range(0, corners)
                .Select(corner =>
                {
                    var reach = (4 + number * 7_919L * (corner + 1) % 211 / 60.0) * Inch;
                    var (sine, cosine) = Math.SinCos(2 * Math.PI * corner / corners);
                    return (reach * cosine, reach * sine);
                })
        ) with
        {
            Rotations = Rotations.HalfTurn,
        };

    private static StripProblem Strip(params NestingPiece[] pieces) =>
        new()
        {
            Width = (long)Width,
            Pieces = [.. pieces],
            Sale = new SaleLadder(0, (long)(4.5 * Inch), 1, 1),
        };
}
