using System.Text;
using CushionService.Contract.Orders;
using CushionService.Rest.Estimating;
using CushionService.Streaming;
using Microsoft.Extensions.Primitives;

namespace CushionService.Bulk;

/// <summary>Reads orders of a table (CSV, RFC 4180): a row for each, whose columns are the parameters of an estimate, and
/// <c>reference</c>. An empty cell is a parameter that was left out.</summary>
internal static class CsvOrders
{
    private const string Reference = "reference";

    /// <summary>The orders of a table, each with its line, from 1 for the names of the columns. Rows without a value are passed
    /// over.</summary>
    public static async IAsyncEnumerable<NumberedOrder> ReadAsync(TextReader table)
    {
        string[]? names = null;
        long line = 0;
        while (await RowAsync(table) is { } row)
        {
            long number = line + 1;
            line += row.Lines;
            if (names is null)
            {
                names = [.. row.Cells.Select(cell => cell.Trim())];
            }
            else if (row.Cells.Any(cell => cell.Length > 0))
            {
                yield return new NumberedOrder(number, Order(names, row.Cells));
            }
        }
    }

    // A row with more cells than there are names has a parameter without a name, which is refused as unknown.
    private static ReceivedOrder Order(string[] names, List<string> cells)
    {
        IEnumerable<(string Name, string Value)> given = cells
            .Select((cell, i) => (Name: names.ElementAtOrDefault(i) ?? "", Value: cell))
            .Where(cell => cell.Value.Length > 0)
            .ToList();
        ReceivedOrder read = new FlatOrder(
            given
                .Where(cell => cell.Name != Reference)
                .GroupBy(cell => cell.Name, cell => cell.Value)
                .Select(group => new KeyValuePair<string, StringValues>(group.Key, new StringValues([.. group])))
        ).Order;
        string? reference = given.FirstOrDefault(cell => cell.Name == Reference).Value;
        return reference is null || read.Order is null ? read : read with { Order = read.Order with { Reference = reference } };
    }

    // A quoted cell may have line breaks, and a quotation mark as two of them.
    private static async Task<(List<string> Cells, int Lines)?> RowAsync(TextReader table)
    {
        if (await table.ReadLineAsync() is not { } text)
        {
            return null;
        }

        List<string> cells = [];
        StringBuilder cell = new();
        int lines = 1;
        bool quoted = false;
        for (int i = 0; ; i++)
        {
            if (i == text.Length)
            {
                if (!quoted || await table.ReadLineAsync() is not { } more)
                {
                    cells.Add(cell.ToString());
                    return (cells, lines);
                }

                cell.Append('\n');
                (text, i) = (more, -1);
                lines++;
            }
            else if (quoted && text[i] == '"' && i + 1 < text.Length && text[i + 1] == '"')
            {
                cell.Append(text[i++]);
            }
            else if (text[i] == '"')
            {
                quoted = !quoted;
            }
            else if (text[i] == ',' && !quoted)
            {
                cells.Add(cell.ToString());
                cell.Clear();
            }
            else
            {
                cell.Append(text[i]);
            }
        }
    }
}
