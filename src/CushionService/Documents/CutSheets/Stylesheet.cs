namespace CushionService.Documents.CutSheets;

/// <summary>How the cut sheet looks, on paper first.</summary>
internal static class Stylesheet
{
    /// <summary>The style sheet for a paper.</summary>
    /// <param name="paper">The paper.</param>
    /// <param name="foot">The text at the foot of every page beside its number.</param>
    public static string For(Paper paper, string foot) =>
        $$"""
            @page {
              size: {{paper.Name}}; margin: 12mm 12mm 15mm;
              @bottom-left { content: {{CssText.Quoted(foot)}}; font: 8pt sans-serif; }
              @bottom-right { content: "page " counter(page) " of " counter(pages); font: 8pt sans-serif; }
            }
            {{Rules}}
            """;

    private const string Rules = """
        :root { color: #111; background: #fff; }
        * { box-sizing: border-box; }
        body { margin: 0 auto; width: 186mm; max-width: 100%; font: 9.5pt/1.35 sans-serif; overflow-wrap: anywhere; }
        h1 { font-size: 17pt; margin: 0 0 1mm; }
        h2 { font-size: 12.5pt; margin: 6mm 0 2mm; border-bottom: 0.5mm solid #111; break-after: avoid; }
        h3 { font-size: 10.5pt; margin: 3mm 0 1mm; break-after: avoid; }
        p { margin: 0 0 1.5mm; orphans: 3; widows: 3; }
        table { width: 100%; border-collapse: collapse; margin: 0 0 2mm; }
        caption { text-align: left; font-weight: bold; padding: 1mm 0; break-after: avoid; }
        thead { display: table-header-group; }
        tr, figure, li, p, .label, .notice { break-inside: avoid; }
        .marks tbody th { min-width: 0; }
        .marks figure { break-after: avoid; margin-bottom: 1mm; }
        figcaption { font-weight: normal; }
        th, td { border: 0.2mm solid #555; padding: 0.8mm 1.4mm; text-align: left; vertical-align: top; }
        thead th { border-bottom: 0.5mm solid #111; font-size: 8.5pt; }
        thead th, .word { overflow-wrap: normal; }
        tbody th { font-weight: bold; min-width: 16mm; }
        .number { text-align: right; white-space: nowrap; }
        .size { font-weight: bold; }
        .pieces { table-layout: fixed; }
        .pieces th:nth-child(1) { width: 9mm; }
        .pieces th:nth-child(2) { width: 31mm; }
        .pieces th:nth-child(3) { width: 18mm; }
        .pieces th:nth-child(4) { width: 11mm; }
        .pieces th:nth-child(5) { width: 30mm; }
        .pieces th:nth-child(6) { width: 33mm; }
        .pieces th:nth-child(7) { width: 13mm; }
        .pieces th:nth-child(9) { width: 12mm; }
        .pieces tbody th { width: auto; min-width: 0; }
        .lay { display: flex; gap: 1mm; align-items: center; }
        .lay svg { flex: none; }
        .lead { break-after: avoid; }
        .why { font-size: 8.5pt; color: #333; }
        .big { font-weight: bold; white-space: nowrap; overflow-wrap: normal; }
        .total th, .total td { border-top: 0.6mm solid #111; font-weight: bold; }
        figure { margin: 0 0 4mm; }
        svg { display: block; max-width: 100%; height: auto; }
        ol { margin: 0; padding-left: 8mm; }
        li { margin: 0 0 1.2mm; padding-left: 1mm; }
        .pieces-of { font-size: 8.5pt; color: #333; }
        .notice { border: 0.6mm solid #111; padding: 1.5mm 2.5mm; margin: 0 0 2mm; }
        .labels { display: grid; grid-template-columns: repeat(3, 1fr); gap: 0; }
        .label { border: 0.25mm dashed #111; padding: 2mm; min-height: 27mm; margin: 0 -0.25mm -0.25mm 0; }
        .label strong { display: block; font-size: 11pt; }
        @media print { h2.page { break-before: page; margin-top: 0; } }
        @media screen { body { padding: 5mm; width: 196mm; } }
        """;
}
