using System.Globalization;
using CushionService.Documents.Drawings;
using CushionService.Documents.Pdf;
using CushionService.Documents.Sheets;
using CushionService.Engine.Messages;
using CushionService.Languages;

namespace CushionService.Documents.TrueSize;

/// <summary>Drawings as a document to print at true size, a page for each.</summary>
internal static class PrintedPages
{
    /// <summary>The document.</summary>
    /// <param name="title">Its title.</param>
    /// <param name="language">The language that it is written in.</param>
    /// <param name="pages">The drawings with their sizes in millimetres.</param>
    /// <param name="asPdf">Whether it is a PDF, and not HTML in UTF-8.</param>
    /// <param name="cancellation">Gives up between two pages.</param>
    /// <exception cref="OperationCanceledException">The caller cancelled.</exception>
    public static PrintedDocument Write(
        string title,
        Language language,
        IEnumerable<(string Drawing, Spot Size)> pages,
        bool asPdf,
        CancellationToken cancellation
    ) => asPdf ? PrintedDocument.Of(PdfPaper.Write(title, pages, cancellation)) : PrintedDocument.Of(Html(title, language, [.. pages]));

    // Sheets of a roll differ in length: each size is a page of its own name (CSS Paged Media).
    private static string Html(string title, Language language, IReadOnlyList<(string Drawing, Spot Size)> pages)
    {
        Spot[] sizes = [.. pages.Select(page => page.Size).Distinct()];
        var html = new Html();
        html.Add($"""<!DOCTYPE html>""");
        html.Add(
            $"""<html lang="{LanguageTags.Of(language)}"><head><meta charset="utf-8"><meta name="viewport" content="width=device-width">"""
        );
        html.Add(
            $"""<meta http-equiv="Content-Security-Policy" content="default-src 'none'; style-src 'unsafe-inline'"><title>{title}</title>"""
        );
        html.AddStyle(
            string.Join('\n', sizes.Select(Page))
                + "\nbody { margin: 0; }\nsvg { display: block; }\nmain div { break-after: page; }"
                + "\nmain div:last-of-type { break-after: auto; }"
        );
        html.Add($"""</head><body><main><h1 hidden>{title}</h1>""");
        foreach ((string drawing, Spot size) in pages)
        {
            html.Add($"""<div class="size-{Array.IndexOf(sizes, size)}">{new Svg(drawing)}</div>""");
        }

        html.Add($"""</main></body></html>""");
        return html.ToString();
    }

    private static string Page(Spot size, int number) =>
        string.Create(
            CultureInfo.InvariantCulture,
            $"@page size-{number} {{ size: {size.X:0.###}mm {size.Y:0.###}mm; margin: 0; }}\n.size-{number} {{ page: size-{number}; }}"
        );
}
