namespace CushionService.Documents.CutSheets;

/// <summary>A table whose head is repeated on every page that it runs over.</summary>
internal static class HtmlTable
{
    /// <summary>Opens a table up to its rows.</summary>
    /// <param name="html">The document.</param>
    /// <param name="style">The class of the style sheet that it takes; empty for none.</param>
    /// <param name="caption">What it lists; empty where the heading above says so.</param>
    /// <param name="heads">The heads of its columns.</param>
    public static void Open(Html html, string style, string caption, params ReadOnlySpan<string> heads)
    {
        html.Add($"""<table class="{style}">""");
        if (caption.Length > 0)
        {
            html.Add($"<caption>{caption}</caption>");
        }

        html.Add($"<thead><tr>");
        foreach (string head in heads)
        {
            html.Add($"""<th scope="col">{head}</th>""");
        }

        html.Add($"</tr></thead><tbody>");
    }

    /// <summary>Closes it.</summary>
    public static void Close(Html html) => html.Add($"</tbody></table>");
}
