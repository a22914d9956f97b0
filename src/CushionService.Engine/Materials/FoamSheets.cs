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
    /// <summary>Nests the layers, turned as they fit best, a saw's kerf between each two.</summary>
    /// <param name="stock">A stock in sheets.</param>
    /// <param name="blocks">At least one block, each of which fits on a sheet.</param>
    /// <param name="kerf">Width of a cut.</param>
    /// <param name="effort">How hard to search.</param>
    /// <param name="cancellation">Gives up the search.</param>
    /// <remarks>Piece and sheet grow by one kerf each way: then pieces that touch are a kerf apart, and one at the sheet's edge loses
    /// nothing.</remarks>
    public static FoamSheets Of(
        StockSpecification stock,
        IReadOnlyList<FoamBlock> blocks,
        Length kerf,
        Effort effort,
        CancellationToken cancellation
    )
    {
        Length width = stock.Width!.Value + kerf,
            length = stock.Length!.Value + kerf;
        Grid grid = Grid.For(
            [width, length, .. blocks.SelectMany(block => new[] { block.Width + kerf, block.Depth + kerf })],
            blocks.Aggregate(width + length, (sum, block) => sum + block.Width + block.Depth)
        );
        SheetLayout layout = Nester.Nest(
            new SheetProblem
            {
                Pieces =
                [
                    .. blocks.Select(block => new NestingPiece
                    {
                        Width = grid.Up(block.Width + kerf),
                        Length = grid.Up(block.Depth + kerf),
                        Quantity = block.Count * block.Layers(stock.Thickness!.Value),
                        Rotations = Rotations.QuarterTurns,
                    }),
                ],
                Sheets = [new StockSheet(grid.Down(width), grid.Down(length), null, 1)],
            },
            effort,
            cancellation
        );
        return new FoamSheets(layout.Sheets.Length, (int)layout.LowerBound);
    }
}
