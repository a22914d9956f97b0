namespace CushionService.Nesting;

/// <summary>The turns that a piece may be laid in.</summary>
public enum Rotations
{
    /// <summary>As drawn only: one-way fabric, or a piece that must match a repeat.</summary>
    None,

    /// <summary>As drawn or upside down: the grain is kept.</summary>
    /// <remarks>A rectangle is the same both ways, so that this matters for outlines alone.</remarks>
    HalfTurn,

    /// <summary>Any quarter turn: plain fabric that may be railroaded.</summary>
    QuarterTurns,
}
