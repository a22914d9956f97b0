namespace CushionService.Contract.Answers;

/// <summary>What a cushion measures when it is done, on its seam lines.</summary>
public sealed record FinishedSizeAnswer
{
    /// <summary>From left to right; of a bolster its length.</summary>
    public required double Width { get; init; }

    /// <summary>From front to back.</summary>
    public required double Depth { get; init; }

    /// <summary>Of its sides, at the back of a wedge; null for a cushion without.</summary>
    public double? Thickness { get; init; }

    /// <summary>How far each may be off, either way.</summary>
    public required double Tolerance { get; init; }
}
