using System.Globalization;

namespace CushionService.Documents.Sheets;

/// <summary>How a sheet looks in a browser, on paper first. All lengths follow the size of the type.</summary>
internal static class Stylesheet
{
    /// <summary>The style sheet of a sheet.</summary>
    /// <param name="sheet">The sheet, for its paper, its title at the foot of each page, and its look.</param>
    public static string For(Sheet sheet) =>
        $$"""
            @page {
              size: {{sheet.Paper.Name}}; margin: 12mm 12mm 15mm;
              @bottom-left { content: {{CssText.Quoted(sheet.Title)}}; font: 8pt sans-serif; }
              @bottom-right { content: counter(page) " / " counter(pages); font: 8pt sans-serif; }
            }
            :root { --accent: {{sheet.Look.Accent}}; }
            body { font-size: {{Number(sheet.Look.Type)}}pt; width: {{Number(sheet.Paper.Width - 24)}}mm; }
            {{Rules}}
            """;

    private static string Number(double value) => value.ToString("0.###", CultureInfo.InvariantCulture);

    private const string Rules = """
        :root { color: #111; background: #fff; }
        * { box-sizing: border-box; }
        body { margin: 0 auto; max-width: 100%; font-family: sans-serif; line-height: 1.32; overflow-wrap: break-word; }
        h1 { font-size: 1.9em; margin: 0 0 0.2em; color: var(--accent); line-height: 1.2; }
        h2 { font-size: 1.3em; margin: 0.7em 0 0.3em; border-bottom: 0.4mm solid var(--accent); color: var(--accent); break-after: avoid; }
        h3 { font-size: 1.08em; margin: 0.8em 0 0.1em; break-after: avoid; }
        h1, h2, h3, p, td, th, li, caption { unicode-bidi: plaintext; text-align: left; }
        p { margin: 0.35em 0 0; orphans: 3; widows: 3; }
        .small { font-size: 0.86em; }
        .large { font-size: 1.25em; }
        .notice { border: 0.4mm solid #111; padding: 0.3em 0.6em; margin: 0.45em 0 0; break-inside: avoid; }
        table { width: 100%; table-layout: fixed; border-collapse: collapse; margin: 0.4em 0 0; }
        caption { font-weight: bold; padding: 0.3em 0; break-after: avoid; }
        thead { display: table-header-group; border-bottom: 0.4mm solid #111; }
        tbody { break-inside: avoid; border-bottom: 0.15mm solid #111; }
        thead, tbody:first-of-type { break-after: avoid; }
        tbody:last-of-type { break-before: avoid; }
        th, td { padding: 0.25em 0.45em; vertical-align: top; }
        thead th { font-size: 0.88em; }
        .why td { font-size: 0.86em; color: #333; padding-top: 0; }
        .number, thead .number { text-align: right; }
        .total { border-top: 0.4mm solid #111; font-weight: bold; }
        .tick { display: inline-block; width: 1em; height: 1em; border: 0.3mm solid #111; vertical-align: -0.1em; }
        .lay { display: flex; gap: 0.5em; align-items: center; }
        .bold { font-weight: bold; }
        .lay svg { flex: none; width: 1.7em; height: 1.7em; }
        figure { margin: 0.6em 0 0; max-width: 100%; break-inside: avoid; }
        svg { display: block; width: 100%; height: auto; }
        ul { margin: 0; padding-left: 1.7em; }
        .ticks { list-style: "\2610\00A0"; }
        ol { margin: 0; padding-left: 2.4em; }
        li { margin: 0.3em 0 0; break-inside: avoid; }
        .steps > li::marker { font-weight: bold; color: var(--accent); }
        .steps > li { display: list-item; }
        .steps > li:has(> figure) { display: flow-root list-item; margin-top: 0.8em; }
        .steps > li > figure { float: right; margin: 0 0 0 1em; }
        .steps > li:has(> figure) { position: relative; }
        .beside { display: flex; gap: 1.5em; margin: 0.6em 0 0; break-inside: avoid; }
        .beside > div { min-width: 0; }
        .beside > div > :first-child { margin-top: 0; }
        .framed { gap: 0; margin: 0; }
        .framed > div { border: 0.25mm dashed #111; padding: 0.6em; margin: 0 -0.25mm -0.25mm 0; }
        .size-95 { font-size: 0.95em; }
        .size-90 { font-size: 0.9em; }
        .size-85 { font-size: 0.85em; }
        .size-80 { font-size: 0.8em; }
        a { color: inherit; }
        @media print { .part + .part { break-before: page; } }
        @media screen {
          body { padding: 1.5em; box-sizing: content-box; }
          .part + .part { margin-top: 3em; }
        }
        @media screen and (max-width: 45em) {
          body { width: auto; padding: 1em; box-sizing: border-box; }
          table { table-layout: auto; overflow-wrap: anywhere; hyphens: auto; font-size: 0.72em; }
          thead th, .number, td strong, .lay { overflow-wrap: normal; }
          th, td { padding: 0.25em; }
          th[scope="row"] { min-width: 6.5em; }
          td:not(.number, .mark) { min-width: 3.2em; }
          col { width: auto !important; }
          .beside { display: block; }
          .beside > div { margin-top: 0.8em; }
          .steps > li > figure { float: none; margin: 0.6em 0; }
        }
        """;
}
