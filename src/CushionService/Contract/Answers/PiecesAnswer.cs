namespace CushionService.Contract.Answers;

/// <summary>The answer to a call for pieces.</summary>
public sealed record PiecesAnswer
{
    /// <summary>The order's reference.</summary>
    public string? Reference { get; init; }

    /// <summary>The unit of every length.</summary>
    public required Units Units { get; init; }

    /// <summary>Version of the engine that answered.</summary>
    public required string Engine { get; init; }

    /// <summary>The cushions, as they will be when they are done.</summary>
    public required IReadOnlyList<CushionAnswer> Cushions { get; init; }

    /// <summary>What to cut.</summary>
    public required IReadOnlyList<PieceAnswer> Pieces { get; init; }

    /// <summary>What is sewn to what.</summary>
    public required IReadOnlyList<SeamAnswer> Seams { get; init; }

    /// <summary>What is allowed but unwise.</summary>
    public required IReadOnlyList<ViolationAnswer> Warnings { get; init; }
}
