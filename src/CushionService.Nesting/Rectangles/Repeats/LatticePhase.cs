using CushionService.Nesting.Search;

namespace CushionService.Nesting.Rectangles.Repeats;

/// <summary>The positions at which a copy may lie: anywhere, or on its phase of the repeat's lattice.</summary>
internal readonly struct LatticePhase(RepeatLattice? lattice, Alignment? alignment)
{
    private readonly long _stepX = alignment is null ? 1 : Math.Max(1, lattice!.Width);
    private readonly long _stepY = alignment is null ? 1 : lattice!.Length;
    private readonly long _drop = alignment is null ? 0 : lattice!.Drop;
    private readonly long _phaseX = alignment is null || lattice!.Width == 0 ? 0 : alignment.Value.PhaseX;
    private readonly long _phaseY = alignment?.PhaseY ?? 0;

    /// <summary>Distance from one column of positions to the next, in grid units.</summary>
    public long StepX => _stepX;

    /// <summary>After so many columns the heights repeat: 1 unless the repeat drops.</summary>
    public long Period => _drop == 0 ? 1 : _stepY / Divisors.Greatest(_stepY, _drop);

    /// <summary>The first x at or after the given one, at least 0.</summary>
    public long NextX(long from)
    {
        from = Math.Max(from, 0);
        return from + Modulo(_phaseX - from, _stepX);
    }

    /// <summary>The first y at or after the given one, in the column at x.</summary>
    public long NextY(long x, long from)
    {
        long column = (x - _phaseX) / _stepX;
        return from + Modulo(_phaseY + Modulo(column, _stepY) * _drop - from, _stepY);
    }

    private static long Modulo(long value, long modulus)
    {
        long rest = value % modulus;
        return rest < 0 ? rest + modulus : rest;
    }
}
