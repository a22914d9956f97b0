using CushionService.Engine.Layouts;
using CushionService.Engine.Measures;
using CushionService.Nesting;
using CushionService.Nesting.Solving;

namespace CushionService.Engine.Materials;

/// <summary>Lays rectangles on packs of one size, turned as they fit best. What is larger than a pack is butted from equal parts (common
/// practice, no source); no part lies across two packs.</summary>
internal static class PackNesting
{
    /// <summary>How many packs they take.</summary>
    /// <param name="width">Width of what is in a pack.</param>
    /// <param name="length">Its length.</param>
    /// <param name="pieces">Their sizes and how many of each.</param>
    /// <param name="search">How hard the layout is searched.</param>
    /// <exception cref="OperationCanceledException">The search was cancelled.</exception>
    public static int Count(Length width, Length length, IEnumerable<(Length Width, Length Length, int Count)> pieces, SideSearch search)
    {
        (Length Width, Length Length, int Count)[] cut = [.. pieces.Select(piece => Parted(piece, width, length))];
        Grid grid = Grid.For(
            [width, length, .. cut.SelectMany(piece => new[] { piece.Width, piece.Length })],
            cut.Aggregate(width + length, (sum, piece) => sum + (piece.Count * (piece.Width + piece.Length)))
        );
        return Nester
            .Nest(
                new SheetProblem
                {
                    Pieces = [.. cut.Select(piece => RollNesting.Piece(grid, piece))],
                    Sheets = [new StockSheet(grid.Down(width), grid.Down(length), null, 1)],
                },
                search.Effort,
                search.SharedBy(cut.Sum(piece => piece.Count), outlines: false),
                search.Cancellation
            )
            .Sheets.Length;
    }

    // Equal parts, the way round that takes fewer.
    private static (Length Width, Length Length, int Count) Parted(
        (Length Width, Length Length, int Count) piece,
        Length width,
        Length length
    )
    {
        (int across, int along) = (RollNesting.Parts(piece.Width, width), RollNesting.Parts(piece.Length, length));
        (int acrossTurned, int alongTurned) = (RollNesting.Parts(piece.Width, length), RollNesting.Parts(piece.Length, width));
        if (acrossTurned * alongTurned < across * along)
        {
            (across, along) = (acrossTurned, alongTurned);
        }

        return (RollNesting.Part(piece.Width, across), RollNesting.Part(piece.Length, along), piece.Count * across * along);
    }
}
