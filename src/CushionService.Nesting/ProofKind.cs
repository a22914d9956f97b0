namespace CushionService.Nesting;

/// <summary>Which argument shows that no layout can be sold shorter.</summary>
public enum ProofKind
{
    /// <summary>Not proven.</summary>
    None,

    /// <summary>The area of the pieces fills the width to that length.</summary>
    Area,

    // Fekete and Schepers (2004), A general framework for bounds for higher-dimensional orthogonal packing problems.
    /// <summary>A dual feasible function of the sizes does.</summary>
    DualFeasible,

    /// <summary>A one-dimensional relaxation does (bars, or a single machine).</summary>
    Relaxation,

    /// <summary>An exact search found the next shorter saleable length impossible.</summary>
    Exhaustive,

    /// <summary>One piece alone is that long.</summary>
    LongestPiece,
}
