using CushionService.Engine.Quoting;

namespace CushionService.Contract.Answers;

/// <summary>A change to an order whose fabric on hand is not enough, as it was tried.</summary>
public sealed record ChangeAnswer
{
    /// <summary>What is changed, on every cushion that uses the fabric.</summary>
    public required FabricChange Change { get; init; }

    /// <summary>The fabric that is not enough.</summary>
    public required string Fabric { get; init; }

    /// <summary>Whether the fabric on hand is enough then.</summary>
    public required bool Fits { get; init; }

    /// <summary>What must be bought then; empty for nothing.</summary>
    public required IReadOnlyList<MissingAnswer> Missing { get; init; }
}
