using System.Collections.Immutable;
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

    // Of a sheet; areas come from rounded lengths.
    private const decimal Rounding = 0.000_001m;

    // With so small a share of its steps a search is one pass.
    private const int OnePass = 4096;

    // Templates are rounded outward to micrometres; one as wide as the sheet still lies on it.
    private static readonly Length Outward = Length.FromNanometres(4000);

    // The parts of that many copies show which division of a block takes fewer sheets.
    private const int MostCompared = 8;
    private const int MostPartsCompared = 120;

    /// <summary>Nests the layers, turned as they fit best, a saw's kerf between each two: as rectangles, and where that may take a
    /// sheet too many, by their templates. Where blocks are glued from parts, only their area bounds the sheets: other parts might lie
    /// better.</summary>
    /// <param name="stock">A stock in sheets.</param>
    /// <param name="blocks">At least one block; one that is larger than a sheet is glued from parts.</param>
    /// <param name="kerf">Width of a cut.</param>
    /// <param name="search">How hard each of two layouts is searched at most.</param>
    /// <remarks>Piece and sheet grow by one kerf each way: then pieces that touch are a kerf apart, and one at the sheet's edge loses
    /// nothing.</remarks>
    public static FoamSheets Of(StockSpecification stock, IReadOnlyList<FoamBlock> blocks, Length kerf, SideSearch search)
    {
        SheetLayer[] layers = [.. blocks.SelectMany(block => SheetLayer.Of(block, stock, kerf))];
        bool joined = blocks.Any(block => block.PartsOn(stock, kerf).Count > 1);
        bool boxed = layers.All(layer => layer.Template.IsEmpty);
        Length slack = boxed ? Length.Zero : Outward,
            width = stock.Width!.Value + kerf + slack,
            length = stock.Length!.Value + kerf + slack;
        var grid = GridOf(width, length, layers);
        int copies = layers.Sum(layer => layer.Quantity);
        SheetLayout layout = Laid(
            grid,
            (width, length),
            layers,
            search.Effort,
            search.SharedBy(copies, outlines: false, Sharing),
            search.Cancellation
        );
        (int count, int least) = (layout.Sheets.Length, joined ? LeastOf(blocks, stock) : (int)layout.LowerBound);
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
            joined ? least : (int)Math.Min(count, problem.Sale.RungFor(strip.LowerBound) + 1)
        );
    }

    /// <summary>The way that takes the fewest sheets; the first of several.</summary>
    /// <param name="ways">Ways to divide one block, the best first; at least one.</param>
    /// <param name="block">The block.</param>
    /// <param name="stock">A stock in sheets, each of which holds any of the parts.</param>
    /// <param name="kerf">Width of a cut.</param>
    /// <returns>Many copies are judged by a few.</returns>
    internal static FoamParts FewestOf(IReadOnlyList<FoamParts> ways, FoamBlock block, StockSpecification stock, Length kerf)
    {
        int most = Math.Min(MostCompared, MostPartsCompared / ways.Max(way => way.Count)),
            copies = Math.Min(SheetLayer.CopiesOf(block, stock), most),
            fewest = int.MaxValue;
        FoamParts best = ways[0];
        if (copies == 0)
        {
            return best;
        }

        int least = LeastOf([block with { Count = copies }], stock, layers: 1);
        (Length Width, Length Length) sheet = (stock.Width!.Value + kerf, stock.Length!.Value + kerf);
        foreach (FoamParts way in ways)
        {
            SheetLayer[] layers = [.. SheetLayer.Of(way, copies, kerf)];
            // One pass tells: the parts are few, and the search proper comes once all blocks are known.
            int sheets = Laid(
                GridOf(sheet.Width, sheet.Length, layers),
                sheet,
                layers,
                Effort.Quick,
                OnePass,
                CancellationToken.None
            ).Sheets.Length;
            if (sheets < fewest)
            {
                (best, fewest) = (way, sheets);
            }

            if (fewest <= least)
            {
                break;
            }
        }

        return best;
    }

    private static Grid GridOf(Length width, Length length, SheetLayer[] layers) =>
        Grid.For(
            [width, length, .. layers.SelectMany(layer => layer.Lengths)],
            layers.Aggregate(width + length, (sum, layer) => sum + layer.Quantity * (layer.Width + layer.Length))
        );

    private static SheetLayout Laid(
        Grid grid,
        (Length Width, Length Length) sheet,
        SheetLayer[] layers,
        Effort effort,
        int sharedBy,
        CancellationToken cancellation
    ) =>
        Nester.Nest(
            new SheetProblem
            {
                Pieces = [.. layers.Select(layer => layer.Box(grid))],
                Sheets = [new StockSheet(grid.Down(sheet.Width), grid.Down(sheet.Length), null, 1)],
            },
            effort,
            sharedBy,
            cancellation
        );

    // However blocks are divided, its foam fills that many sheets.
    private static int LeastOf(IReadOnlyList<FoamBlock> blocks, StockSpecification stock, int? layers = null)
    {
        decimal sheet = stock.Width!.Value.In(LengthUnit.Millimetre) * stock.Length!.Value.In(LengthUnit.Millimetre),
            foam = blocks.Sum(block => block.Footprint * (layers is { } known ? known * block.Count : SheetLayer.CopiesOf(block, stock)));
        return Math.Max(1, (int)Math.Ceiling((foam / sheet) - Rounding));
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
}
