namespace CushionService.Contract.Answers;

/// <summary>The answer to a call for layouts.</summary>
public sealed record LayoutsAnswer
{
    /// <summary>The order's reference.</summary>
    public string? Reference { get; init; }

    /// <summary>The unit of every length.</summary>
    public required Units Units { get; init; }

    /// <summary>Version of the engine that answered.</summary>
    public required string Engine { get; init; }

    /// <summary>A layout for each fabric that is used.</summary>
    public required IReadOnlyList<LayoutAnswer> Layouts { get; init; }

    /// <summary>The pieces that the placements name.</summary>
    public required IReadOnlyList<PieceAnswer> Pieces { get; init; }

    /// <summary>What is allowed but unwise.</summary>
    public required IReadOnlyList<ViolationAnswer> Warnings { get; init; }
}
