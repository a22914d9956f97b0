namespace CushionService.Contract.Answers;

/// <summary>Everything about an order: what to cut, lay, buy, pay and sew.</summary>
public sealed record QuoteAnswer
{
    /// <summary>The order's reference.</summary>
    public string? Reference { get; init; }

    /// <summary>The order's customer.</summary>
    public string? Customer { get; init; }

    /// <summary>The day on which it is due.</summary>
    public string? Due { get; init; }

    /// <summary>The order's note.</summary>
    public string? Note { get; init; }

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

    /// <summary>A layout for each fabric that is used.</summary>
    public required IReadOnlyList<LayoutAnswer> Layouts { get; init; }

    /// <summary>How much of each fabric to buy.</summary>
    public required IReadOnlyList<YardageLine> Yardage { get; init; }

    /// <summary>Everything to buy, the fabric too.</summary>
    public required IReadOnlyList<MaterialAnswer> Materials { get; init; }

    /// <summary>What it costs; null when the order names no currency.</summary>
    public CostAnswer? Cost { get; init; }

    /// <summary>What to do, in order.</summary>
    public required IReadOnlyList<StepAnswer> Steps { get; init; }

    /// <summary>How to clean the covers; null for an order without cushions.</summary>
    public string? Care { get; init; }

    /// <summary>The tools that the steps ask for, in the order in which they are first needed.</summary>
    public required IReadOnlyList<ToolAnswer> Tools { get; init; }

    /// <summary>The cautions that apply.</summary>
    public required IReadOnlyList<CautionAnswer> Cautions { get; init; }

    /// <summary>What is allowed but unwise.</summary>
    public required IReadOnlyList<ViolationAnswer> Warnings { get; init; }
}
