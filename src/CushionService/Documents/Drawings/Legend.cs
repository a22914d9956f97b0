namespace CushionService.Documents.Drawings;

/// <summary>Explains the signs of a drawing and the numbers that stand for names, in rows under it.</summary>
internal sealed class Legend
{
    // In millimetres of the nominal print.
    private const double Type = 2.4;
    private const double RowHeight = 5.4;
    private const double Gap = 5;
    private const double SignWidth = 7;
    private readonly List<(LegendItem Item, string Words, double X, int Row)> _entries = [];
    private readonly int _rows;

    /// <param name="items">In reading order.</param>
    /// <param name="width">Room across, in millimetres.</param>
    /// <summary>Puts the entries into rows, each as many as the width holds.</summary>
    public Legend(IEnumerable<LegendItem> items, double width)
    {
        double x = 0;
        foreach (LegendItem item in items)
        {
            double sign = item.Sign is null ? 0 : SignWidth;
            string words = TextWidth.Shorten(PrintableText.Of(item.Words), (width - sign) / Type);
            double needed = sign + TextWidth.Of(words) * Type;
            if (x > 0 && x + needed > width)
            {
                x = 0;
                _rows++;
            }

            _entries.Add((item, words, x, _rows));
            x += needed + Gap;
        }

        _rows += _entries.Count > 0 ? 1 : 0;
    }

    /// <summary>In millimetres.</summary>
    public double Height => _rows * RowHeight;

    /// <summary>Draws the legend.</summary>
    /// <param name="canvas">The drawing.</param>
    /// <param name="corner">Its upper left corner, in user units.</param>
    public void Draw(Canvas canvas, Spot corner)
    {
        double mm = canvas.Mm;
        foreach ((LegendItem item, string words, double x, int row) in _entries)
        {
            Spot at = corner + new Spot(x * mm, row * RowHeight * mm);
            item.Sign?.Invoke(canvas, new Box(at.X, at.Y + 0.1 * mm, (SignWidth - 1.5) * mm, (RowHeight - 0.2) * mm));
            double words0 = item.Sign is null ? 0 : SignWidth * mm;
            canvas.Text(at + new Spot(words0, 3.5 * mm), words, Type * mm);
        }
    }
}
