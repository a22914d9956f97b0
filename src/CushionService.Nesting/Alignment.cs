namespace CushionService.Nesting;

/// <summary>Ties a piece's position to the repeat: the lower left corner of the piece as it lies must be at
/// (<see cref="PhaseX"/>, <see cref="PhaseY"/>) plus a point of the problem's <see cref="RepeatLattice"/>.
/// With a lattice of width 0, any x will do.</summary>
/// <param name="PhaseX">Phase across the strip, in grid units.</param>
/// <param name="PhaseY">Phase along the strip, in grid units.</param>
public readonly record struct Alignment(long PhaseX, long PhaseY);
