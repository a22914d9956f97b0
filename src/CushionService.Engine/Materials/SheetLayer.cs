using System.Collections.Immutable;
using CushionService.Engine.Geometry;
using CushionService.Engine.Layouts;
using CushionService.Engine.Measures;
using CushionService.Engine.Specifications.Stocks;
using CushionService.Nesting;

namespace CushionService.Engine.Materials;

/// <summary>The layers of one block of foam, or their parts, as they are laid on sheets: a kerf larger each way.</summary>
/// <param name="Width">Of one.</param>
/// <param name="Length">Of one.</param>
/// <param name="Quantity">How many, at least 1.</param>
/// <param name="Template">Corners of its base, counter-clockwise; empty for a rectangle.</param>
internal sealed record SheetLayer(Length Width, Length Length, int Quantity, ImmutableArray<Point> Template)
{
    /// <summary>All sizes that must lie on a grid.</summary>
    public IEnumerable<Length> Lengths => [Width, Length, .. Template.SelectMany(corner => new[] { corner.X, corner.Y })];

    /// <summary>The layers of a block, or the parts of them.</summary>
    /// <param name="block">The block.</param>
    /// <param name="stock">A stock in sheets.</param>
    /// <param name="kerf">Width of a cut.</param>
    public static IEnumerable<SheetLayer> Of(FoamBlock block, StockSpecification stock, Length kerf)
    {
        int copies = CopiesOf(block, stock);
        FoamParts parts = block.PartsOn(stock, kerf);
        if (parts.Count > 1 || block.Template.IsEmpty)
        {
            return Of(parts, copies, kerf);
        }

        ImmutableArray<Point> sawn = FoamTemplate.Of(block.Cushion, (block.Cushion.Fill!.Oversize + kerf).HalfUp());
        return [new SheetLayer(sawn.Max(corner => corner.X), sawn.Max(corner => corner.Y), copies, sawn)];
    }

    /// <summary>The parts of that many layers.</summary>
    /// <param name="parts">The parts of one.</param>
    /// <param name="copies">How many layers.</param>
    /// <param name="kerf">Width of a cut.</param>
    public static IEnumerable<SheetLayer> Of(FoamParts parts, int copies, Length kerf) =>
        parts.Sizes.Select(part => new SheetLayer(part.Width + kerf, part.Depth + kerf, copies * part.Count, []));

    /// <summary>How many layers of a stock all blocks have.</summary>
    /// <param name="block">The blocks of a line.</param>
    /// <param name="stock">The stock.</param>
    public static int CopiesOf(FoamBlock block, StockSpecification stock) =>
        block.Count * (stock.Thickness is { } thickness ? block.Layers(thickness) : 1);

    /// <summary>The rectangle around it.</summary>
    public NestingPiece Box(Grid grid) =>
        new()
        {
            Width = grid.Up(Width),
            Length = grid.Up(Length),
            Quantity = Quantity,
            Rotations = Rotations.QuarterTurns,
        };

    /// <summary>Its template, where it has one.</summary>
    public NestingPiece Piece(Grid grid) =>
        Box(grid) with
        {
            Outline = [.. Template.Select(corner => new GridPoint(grid.Nearest(corner.X), grid.Nearest(corner.Y)))],
        };
}
