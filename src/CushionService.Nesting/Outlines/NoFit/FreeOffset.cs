namespace CushionService.Nesting.Outlines.NoFit;

/// <summary>Asks, for one pair of outlines, whether they are apart at an offset, in whole numbers. All is twice as large, so that the
/// middle between two offsets is whole.</summary>
internal sealed class FreeOffset
{
    private readonly OutlineOverlap _overlap = new();
    private GridPoint[] _lying = [];
    private GridPoint[] _drawn = [];
    private GridPoint[] _moving = [];

    /// <summary>Takes up a pair.</summary>
    /// <param name="lying">The outline that lies still.</param>
    /// <param name="moving">The outline that moves.</param>
    public void Begin(OutlineShape lying, OutlineShape moving)
    {
        _lying = Array.ConvertAll(lying.Corners, corner => new GridPoint(2 * corner.X, 2 * corner.Y));
        _drawn = moving.Corners;
        _moving = new GridPoint[moving.Corners.Length];
    }

    /// <summary>Whether the two are apart, or touch.</summary>
    /// <param name="doubledX">Twice the offset across, grid units.</param>
    /// <param name="doubledY">Twice the offset along.</param>
    public bool Is(long doubledX, long doubledY)
    {
        for (var corner = 0; corner < _moving.Length; corner++)
        {
            _moving[corner] = new(2 * _drawn[corner].X + doubledX, 2 * _drawn[corner].Y + doubledY);
        }

        return !_overlap.InteriorsMeet(_lying, _moving);
    }
}
