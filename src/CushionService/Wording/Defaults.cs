using CushionService.Engine.Messages;

namespace CushionService.Wording;

/// <summary>What a field is when it is left out, in the reader's language. Attributes of the contract say it in English.</summary>
internal static class Defaults
{
    private const string Metric = " in a metric order";
    private const string Or = ", or ";
    private const string Stitch = "the stitch's" + Or;

    /// <summary>The default in words.</summary>
    /// <param name="text">As an attribute has it: "1", "1/2 in, or 13 mm in a metric order", "the workroom's"; null for none.</param>
    /// <param name="writer">Writes in the reader's language.</param>
    public static string? Of(string? text, MessageWriter writer) => MessageOf(text) is { } message ? writer.Text(message) : text;

    // A figure needs no words.
    private static Message? MessageOf(string? text) =>
        text switch
        {
            "the workroom's" => DefaultTexts.Workroom,
            "one step" => DefaultTexts.Step,
            "the cushion's width" => DefaultTexts.CushionWidth,
            not null when text.StartsWith(Stitch, StringComparison.Ordinal) => DefaultTexts.Stitch(text[Stitch.Length..]),
            not null when text.EndsWith(Metric, StringComparison.Ordinal) && text.Split(Or) is [var imperial, var metric] =>
                DefaultTexts.BySystem(imperial, metric[..^Metric.Length]),
            _ => null,
        };
}
