namespace CushionService.Contract.Answers;

/// <summary>What an order costs; without tax, unless its costing has a rate.</summary>
public sealed record CostAnswer
{
    /// <summary>ISO 4217 code.</summary>
    public required string Currency { get; init; }

    /// <summary>The price book that prices were taken from; null when the order names none.</summary>
    public PriceBookAnswer? PriceBook { get; init; }

    /// <summary>A line for each priced material, each rounded half up.</summary>
    public required IReadOnlyList<CostLineAnswer> Lines { get; init; }

    /// <summary>A line for each operation of the workroom on each line of cushions; empty when labour is not charged.</summary>
    public required IReadOnlyList<LabourLineAnswer> Labour { get; init; }

    /// <summary>What is charged on top: contingency, overhead, gain, other lines, charges, discount, minimum, rounding, tax.</summary>
    public required IReadOnlyList<CostAdditionAnswer> Additions { get; init; }

    /// <summary>The sum of lines, labour and additions, as a decimal number.</summary>
    public required string Total { get; init; }

    /// <summary>
    /// Each line of cushions' share of the total; they sum to it exactly. Fabric is shared by the area of the pieces in the common
    /// layout.
    /// </summary>
    public required IReadOnlyList<CostShareAnswer> Shares { get; init; }

    /// <summary>What the cushions of each group cost, in the order of the cushions; empty when no cushion has a group.</summary>
    public required IReadOnlyList<CostGroupAnswer> Groups { get; init; }

    /// <summary><c>excluded</c>, or <c>included</c> where the costing has a rate.</summary>
    public required string Tax { get; init; }

    /// <summary>The total before tax, as a decimal number.</summary>
    public required string BeforeTax { get; init; }

    /// <summary>
    /// Items without a price, and operations without a time (<c>labour/welt</c>), which the total leaves out; empty when it is complete.
    /// </summary>
    public required IReadOnlyList<string> Unpriced { get; init; }
}
