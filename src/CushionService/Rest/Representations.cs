using CushionService.Contract;
using CushionService.Contract.Answers;
using CushionService.Desk;
using CushionService.Documents;
using CushionService.Documents.CutSheets;
using CushionService.Documents.Drawings;
using CushionService.Documents.Exchange;
using CushionService.Documents.Labels;
using CushionService.Documents.Pictures;
using CushionService.Documents.Projects;
using CushionService.Engine.Messages;
using CushionService.Rest.OpenApi;

namespace CushionService.Rest;

/// <summary>The forms of answers beside JSON.</summary>
internal static class Representations
{
    private const string Svg = "image/svg+xml";
    private const string Html = "text/html";
    private const string Pdf = "application/pdf";
    private const string Csv = "text/csv";
    private const string Dxf = "image/vnd.dxf";

    private static readonly PartParameter OnPaper = new(
        "paper",
        $"For documents to print, the paper: {Paper.Names}. When left out, letter for an order in inches and a4 for a metric one.",
        FormTexts.Paper,
        static name => Paper.Named(name) is not null
    );

    private static readonly PartParameter OnSheets = new(
        "paper",
        $"For documents to print, the paper: {string.Join(", ", Paper.SheetNames)}. When left out, letter for an order in inches and "
            + "a4 for a metric one.",
        FormTexts.ParameterChoices("paper", Paper.SheetNames),
        static name => Paper.Named(name) is { IsRoll: false }
    );

    private static readonly PartParameter OfDetail = new(
        "detail",
        $"For documents to print, which: {string.Join(", ", QuoteDetail.Names)}. The ticket has a page to buy by, one to cut by and "
            + "one for each cushion; full has all there is; the project sheet teaches a first-time sewer. When left out, the ticket.",
        FormTexts.ParameterChoices("detail", QuoteDetail.Names),
        QuoteDetail.IsKnown
    );

    private static readonly PartParameter OfPiece = new(
        "piece",
        "For patterns: the id of one piece. When left out, all pieces on paper that are no plain rectangles (where all are, every piece), "
            + "and every piece in a file for pattern programs.",
        FormTexts.NoPiece
    );

    private static readonly PartParameter OnLabels = new(
        "paper",
        $"The labels to print on: {LabelStock.Names}. When left out, letter for an order in inches and a4 for a metric one.",
        FormTexts.LabelPaper,
        static name => LabelStock.Named(name) is not null
    );

    /// <summary>The layout of one fabric as a drawing.</summary>
    public static Representation Drawing { get; } =
        Representation.Of(
            Svg,
            Purposes.Layout,
            static (answer, values, language) => Draw(answer, values[0], language),
            new PartParameter(
                "fabric",
                "For a drawing: the fabric's id; may be left out when one fabric is used.",
                FormTexts.NameAFabric("?fabric=main")
            )
        );

    /// <summary>The placements of every layout as a table.</summary>
    public static Representation Placements { get; } =
        Representation.Of(Csv, Purposes.Layout, static (answer, _, _) => PlacementsTable.Write(answer));

    /// <summary>A quote as a document to print, and what to buy as a table.</summary>
    /// <param name="shop">Whose name the project sheet has.</param>
    public static Representation[] Quotes(ShopDetails shop) =>
        [
            new(Html, true, values => Printing.Quote(values[0], values[1], asPdf: false, shop), OfDetail, OnSheets),
            new(Pdf, false, values => Printing.Quote(values[0], values[1], asPdf: true, shop), OfDetail, OnSheets),
            Representation.Of(Csv, Purposes.Quote, static (quote, _, _) => BuyingList.Write(quote)),
        ];

    /// <summary>The pieces as patterns at true size, for pattern programs, and as a table.</summary>
    public static Representation[] Pieces { get; } =
    [
        new(Html, true, static values => Printing.Patterns(values[0], values[1], asPdf: false), OnPaper, OfPiece),
        new(Pdf, false, static values => Printing.Patterns(values[0], values[1], asPdf: true), OnPaper, OfPiece),
        new(Dxf, false, static values => Printing.Exchange(values[0]), OfPiece),
        Representation.Of(Csv, Purposes.Pieces, static (answer, _, _) => PiecesTable.Write(answer)),
    ];

    /// <summary>A label for each physical piece.</summary>
    public static Representation[] Labels { get; } =
    [
        new(Html, true, static values => Printing.Labels(values[0], asPdf: false), OnLabels),
        new(Pdf, false, static values => Printing.Labels(values[0], asPdf: true), OnLabels),
    ];

    /// <summary>The picture of one cushion.</summary>
    public static Representation Picture { get; } =
        new(
            Svg,
            true,
            static values => Printing.Picture(values[1], Words<PictureView>.Named(values[0] ?? "") ?? PictureView.Finished),
            new PartParameter(
                "view",
                "What is shown: finished, or exploded for the pieces apart in the order in which they are sewn. Finished when left out.",
                FormTexts.View,
                static name => Words<PictureView>.Named(name) is not null
            ),
            new PartParameter(
                "cushion",
                "The cushion's id; may be left out when the order has one cushion. Of a bay, the id of one of its cushions, such as bay-1.",
                FormTexts.NameACushion("?cushion=bench")
            )
        );

    // Null when the order uses no such fabric, or several and none is named.
    private static string? Draw(LayoutsAnswer answer, string? fabric, Language language) =>
        answer.Layouts.Where(layout => fabric is null || layout.Fabric == fabric).ToArray() is [LayoutAnswer only]
            ? LayoutDrawing.Draw(only, answer.Pieces, answer.Units, null, language)
            : null;
}
