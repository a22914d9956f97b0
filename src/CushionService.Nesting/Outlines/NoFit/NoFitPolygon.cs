namespace CushionService.Nesting.Outlines.NoFit;

/// <summary>The offsets of a moving outline from a lying one at which the two overlap, ready for slicing either way.</summary>
/// <param name="columns">Slices along y.</param>
/// <param name="rows">Slices along x.</param>
internal sealed class NoFitPolygon(SliceIndex columns, SliceIndex rows)
{
    /// <summary>Slices at a given x; intervals of y.</summary>
    public SliceIndex Columns { get; } = columns;

    /// <summary>Slices at a given y; intervals of x.</summary>
    public SliceIndex Rows { get; } = rows;

    /// <summary>How deep the two overlap: about how far the moving outline must go to be free, 0 when it is free. With
    /// the ways out along and across of a and b it is ab / (a + b), which is short wherever either is.</summary>
    /// <param name="x">Offset across: left edge of the moving box less that of the lying one, grid
    /// units.</param>
    /// <param name="y">Offset along, likewise.</param>
    /// <returns>Grid units; continuous in the offset, which a search by overlap needs.</returns>
    public double Depth(double x, double y)
    {
        var along = Columns.Depth(x, y);
        var across = along > 0 ? Rows.Depth(y, x) : 0;
        return across > 0 ? along * across / (along + across) : 0;
    }

    /// <summary>The no-fit polygon of the same two outlines when both are turned together. Offsets lie between the lower left corners of
    /// bounding boxes, so that with extents w and l, a quarter turn takes (x, y) to (l − l' − y, x), a half turn to
    /// (w − w' − x, l − l' − y), and three quarters to (y, w − w' − x).</summary>
    /// <param name="quarters">Quarter turns counter-clockwise, 0 to 3.</param>
    /// <param name="lying">The lying outline before it is turned.</param>
    /// <param name="moving">The moving outline before it is turned.</param>
    public NoFitPolygon Turned(int quarters, OutlineShape lying, OutlineShape moving)
    {
        double wide = lying.Width - moving.Width,
            high = lying.Length - moving.Length;
        return quarters switch
        {
            0 => this,
            1 => new(Rows.Mirrored(high, null), Columns.Mirrored(null, high)),
            2 => new(Columns.Mirrored(wide, high), Rows.Mirrored(high, wide)),
            _ => new(Rows.Mirrored(null, wide), Columns.Mirrored(wide, null)),
        };
    }
}
