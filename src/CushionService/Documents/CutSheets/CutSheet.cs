using CushionService.Contract.Answers;

namespace CushionService.Documents.CutSheets;

/// <summary>A quote as a document to print and cut from: what to buy, what to cut, how it lies, what to mark, how to sew it, what to
/// beware of. One file, without script and without a reference to anything outside it.</summary>
internal static class CutSheet
{
    /// <summary>The document of a quote.</summary>
    /// <param name="quote">The quote.</param>
    /// <param name="paper">The paper; when null, Letter for a quote in inches and A4 for a metric one.</param>
    /// <returns>An HTML document, to be served as UTF-8.</returns>
    public static string Write(QuoteAnswer quote, Paper? paper = null)
    {
        var sheet = new SheetContext(quote);
        string title = quote.Reference is { Length: > 0 } reference ? $"Cut sheet {reference}" : "Cut sheet";
        var html = new Html();
        html.Add($"""<!DOCTYPE html>""");
        html.Add($"""<html lang="en"><head><meta charset="utf-8">""");
        html.Add($"""<meta http-equiv="Content-Security-Policy" content="default-src 'none'; style-src 'unsafe-inline'">""");
        html.Add($"""<meta name="viewport" content="width=device-width"><title>{title}</title>""");
        html.AddStyle(Stylesheet.For(paper ?? Paper.For(quote.Units), title));
        html.Add($"""</head><body><main><h1>{title}</h1>""");
        html.Add(
            $"""<p>All sizes are cut sizes in {sheet.Units.Name}, width across the fabric by length along it. Made by version {quote.Engine}.</p>"""
        );
        AddJob(html, quote);
        NoticesSection.AddWarnings(html, quote);
        BuyingSection.Add(html, quote);
        CostSection.Add(html, quote);
        PiecesSection.Add(html, sheet);
        LayoutsSection.Add(html, sheet);
        MarksSection.Add(html, sheet);
        SeamsSection.Add(html, sheet);
        StepsSection.Add(html, sheet);
        NoticesSection.AddCautions(html, quote);
        LabelsSection.Add(html, sheet);
        html.Add($"""</main></body></html>""");
        return html.ToString();
    }

    // Who it is for and when, as the order says.
    private static void AddJob(Html html, QuoteAnswer quote)
    {
        foreach ((string name, string? text) in new[] { ("Customer", quote.Customer), ("Due", quote.Due), ("Note", quote.Note) })
        {
            if (text is { Length: > 0 })
            {
                html.Add($"""<p>{name}: <strong>{text}</strong></p>""");
            }
        }
    }
}
