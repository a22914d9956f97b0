namespace CushionService.Nesting.Outlines.Placing;

/// <summary>The points of a repeat, from its phase, at which a copy may lie: columns of points, each from 0 upward.
/// A lattice that does not repeat across has one column, and its x means nothing.</summary>
internal readonly struct LatticePoints
{
    private readonly RepeatLattice _lattice;
    private readonly Alignment _phase;
    private readonly long _firstColumn;

    /// <summary>The points for one copy.</summary>
    /// <param name="lattice">The repeat.</param>
    /// <param name="phase">The copy's phase.</param>
    /// <param name="roomX">The greatest left edge that it may have, grid units.</param>
    public LatticePoints(RepeatLattice lattice, Alignment phase, long roomX)
    {
        (_lattice, _phase) = (lattice, phase);
        _firstColumn = lattice.Width == 0 ? 0 : CeilingDivide(-phase.PhaseX, lattice.Width);
        var lastColumn = lattice.Width == 0 ? 0 : CeilingDivide(roomX - phase.PhaseX + 1, lattice.Width) - 1;
        Columns = (int)Math.Clamp(lastColumn - _firstColumn + 1, 0, int.MaxValue);
    }

    /// <summary>How many columns of points there are; 0 when the copy has no place at all.</summary>
    public int Columns { get; }

    /// <summary>Distance from one point of a column to the next.</summary>
    public long Step => _lattice.Length;

    /// <summary>The x of a column, grid units.</summary>
    public double X(int column) => _phase.PhaseX + (_firstColumn + column) * _lattice.Width;

    /// <summary>The lowest point of a column at or above y.</summary>
    /// <param name="column">From 0, below <see cref="Columns"/>.</param>
    /// <param name="y">Grid units, at least 0.</param>
    public double RiseTo(int column, double y)
    {
        // Only a drop needs products beyond 64 bits, and these take ten times as long.
        var shift =
            _lattice.Drop == 0
                ? _phase.PhaseY % _lattice.Length
                : (long)(((Int128)_phase.PhaseY + (Int128)(_firstColumn + column) * _lattice.Drop) % _lattice.Length);
        return shift + CeilingDivide((long)y - shift, _lattice.Length) * _lattice.Length;
    }

    /// <summary>Rounds up, for negative dividends too; the divisor is above 0.</summary>
    private static long CeilingDivide(long dividend, long divisor) => dividend / divisor + (dividend % divisor > 0 ? 1 : 0);
}
