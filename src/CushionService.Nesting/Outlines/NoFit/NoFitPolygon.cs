namespace CushionService.Nesting.Outlines.NoFit;

/// <summary>The offsets of a moving outline from a lying one at which the two overlap, ready for slicing either way.</summary>
internal sealed class NoFitPolygon(SliceIndex columns, SliceIndex rows)
{
    /// <summary>Slices at a given x; intervals of y.</summary>
    public SliceIndex Columns { get; } = columns;

    /// <summary>Slices at a given y; intervals of x.</summary>
    public SliceIndex Rows { get; } = rows;

    /// <summary>How deep the two overlap: about how far the moving outline must go to be free, 0 when it is free. With
    /// the ways out along and across of a and b it is ab / (a + b), which is short wherever either is.</summary>
    public double Depth(double x, double y)
    {
        var along = Columns.Depth(x, y);
        var across = along > 0 ? Rows.Depth(y, x) : 0;
        return across > 0 ? along * across / (along + across) : 0;
    }
}
