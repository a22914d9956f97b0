using System.Collections.Immutable;
using CushionService.Engine.Geometry;
using CushionService.Engine.Layouts;
using CushionService.Engine.Measures;
using CushionService.Engine.Specifications.Stocks;
using CushionService.Nesting;
using CushionService.Nesting.Solving;

namespace CushionService.Engine.Materials;

/// <summary>How many sheets of a stock the layers of its blocks are cut from.</summary>
/// <param name="Count">Sheets.</param>
/// <param name="Least">A number of sheets that no layout can beat.</param>
public sealed record FoamSheets(int Count, int Least)
{
    // What sheets take of the effort's steps, one part in this many: a sheet too many costs less than fabric, and its buyer waits for both.
    private const int Sharing = 8;

    // Templates are rounded outward to micrometres; one as wide as the sheet still lies on it.
    private static readonly Length Outward = Length.FromNanometres(4000);

    /// <summary>Nests the layers, turned as they fit best, a saw's kerf between each two: as rectangles, and where that may take a
    /// sheet too many, by their templates.</summary>
    /// <param name="stock">A stock in sheets.</param>
    /// <param name="blocks">At least one block; one that is larger than a sheet is glued from parts.</param>
    /// <param name="kerf">Width of a cut.</param>
    /// <param name="search">How hard each of two layouts is searched at most.</param>
    /// <remarks>Piece and sheet grow by one kerf each way: then pieces that touch are a kerf apart, and one at the sheet's edge loses
    /// nothing.</remarks>
    public static FoamSheets Of(StockSpecification stock, IReadOnlyList<FoamBlock> blocks, Length kerf, SideSearch search)
    {
        Layer[] layers = [.. blocks.Select(block => Layer.Of(block, stock, kerf))];
        bool boxed = layers.All(layer => layer.Template.IsEmpty);
        Length slack = boxed ? Length.Zero : Outward,
            width = stock.Width!.Value + kerf + slack,
            length = stock.Length!.Value + kerf + slack;
        Grid grid = Grid.For(
            [width, length, .. layers.SelectMany(layer => layer.Lengths)],
            layers.Aggregate(width + length, (sum, layer) => sum + layer.Quantity * (layer.Width + layer.Length))
        );
        int copies = layers.Sum(layer => layer.Quantity);
        ImmutableArray<NestingPiece> boxes = [.. layers.Select(layer => layer.Box(grid))];
        SheetLayout layout = Nester.Nest(
            new SheetProblem { Pieces = boxes, Sheets = [new StockSheet(grid.Down(width), grid.Down(length), null, 1)] },
            search.Effort,
            search.SharedBy(copies, outlines: false, Sharing),
            search.Cancellation
        );
        (int count, int least) = (layout.Sheets.Length, (int)layout.LowerBound);
        // Rectangles: what the layout of boxes proves holds as it is.
        if (boxed)
        {
            return new FoamSheets(count, least);
        }

        // The bound of the boxes does not hold for what lies within them.
        if (count == 1)
        {
            return new FoamSheets(1, 1);
        }

        // The boxes' answer is the most that is ever needed, so the row has that many sheets; a row that reaches less far
        // saves some.
        StripProblem problem = InARow(grid.Down(width), grid.Down(length), count, [.. layers.Select(layer => layer.Piece(grid))]);
        StripLayout strip = Nester.Nest(problem, search.Effort, search.SharedBy(copies, outlines: true, Sharing), search.Cancellation);
        return new FoamSheets(
            (int)Math.Min(count, problem.Sale.RungFor(strip.Length) + 1),
            (int)Math.Min(count, problem.Sale.RungFor(strip.LowerBound) + 1)
        );
    }

    // Sheets end to end: a strip on which nothing may lie across the end of one.
    private static StripProblem InARow(long width, long length, int count, ImmutableArray<NestingPiece> pieces) =>
        new()
        {
            Width = width,
            Pieces = pieces,
            Flaws = [.. Enumerable.Range(0, count - 1).Select(sheet => new GridRectangle(0, (sheet * (length + 1)) + length, width, 1))],
            // Sold by the sheet: a rung ends where a sheet does, so a row that is shorter within its last sheet is no
            // better.
            Sale = new SaleLadder(length, length + 1, 1, 1),
        };

    // The layers of one block, or their parts, a kerf larger each way.
    private sealed record Layer(Length Width, Length Length, int Quantity, ImmutableArray<Point> Template)
    {
        public IEnumerable<Length> Lengths => [Width, Length, .. Template.SelectMany(corner => new[] { corner.X, corner.Y })];

        public static Layer Of(FoamBlock block, StockSpecification stock, Length kerf)
        {
            int quantity = block.Count * block.Layers(stock.Thickness!.Value);
            FoamParts parts = block.PartsOn(stock.Width!.Value, stock.Length!.Value);
            if (parts.Count > 1 || block.Template.IsEmpty)
            {
                return new Layer(parts.Width + kerf, parts.Depth + kerf, quantity * parts.Count, []);
            }

            ImmutableArray<Point> sawn = FoamTemplate.Of(block.Cushion, (block.Cushion.Fill!.Oversize + kerf).HalfUp());
            return new Layer(sawn.Max(corner => corner.X), sawn.Max(corner => corner.Y), quantity, sawn);
        }

        public NestingPiece Box(Grid grid) =>
            new()
            {
                Width = grid.Up(Width),
                Length = grid.Up(Length),
                Quantity = Quantity,
                Rotations = Rotations.QuarterTurns,
            };

        public NestingPiece Piece(Grid grid) =>
            Box(grid) with
            {
                Outline = [.. Template.Select(corner => new GridPoint(grid.Nearest(corner.X), grid.Nearest(corner.Y)))],
            };
    }
}
