namespace CushionService.Documents.Sheets;

/// <summary>How wide the columns of a table are: as wide as their words need, what is left shared by those that have more to say.</summary>
internal static class ColumnWidths
{
    /// <summary>Space at each side of a cell, in ems.</summary>
    public const double Padding = 0.45;

    /// <summary>Size of a sign, in ems, with the space after it.</summary>
    public const double Sign = 2.2;

    /// <summary>Side of a box to tick, in ems.</summary>
    public const double Tick = 1.3;

    // In ems: a longer word, such as an id without a space, is broken and does not widen its column.
    private const double WidestWord = 24;
    private const double HeadSize = 0.88;

    /// <summary>The widths, in ems; together as wide as the table.</summary>
    /// <param name="table">The table.</param>
    /// <param name="width">Of the table, in ems.</param>
    public static double[] Of(Table table, double width)
    {
        int count = table.Columns.Count;
        double[] least = new double[count];
        double[] most = new double[count];
        for (int i = 0; i < count; i++)
        {
            string head = table.Columns[i].Head;
            least[i] = LineBreaks.Widest(head, true) * HeadSize;
            most[i] = Math.Max(LetterWidth.Of(head, true) * HeadSize, table.Columns[i].Kind == ColumnKind.Tick ? Tick : 0);
            foreach (Cell cell in table.Rows.Where(row => row.Cells.Count == count).Select(row => row.Cells[i]))
            {
                bool bold = cell.Bold || table.Columns[i].Kind == ColumnKind.Name;
                double sign = cell.Sign is null ? 0 : Sign;
                least[i] = Math.Max(least[i], sign + Math.Min(WidestWord, LineBreaks.Widest(cell.Text, bold)));
                most[i] = Math.Max(most[i], sign + LetterWidth.Of(PrintableText.Of(cell.Text), bold));
            }

            least[i] += 2 * Padding;
            most[i] = Math.Max(least[i], most[i] + 2 * Padding);
        }

        return Shared(least, most, width, table.Columns);
    }

    private static double[] Shared(double[] least, double[] most, double width, IReadOnlyList<Column> columns)
    {
        (double needed, double wanted) = (least.Sum(), most.Sum());
        // Three cases: all fits on one line; words must wrap, and room goes to those that have most to say; not even the
        // words fit.
        if (wanted <= width)
        {
            // What is left goes to columns of words, so that figures stay beside each other.
            double[] words = [.. most.Select((wide, i) => columns[i].Kind is ColumnKind.Text or ColumnKind.Name ? wide : 0)];
            double spread = Math.Max(words.Sum(), 1);
            return [.. most.Select((wide, i) => wide + (width - wanted) * (words.Sum() > 0 ? words[i] / spread : 1.0 / most.Length))];
        }

        return needed >= width
            ? [.. least.Select(wide => wide * width / needed)]
            : [.. least.Select((wide, i) => wide + (width - needed) * (most[i] - wide) / (wanted - needed))];
    }
}
