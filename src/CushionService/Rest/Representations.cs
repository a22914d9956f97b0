using CushionService.Contract.Answers;
using CushionService.Desk;
using CushionService.Documents;
using CushionService.Documents.Drawings;
using CushionService.Rest.OpenApi;

namespace CushionService.Rest;

/// <summary>The forms of answers beside JSON.</summary>
internal static class Representations
{
    private const string Svg = "image/svg+xml";
    private const string Html = "text/html";
    private const string Pdf = "application/pdf";

    private static readonly PartParameter OnPaper = new(
        "paper",
        $"For documents to print, the paper: {Paper.Names}. When left out, letter for an order in inches and a4 for a metric one.",
        $"The parameter paper is {Paper.Names}.",
        static name => Paper.Named(name) is not null
    );

    private static readonly PartParameter OfPiece = new(
        "piece",
        "For patterns: the id of one piece. When left out, all pieces that are no plain rectangles; where all are, every piece.",
        "The order has no piece of that id."
    );

    /// <summary>The layout of one fabric as a drawing.</summary>
    public static Representation Drawing { get; } =
        Representation.Of(
            Svg,
            Purposes.Layout,
            static (answer, values) => Draw(answer, values[0]),
            new PartParameter(
                "fabric",
                "For a drawing: the fabric's id; may be left out when one fabric is used.",
                "A drawing is of one fabric: name one that the order uses, as in ?fabric=main."
            )
        );

    /// <summary>A quote as the cut sheet to print.</summary>
    public static Representation CutSheet { get; } =
        Representation.Of(Html, Purposes.Quote, static (quote, _) => Documents.CutSheets.CutSheet.Write(quote));

    /// <summary>The pieces as patterns at true size.</summary>
    public static Representation[] Patterns { get; } =
    [
        new(Html, true, static values => Printing.Patterns(values[0], values[1], asPdf: false), OnPaper, OfPiece),
        new(Pdf, false, static values => Printing.Patterns(values[0], values[1], asPdf: true), OnPaper, OfPiece),
    ];

    // Null when the order uses no such fabric, or several and none is named.
    private static string? Draw(LayoutsAnswer answer, string? fabric) =>
        answer.Layouts.Where(layout => fabric is null || layout.Fabric == fabric).ToArray() is [LayoutAnswer only]
            ? LayoutDrawing.Draw(only, answer.Pieces, answer.Units)
            : null;
}
