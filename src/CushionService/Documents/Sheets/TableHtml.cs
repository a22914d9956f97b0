using System.Globalization;

namespace CushionService.Documents.Sheets;

/// <summary>A table as HTML: each row is a group of its own, so that its remark stays with it.</summary>
internal static class TableHtml
{
    /// <summary>Adds a table.</summary>
    /// <param name="html">The document.</param>
    /// <param name="styles">Takes the widths of columns.</param>
    /// <param name="table">The table.</param>
    /// <param name="em">Size of the type, in millimetres.</param>
    public static void Add(Html html, StyleBook styles, Table table, double em)
    {
        double[] widths = ColumnWidths.Of(table, Printed / em);
        html.Add($"""<table class="{table.Name}">""");
        if (table.Caption.Length > 0)
        {
            html.Add($"<caption>{table.Caption}</caption>");
        }

        html.Add($"<colgroup>");
        foreach (double width in widths)
        {
            string share = (100 * width / widths.Sum()).ToString("0.##", CultureInfo.InvariantCulture);
            html.Add($"""<col class="{styles.ClassOf($"width: {share}%")}">""");
        }

        html.Add($"</colgroup><thead><tr>");
        foreach (Column column in table.Columns)
        {
            html.Add($"""<th scope="col" class="{ClassOf(column.Kind)}">{column.Head}</th>""");
        }

        html.Add($"</tr></thead>");
        foreach (Row row in table.Rows)
        {
            AddRow(html, table, row);
        }

        html.Add($"</table>");
    }

    // What A4 and Letter both hold between their margins.
    private const double Printed = 186;

    private static void AddRow(Html html, Table table, Row row)
    {
        html.Add($"""<tbody class="{(row.IsTotal ? "total" : "")}"><tr>""");
        for (int i = 0; i < row.Cells.Count; i++)
        {
            AddCell(html, table.Columns[i].Kind, row.Cells[i]);
        }

        html.Add($"</tr>");
        if (row.Note is { Length: > 0 } note)
        {
            bool isIndented = table.Columns[0].Kind != ColumnKind.Name;
            // Under the words and not under a box to tick or a number.
            int span = row.Cells.Count - (isIndented ? 1 : 0);
            html.Add($"""<tr class="why">{new Svg(isIndented ? "<td></td>" : "")}<td colspan="{span}">{note}</td></tr>""");
        }

        html.Add($"</tbody>");
    }

    private static void AddCell(Html html, ColumnKind kind, Cell cell)
    {
        bool heads = kind == ColumnKind.Name;
        string style = ClassOf(kind);
        var open = new Svg(
            heads ? """<th scope="row">"""
            : style.Length > 0 ? $"""<td class="{style}">"""
            : "<td>"
        );
        var close = new Svg(heads ? "</th>" : "</td>");
        if (kind == ColumnKind.Tick)
        {
            html.Add($"""{open}<span class="tick"></span>{close}""");
        }
        else if (cell.Sign is { } sign)
        {
            html.Add($"""{open}<span class="{(cell.Bold ? "lay bold" : "lay")}">{new Svg(sign)}<span>{cell.Text}</span></span>{close}""");
        }
        else if (cell.Link is { } link)
        {
            html.Add($"""{open}<a href="{link}">{cell.Text}</a>{close}""");
        }
        else if (cell.Bold)
        {
            html.Add($"""{open}<strong>{cell.Text}</strong>{close}""");
        }
        else
        {
            html.Add($"""{open}{cell.Text}{close}""");
        }
    }

    private static string ClassOf(ColumnKind kind) =>
        kind switch
        {
            ColumnKind.Number => "number",
            ColumnKind.Tick => "mark",
            _ => "",
        };
}
