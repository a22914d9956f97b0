using System.Text.Json.Nodes;

namespace CushionService.Contract.Answers;

/// <summary>One way in which an order breaks a rule, or, as a warning, is unwise.</summary>
/// <param name="Pointer">Where in the order, as a JSON Pointer (RFC 6901); empty for the order as a whole.</param>
/// <param name="Code">A stable word for programs, in kebab case.</param>
/// <param name="Detail">A sentence for people.</param>
/// <param name="Minimum">The smallest allowed value, in the order's units; null where no range applies.</param>
/// <param name="Maximum">The largest allowed value, in the order's units; null where no range applies.</param>
public sealed record ViolationAnswer(string Pointer, string Code, string Detail, double? Minimum = null, double? Maximum = null)
{
    /// <summary>What the sentence says, for programs that write their own: a stable key such as `outline.too-narrow`.</summary>
    public string Key { get; init; } = "";

    /// <summary>The values in the sentence, by name. Lengths, areas and weights are numbers in the order's system; shares are hundredths;
    /// counts are whole numbers; amounts of money, words of the contract, names and ids are text; what is sold is an amount with its unit.
    /// A message within the sentence has a key and arguments of its own. What is absent is left out.</summary>
    public JsonObject Arguments { get; init; } = [];
}
