using CushionService.Contract.Answers;
using CushionService.Engine.Specifications;

namespace CushionService.Documents.CutSheets;

/// <summary>What is unwise about the order, before anything is bought; what to beware of, before anything is used.</summary>
internal static class NoticesSection
{
    public static void AddWarnings(Html html, QuoteAnswer quote)
    {
        if (quote.Warnings.Count == 0)
        {
            return;
        }

        html.Add($"""<section><h2>Look at this first</h2>""");
        foreach (Violation warning in quote.Warnings)
        {
            html.Add($"""<p class="notice">{warning.Detail}</p>""");
        }

        html.Add($"""</section>""");
    }

    public static void AddCautions(Html html, QuoteAnswer quote)
    {
        if (quote.Cautions.Count == 0)
        {
            return;
        }

        html.Add($"""<section><h2>Cautions</h2>""");
        foreach (CautionAnswer caution in quote.Cautions)
        {
            html.Add($"""<p class="notice">{caution.Text}</p>""");
        }

        html.Add($"""</section>""");
    }
}
