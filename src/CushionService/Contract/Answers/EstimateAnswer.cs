using CushionService.Engine.Measures;

namespace CushionService.Contract.Answers;

/// <summary>How much fabric one cushion takes.</summary>
public sealed record EstimateAnswer
{
    /// <summary>The unit of the layout's length.</summary>
    public required Units Units { get; init; }

    /// <summary>Version of the engine that answered.</summary>
    public required string Engine { get; init; }

    /// <summary>Length to buy, in <c>soldUnit</c>.</summary>
    public required double SoldLength { get; init; }

    /// <summary>The unit of sale.</summary>
    public required SaleUnit SoldUnit { get; init; }

    /// <summary>Length that the pieces take, in the order's units.</summary>
    public required double LayoutLength { get; init; }

    /// <summary>Whether no layout could be sold shorter.</summary>
    public required bool ProvenMinimal { get; init; }

    /// <summary>How the length comes about, in one line.</summary>
    public required string Because { get; init; }

    /// <summary>What is allowed but unwise; the pointers name the parameters.</summary>
    public required IReadOnlyList<ViolationAnswer> Warnings { get; init; }
}
