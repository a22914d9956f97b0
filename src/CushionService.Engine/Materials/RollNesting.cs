using CushionService.Engine.Layouts;
using CushionService.Engine.Measures;
using CushionService.Nesting;
using CushionService.Nesting.Solving;

namespace CushionService.Engine.Materials;

/// <summary>Lays rectangles on a roll, turned as they fit best.</summary>
internal static class RollNesting
{
    /// <summary>The length of roll that they take.</summary>
    /// <param name="width">Width of the roll.</param>
    /// <param name="pieces">Their sizes and how many of each; one that is wider than the roll either way is butted from equal strips.</param>
    /// <param name="effort">How hard to search.</param>
    /// <param name="cancellation">Gives up the search.</param>
    public static Length Lay(
        Length width,
        IEnumerable<(Length Width, Length Length, int Count)> pieces,
        Effort effort,
        CancellationToken cancellation
    )
    {
        (Length Width, Length Length, int Count)[] cut = [.. pieces.Select(piece => Butted(piece, width))];
        Grid grid = Grid.For(
            [width, .. cut.SelectMany(piece => new[] { piece.Width, piece.Length })],
            cut.Aggregate(width, (sum, piece) => sum + piece.Count * Length.Max(piece.Width, piece.Length))
        );
        StripLayout layout = Nester.Nest(
            new StripProblem
            {
                Width = grid.Down(width),
                Pieces =
                [
                    .. cut.Select(piece => new NestingPiece
                    {
                        Width = grid.Up(piece.Width),
                        Length = grid.Up(piece.Length),
                        Quantity = piece.Count,
                        Rotations = Rotations.QuarterTurns,
                    }),
                ],
            },
            effort,
            cancellation
        );
        return grid.Back(layout.Length);
    }

    private static (Length Width, Length Length, int Count) Butted((Length Width, Length Length, int Count) piece, Length roll)
    {
        Length shorter = Length.Min(piece.Width, piece.Length),
            longer = Length.Max(piece.Width, piece.Length);
        int strips = (int)((shorter.Nanometres + roll.Nanometres - 1) / roll.Nanometres);
        return strips == 1 ? piece : (Length.FromNanometres((shorter.Nanometres + strips - 1) / strips), longer, piece.Count * strips);
    }
}
