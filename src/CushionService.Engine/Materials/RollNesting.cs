using CushionService.Engine.Layouts;
using CushionService.Engine.Measures;
using CushionService.Engine.Specifications.Stocks;
using CushionService.Nesting;
using CushionService.Nesting.Solving;

namespace CushionService.Engine.Materials;

/// <summary>Lays rectangles on a roll, turned as they fit best. What is wider than the roll either way is butted from equal strips, along
/// its longer or its shorter side, whichever takes less of the roll (common practice, no source).</summary>
internal static class RollNesting
{
    /// <summary>Puts what they take of a stock into the basket: a length of the roll, or packs across which no piece lies.</summary>
    /// <param name="basket">Where it replaces the sum of the areas.</param>
    /// <param name="goods">How the stock is sold.</param>
    /// <param name="stock">A stock with a width.</param>
    /// <param name="pieces">Their sizes and how many of each; what is too large is butted.</param>
    /// <param name="search">How hard each of two layouts is searched.</param>
    /// <exception cref="OperationCanceledException">The search was cancelled.</exception>
    public static void Lay(
        Basket basket,
        Goods goods,
        StockSpecification stock,
        IEnumerable<(Length Width, Length Length, int Count)> pieces,
        SideSearch search
    )
    {
        Length width = stock.Width!.Value;
        if (goods.Content is { } content && stock.Length is { } pack)
        {
            basket.Lay(goods, content * PackNesting.Count(width, pack, pieces, search), MaterialTexts.OffPacks(width, pack));
            return;
        }

        Length length = Lay(width, pieces, search);
        basket.Lay(goods, length.Nanometres, MaterialTexts.OffRoll(length, width));
    }

    /// <summary>The length of roll that they take.</summary>
    /// <param name="width">Width of the roll.</param>
    /// <param name="pieces">Their sizes and how many of each; one that is wider than the roll either way is butted.</param>
    /// <param name="search">How hard each of two layouts is searched.</param>
    /// <returns>At least as long as the pieces need; both ways of butting are laid out, since which is shorter depends on
    /// the rest.</returns>
    /// <exception cref="OperationCanceledException">The search was cancelled.</exception>
    public static Length Lay(Length width, IEnumerable<(Length Width, Length Length, int Count)> pieces, SideSearch search)
    {
        (Length Width, Length Length, int Count)[] whole = [.. pieces];
        (Length Width, Length Length, int Count)[] along = [.. whole.Select(piece => Butted(piece, width, alongLonger: true))],
            least = [.. whole.Select(piece => Least(piece, width))];
        Length first = Nested(width, along, search);
        return least.AsSpan().SequenceEqual(along) ? first : Length.Min(first, Nested(width, least, search));
    }

    private static Length Nested(Length width, (Length Width, Length Length, int Count)[] cut, SideSearch search)
    {
        Grid grid = Grid.For(
            [width, .. cut.SelectMany(piece => new[] { piece.Width, piece.Length })],
            cut.Aggregate(width, (sum, piece) => sum + piece.Count * Length.Max(piece.Width, piece.Length))
        );
        StripLayout layout = Nester.Nest(
            new StripProblem { Width = grid.Down(width), Pieces = [.. cut.Select(piece => Piece(grid, piece))] },
            search.Effort,
            search.SharedBy(cut.Sum(piece => piece.Count), outlines: false),
            search.Cancellation
        );
        return grid.Back(layout.Length);
    }

    /// <summary>A rectangle that may be turned, rounded up to a grid.</summary>
    internal static NestingPiece Piece(Grid grid, (Length Width, Length Length, int Count) piece) =>
        new()
        {
            Width = grid.Up(piece.Width),
            Length = grid.Up(piece.Length),
            Quantity = piece.Count,
            Rotations = Rotations.QuarterTurns,
        };

    /// <summary>In how many parts a length is no longer than the most.</summary>
    internal static int Parts(Length whole, Length most) => (int)((whole.Nanometres + most.Nanometres - 1) / most.Nanometres);

    /// <summary>Each of several equal parts of a length.</summary>
    internal static Length Part(Length whole, int parts) => Length.FromNanometres((whole.Nanometres + parts - 1) / parts);

    // Strips as long as the piece, or as long as it is wide; those that fill whole rows of the roll better.
    private static (Length Width, Length Length, int Count) Least((Length Width, Length Length, int Count) piece, Length roll)
    {
        if (Length.Min(piece.Width, piece.Length) <= roll)
        {
            return piece;
        }

        (Length, Length, int) along = Butted(piece, roll, alongLonger: true),
            across = Butted(piece, roll, alongLonger: false);
        return Rows(across, roll) < Rows(along, roll) ? across : along;
    }

    // How much of the roll full rows of these strips take, alone on it; strips beside other pieces may take less.
    private static Length Rows((Length Width, Length Length, int Count) strips, Length roll)
    {
        long across = roll.Nanometres / strips.Width.Nanometres;
        return (strips.Count + across - 1) / across * strips.Length;
    }

    private static (Length Width, Length Length, int Count) Butted(
        (Length Width, Length Length, int Count) piece,
        Length roll,
        bool alongLonger
    )
    {
        Length shorter = Length.Min(piece.Width, piece.Length),
            longer = Length.Max(piece.Width, piece.Length);
        if (shorter <= roll)
        {
            return piece;
        }

        (Length split, Length kept) = alongLonger ? (shorter, longer) : (longer, shorter);
        int strips = Parts(split, roll);
        return (Part(split, strips), kept, piece.Count * strips);
    }
}
