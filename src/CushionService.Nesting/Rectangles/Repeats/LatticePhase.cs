using CushionService.Nesting.Search;

namespace CushionService.Nesting.Rectangles.Repeats;

/// <summary>The positions at which a copy may lie: anywhere, or on its phase of the repeat's lattice.</summary>
/// <remarks>With column width w, repeat r, drop d and phase (a, b) the positions are (a + i w, b + i d
/// + j r) for whole i and j. All arithmetic is on whole grid units; a copy without alignment has a
/// lattice of one unit each way.</remarks>
/// <param name="lattice">The fabric's repeat; not null when <paramref name="alignment"/> is
/// not.</param>
/// <param name="alignment">The phase; null when any position will do.</param>
internal readonly struct LatticePhase(RepeatLattice? lattice, Alignment? alignment)
{
    private readonly long _stepX = alignment is null ? 1 : Math.Max(1, lattice!.Width);
    private readonly long _stepY = alignment is null ? 1 : lattice!.Length;
    private readonly long _drop = alignment is null ? 0 : lattice!.Drop;
    private readonly long _phaseX = alignment is null || lattice!.Width == 0 ? 0 : alignment.Value.PhaseX;
    private readonly long _phaseY = alignment?.PhaseY ?? 0;

    /// <summary>Distance from one column of positions to the next, in grid units.</summary>
    public long StepX => _stepX;

    /// <summary>After this many columns the heights repeat: 1 unless the repeat drops.</summary>
    public long Period => _drop == 0 ? 1 : _stepY / Divisors.Greatest(_stepY, _drop);

    /// <summary>The first x at or after the given one, at least 0.</summary>
    /// <param name="from">Grid units; below 0 counts as 0.</param>
    /// <returns>From <paramref name="from"/> up to less than <see cref="StepX"/> beyond it.</returns>
    public long NextX(long from)
    {
        from = Math.Max(from, 0);
        return from + Modulo(_phaseX - from, _stepX);
    }

    /// <summary>The first y at or after the given one, in the column at x.</summary>
    /// <param name="x">A position that <see cref="NextX"/> gave.</param>
    /// <param name="from">Grid units.</param>
    /// <returns>From <paramref name="from"/> up to less than a repeat beyond it.</returns>
    public long NextY(long x, long from)
    {
        // The column is taken modulo the repeat before it is multiplied, so that the product stays
        // within 64 bits.
        long column = (x - _phaseX) / _stepX;
        return from + Modulo(_phaseY + Modulo(column, _stepY) * _drop - from, _stepY);
    }

    /// <summary>The remainder from 0 up to less than the modulus, of negative numbers too.</summary>
    private static long Modulo(long value, long modulus)
    {
        long rest = value % modulus;
        return rest < 0 ? rest + modulus : rest;
    }
}
