using System.Collections.Immutable;

namespace CushionService.Nesting;

/// <summary>Lay all pieces on a strip of fixed width, in as little length as can be bought.</summary>
public sealed record StripProblem
{
    /// <summary>Usable width of the strip, in grid units, above 0.</summary>
    public required long Width { get; init; }

    /// <summary>What to lay; at least one piece, and each fits the width in one of its allowed turns.</summary>
    public required ImmutableArray<NestingPiece> Pieces { get; init; }

    /// <summary>The fabric's repeat; needed when a piece is aligned.</summary>
    public RepeatLattice? Repeat { get; init; }

    /// <summary>Forbidden rectangles, measured from the start of the strip; may overlap each other and its edges.</summary>
    public ImmutableArray<GridRectangle> Flaws { get; init; } = [];

    /// <summary>The lengths that can be bought. The search aims at the lowest rung, then stops.</summary>
    public SaleLadder Sale { get; init; } = SaleLadder.EveryUnit;
}
