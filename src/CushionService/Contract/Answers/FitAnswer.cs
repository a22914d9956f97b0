namespace CushionService.Contract.Answers;

/// <summary>Whether an order can be cut from the fabric on hand.</summary>
public sealed record FitAnswer
{
    /// <summary>The order's reference.</summary>
    public string? Reference { get; init; }

    /// <summary>The unit of every length.</summary>
    public required Units Units { get; init; }

    /// <summary>Version of the engine that answered.</summary>
    public required string Engine { get; init; }

    /// <summary>The currency of every amount (ISO 4217); null when the order has none.</summary>
    public string? Currency { get; init; }

    /// <summary>Whether the pieces of every fabric on hand fit onto it.</summary>
    public required bool Fits { get; init; }

    /// <summary>Each fabric on hand of which pieces are cut.</summary>
    public required IReadOnlyList<FabricFitAnswer> Fabrics { get; init; }

    /// <summary>What must be bought of each fabric as the order is; empty when all fits, and without a fabric that is too narrow for a
    /// piece.</summary>
    public required IReadOnlyList<MissingAnswer> Missing { get; init; }

    /// <summary>For each fabric that is not enough, what to buy of another dye lot, with whole cushions from each lot; empty when all fits.
    /// It is no less than what is missing, for pieces of one cushion are not divided.</summary>
    public required IReadOnlyList<SecondLotAnswer> SecondLots { get; init; }

    /// <summary>Changes that would help, the smallest first, each tried; empty when all fits.</summary>
    public required IReadOnlyList<ChangeAnswer> Changes { get; init; }

    /// <summary>
    /// The largest cushion that would fit beside the rest of the order, for each of its first four cushions and each way to size it.
    /// </summary>
    public required IReadOnlyList<LargestAnswer> Largest { get; init; }

    /// <summary>The pieces that the placements name.</summary>
    public required IReadOnlyList<PieceAnswer> Pieces { get; init; }

    /// <summary>What is allowed but unwise.</summary>
    public required IReadOnlyList<ViolationAnswer> Warnings { get; init; }
}
