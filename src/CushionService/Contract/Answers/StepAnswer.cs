using System.Text.Json.Nodes;

namespace CushionService.Contract.Answers;

/// <summary>A step of the making.</summary>
public sealed record StepAnswer
{
    /// <summary>From 1.</summary>
    public required int Number { get; init; }

    /// <summary>What to do.</summary>
    public required string Text { get; init; }

    /// <summary>The ids of the pieces that it handles.</summary>
    public required IReadOnlyList<string> Pieces { get; init; }

    /// <summary>What the sentence says, for programs that write their own: a stable key such as `step.join-run`.</summary>
    public string Key { get; init; } = "";

    /// <summary>The values in the sentence, by name. Lengths, areas and weights are numbers in the order's system; shares are hundredths;
    /// counts are whole numbers; amounts of money, words of the contract, names and ids are text; what is sold is an amount with its unit.
    /// A message within the sentence has a key and arguments of its own. What is absent is left out.</summary>
    public JsonObject Arguments { get; init; } = [];
}
