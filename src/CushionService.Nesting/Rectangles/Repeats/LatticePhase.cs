using CushionService.Nesting.Search;

namespace CushionService.Nesting.Rectangles.Repeats;

/// <summary>The positions at which a copy may lie: anywhere, or on its phase of the repeat's lattice.</summary>
/// <remarks>With column width w, repeat r, drop d and phase (a, b) the positions are (a + i w, b + i d
/// + j r) for whole i and j. All arithmetic is on whole grid units; a copy without alignment has a
/// lattice of one unit each way.</remarks>
internal readonly struct LatticePhase
{
    private readonly Modulus _stepX;
    private readonly Modulus _stepY;
    private readonly long _drop;
    private readonly long _phaseX;
    private readonly long _phaseY;

    /// <summary>Works out the steps of a lattice once.</summary>
    /// <param name="lattice">The fabric's repeat; not null when <paramref name="alignment"/> is
    /// not.</param>
    /// <param name="alignment">The phase; null when any position will do.</param>
    public LatticePhase(RepeatLattice? lattice, Alignment? alignment)
    {
        (_stepX, _stepY, Period) = (new Modulus(1), new Modulus(1), 1);
        if (alignment is null)
        {
            return;
        }

        _stepX = new Modulus(Math.Max(1, lattice!.Width));
        _stepY = new Modulus(lattice.Length);
        _drop = _stepY.Of(lattice.Drop);
        _phaseX = lattice.Width == 0 ? 0 : alignment.Value.PhaseX;
        _phaseY = alignment.Value.PhaseY;
        Period = lattice.Length / Divisors.Greatest(lattice.Length, _drop);
    }

    /// <summary>Distance from one column of positions to the next, in grid units.</summary>
    public long StepX => _stepX.Value;

    /// <summary>After this many columns the heights repeat: 1 unless the repeat drops.</summary>
    public long Period { get; }

    /// <summary>The first x at or after the given one, at least 0.</summary>
    /// <param name="from">Grid units; below 0 counts as 0.</param>
    /// <returns>From <paramref name="from"/> up to less than <see cref="StepX"/> beyond it.</returns>
    public long NextX(long from)
    {
        from = Math.Max(from, 0);
        return from + _stepX.Of(_phaseX - from);
    }

    /// <summary>How far above the given height the first position lies, in the column at x.</summary>
    /// <param name="x">A position that <see cref="NextX"/> gave.</param>
    /// <param name="from">Grid units.</param>
    /// <returns>From 0 up to less than a repeat.</returns>
    public long RiseTo(long x, long from)
    {
        if (_drop == 0)
        {
            return _stepY.Of(_phaseY - from);
        }

        // The column is taken modulo the repeat before it is multiplied, so that the product stays
        // within 64 bits.
        long column = (x - _phaseX) / _stepX.Value;
        return _stepY.Of(_phaseY + _stepY.Of(column) * _drop - from);
    }

    /// <summary>As <see cref="RiseTo"/>, from the column before.</summary>
    /// <param name="rise">How far above the same height the first position lies in the column before.</param>
    public long NextRise(long rise)
    {
        rise += _drop;
        return rise < _stepY.Value ? rise : rise - _stepY.Value;
    }
}
