using System.Buffers;
using System.Globalization;
using System.Text;

namespace CushionService.Documents.Exchange;

/// <summary>A table as comma-separated values (RFC 4180): a header line, line ends of CR and LF, and quotes round what needs
/// them.</summary>
/// <remarks>A text that a spreadsheet would take for a formula gets an apostrophe before it, so that a label never runs as one (OWASP,
/// CSV injection). Numbers stay numbers.</remarks>
internal sealed class CsvTable
{
    // Where the decimal sign is a comma, spreadsheets divide lines at semicolons; some at tabs.
    private static readonly SearchValues<char> Quoted = SearchValues.Create(",;\t\"");
    private readonly StringBuilder _text = new();

    /// <param name="names">The names of the columns.</param>
    /// <summary>A table with its header line.</summary>
    public CsvTable(params ReadOnlySpan<string?> names) => Add(names);

    /// <summary>Adds a line.</summary>
    /// <param name="cells">A cell for each column; null for an empty one.</param>
    public void Add(params ReadOnlySpan<string?> cells)
    {
        for (int i = 0; i < cells.Length; i++)
        {
            _text.Append(i == 0 ? "" : ",").Append(Cell(cells[i] ?? ""));
        }

        _text.Append("\r\n");
    }

    /// <summary>A number as the JSON answer writes it.</summary>
    public static string Number(double value) => value.ToString("R", CultureInfo.InvariantCulture);

    /// <inheritdoc/>
    public override string ToString() => _text.ToString();

    private static string Cell(string text)
    {
        string clean = PrintableText.Of(text);
        if (
            clean.AsSpan().TrimStart() is ['=' or '+' or '-' or '@', ..]
            // -2.5 starts like a formula and is a number: a spreadsheet must be able to add it up.
            && !decimal.TryParse(clean, NumberStyles.Float, CultureInfo.InvariantCulture, out _)
        )
        {
            clean = $"'{clean}";
        }

        return clean.AsSpan().IndexOfAny(Quoted) < 0 ? clean : $"\"{clean.Replace("\"", "\"\"", StringComparison.Ordinal)}\"";
    }
}
