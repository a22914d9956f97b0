using CushionService.Contract.Answers;
using CushionService.Documents.Drawings;
using CushionService.Rest.OpenApi;

namespace CushionService.Rest;

/// <summary>The forms of answers beside JSON. Each is made from the answer alone, so that it shows what the JSON says
/// and nothing else.</summary>
internal static class Representations
{
    /// <summary>The layout of one fabric as a drawing.</summary>
    public static Representation<LayoutsAnswer> Drawing { get; } =
        new(
            "image/svg+xml",
            Draw,
            new PartParameter(
                "fabric",
                "For a drawing: the fabric's id; may be left out when one fabric is used.",
                "A drawing is of one fabric: name one that the order uses, as in ?fabric=main."
            )
        );

    /// <summary>A quote as the cut sheet to print.</summary>
    public static Representation<QuoteAnswer> CutSheet { get; } =
        new("text/html", static (quote, _) => Documents.CutSheets.CutSheet.Write(quote));

    // Null when the order uses no such fabric, or several and none is named.
    private static string? Draw(LayoutsAnswer answer, string? fabric) =>
        answer.Layouts.Where(layout => fabric is null || layout.Fabric == fabric).ToArray() is [LayoutAnswer only]
            ? LayoutDrawing.Draw(only, answer.Pieces, answer.Units)
            : null;
}
