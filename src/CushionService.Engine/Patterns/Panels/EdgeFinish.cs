using CushionService.Engine.Measures;

namespace CushionService.Engine.Patterns.Panels;

/// <summary>What happens at a panel's edge, and how much fabric it takes beyond the finished line.</summary>
/// <param name="Kind">What happens.</param>
/// <param name="Turns">How many times the depth is added: 2 for a double-folded hem.</param>
/// <param name="Depth">Depth of one turn, at least zero.</param>
public readonly record struct EdgeFinish(FinishKind Kind, int Turns, Length Depth)
{
    /// <summary>Fabric beyond the finished line.</summary>
    public Length Allowance => Turns * Depth;

    /// <summary>Whether the edge must be in exactly one seam.</summary>
    public bool Joins => Kind is FinishKind.Seam or FinishKind.ZipperTurnUnder;

    /// <summary>An edge sewn to another.</summary>
    /// <param name="allowance">The workroom's, at least zero.</param>
    public static EdgeFinish Seam(Length allowance) => new(FinishKind.Seam, 1, allowance);

    /// <summary>An edge turned under at a zipper.</summary>
    /// <param name="depth">Fabric that is folded under beside the teeth.</param>
    public static EdgeFinish ZipperTurnUnder(Length depth) => new(FinishKind.ZipperTurnUnder, 1, depth);

    /// <summary>A double-folded hem.</summary>
    /// <param name="fold">Depth of one of its two turns.</param>
    public static EdgeFinish DoubleHem(Length fold) => new(FinishKind.Hem, 2, fold);

    /// <summary>An edge that is caught in another seam.</summary>
    /// <param name="allowance">Of the seam that catches it.</param>
    public static EdgeFinish Caught(Length allowance) => new(FinishKind.Caught, 1, allowance);

    /// <summary>An edge that is turned in and sewn down.</summary>
    /// <param name="depth">Of the one turn.</param>
    public static EdgeFinish TurnIn(Length depth) => new(FinishKind.TurnIn, 1, depth);

    /// <summary>An edge that nothing happens to.</summary>
    public static EdgeFinish Raw { get; } = new(FinishKind.Raw, 0, Length.Zero);
}
