using System.Text.RegularExpressions;
using CushionService.Engine.Messages;

namespace CushionService.Wording;

/// <summary>Says what applies where a field is left out: a value as it is, or a rule in the reader's language.</summary>
internal static partial class DefaultWording
{
    /// <summary>The words of a default as an attribute of the contract has it.</summary>
    /// <param name="rule">In English; null for none.</param>
    /// <param name="writer">Writes in the reader's language.</param>
    public static string? Of(string? rule, MessageWriter writer) =>
        rule is null ? null
        : MessageOf(rule) is { } message ? writer.Text(message)
        : rule;

    private static Message? MessageOf(string rule) =>
        rule switch
        {
            // The rules that the contract's attributes name, word for word. One that is missing here is shown in English.
            "one step" => DefaultTexts.OneStep,
            "the cushion's width" => DefaultTexts.WidthOfCushion,
            "the stitch's, or 2.5" => DefaultTexts.Stitch,
            "the workroom's" => DefaultTexts.Workroom,
            _ => Either().Match(rule) is { Success: true } both
                ? DefaultTexts.Either(both.Groups["imperial"].Value, both.Groups["metric"].Value)
                : null,
        };

    [GeneratedRegex("^(?<imperial>.+), or (?<metric>.+) in a metric order$")]
    private static partial Regex Either();
}
