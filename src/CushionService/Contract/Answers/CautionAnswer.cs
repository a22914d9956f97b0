using System.Text.Json.Nodes;

namespace CushionService.Contract.Answers;

/// <summary>A caution that applies.</summary>
/// <param name="Code">A stable word for programs.</param>
/// <param name="Text">A sentence for people.</param>
public sealed record CautionAnswer(string Code, string Text)
{
    /// <summary>What the sentence says, for programs that write their own: a stable key such as `caution.infants`.</summary>
    public string Key { get; init; } = "";

    /// <summary>The values in the sentence, by name. Lengths, areas and weights are numbers in the order's system; shares are hundredths;
    /// counts are whole numbers; amounts of money, words of the contract, names and ids are text; what is sold is an amount with its unit.
    /// A message within the sentence has a key and arguments of its own. What is absent is left out.</summary>
    public JsonObject Arguments { get; init; } = [];
}
