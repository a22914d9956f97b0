using CushionService.Contract.Answers;

namespace CushionService.Documents.CutSheets;

/// <summary>What to do, in order, with the numbers of the pieces that each step handles.</summary>
internal static class StepsSection
{
    public static void Add(Html html, SheetContext sheet)
    {
        if (sheet.Quote.Steps.Count == 0)
        {
            return;
        }

        html.Add($"""<section><h2>Steps</h2>""");
        if (sheet.Quote.Tools.Count > 0)
        {
            html.Add($"""<p>Tools: {string.Join(", ", sheet.Quote.Tools.Select(use => KindText.Of(use.Tool)))}.</p>""");
        }

        html.Add($"""<ol>""");
        foreach (StepAnswer step in sheet.Quote.Steps)
        {
            string pieces = string.Join(", ", step.Pieces.Select(id => sheet.Pieces[id].Number));
            html.Add($"""<li value="{step.Number}">{step.Text}""");
            if (pieces.Length > 0)
            {
                html.Add($""" <span class="pieces-of">({(step.Pieces.Count == 1 ? "piece" : "pieces")} {pieces})</span>""");
            }

            html.Add($"""</li>""");
        }

        html.Add($"""</ol></section>""");
    }
}
