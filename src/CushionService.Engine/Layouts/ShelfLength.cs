using CushionService.Engine.Measures;

namespace CushionService.Engine.Layouts;

/// <summary>What a layout saves against the plainest way of laying the same pieces.</summary>
public static class ShelfLength
{
    /// <summary>Length that the pieces take on shelves, turned as they lie: in decreasing length, a new shelf begun when one does not fit
    /// (next fit decreasing height; Coffman, Garey, Johnson, Tarjan 1980).</summary>
    /// <param name="layout">The layout; where its pieces must match a repeat, shelves are not a way to lay them.</param>
    public static Length Of(FabricLayout layout)
    {
        ArgumentNullException.ThrowIfNull(layout);
        Length width = layout.Fabric.UsableWidth,
            used = Length.Zero,
            whole = Length.Zero;
        foreach (LaidPiece piece in layout.Placements.OrderByDescending(piece => piece.Length.Nanometres))
        {
            used += piece.Width;
            if (whole == Length.Zero || used > width)
            {
                (used, whole) = (piece.Width, whole + piece.Length);
            }
        }

        return whole;
    }

    /// <summary>Length that is bought less than on shelves, zero or more; zero where the pieces must match a repeat.</summary>
    /// <param name="yardage">How much of a fabric is bought.</param>
    /// <remarks>Both lengths are rounded up to what is sold, for a saving that cannot be bought is none.</remarks>
    public static Length Saved(Yardage yardage)
    {
        ArgumentNullException.ThrowIfNull(yardage);
        Length more = yardage.Layout.MotifX is null
            ? FabricSale.Sold(yardage.Layout.Fabric, Of(yardage.Layout), yardage.Layout.Start) - yardage.Sold
            : Length.Zero;
        return more > Length.Zero ? more : Length.Zero;
    }
}
