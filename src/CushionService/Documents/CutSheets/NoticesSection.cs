using CushionService.Contract.Answers;

namespace CushionService.Documents.CutSheets;

/// <summary>What is unwise about the order, before anything is bought; what to beware of, before anything is used.</summary>
internal static class NoticesSection
{
    public static void AddWarnings(Html html, QuoteAnswer quote) =>
        Add(html, "Look at this first", quote.Warnings.Select(warning => warning.Detail));

    public static void AddCautions(Html html, QuoteAnswer quote) => Add(html, "Cautions", quote.Cautions.Select(caution => caution.Text));

    private static void Add(Html html, string heading, IEnumerable<string> notices)
    {
        if (!notices.Any())
        {
            return;
        }

        html.Add($"""<section><h2>{heading}</h2>""");
        foreach (string notice in notices)
        {
            html.Add($"""<p class="notice">{notice}</p>""");
        }

        html.Add($"""</section>""");
    }
}
