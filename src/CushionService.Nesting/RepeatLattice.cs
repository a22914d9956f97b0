namespace CushionService.Nesting;

/// <summary>The lattice on which a fabric's motif repeats: points (i × Width, j × Length + i × Drop) for whole i and j.</summary>
/// <param name="Width">Repeat across the strip, in grid units; 0 when nothing repeats across.</param>
/// <param name="Length">Repeat along the strip, in grid units, above 0.</param>
/// <param name="Drop">How far the motif moves along the strip from one column to the next, from 0 (straight) up to
/// but not including <paramref name="Length"/>; half of it is a half drop. 0 when <paramref name="Width"/> is 0.</param>
public sealed record RepeatLattice(long Width, long Length, long Drop);
