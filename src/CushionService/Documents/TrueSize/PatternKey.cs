using System.Globalization;
using CushionService.Contract;
using CushionService.Documents.Drawings;

namespace CushionService.Documents.TrueSize;

/// <summary>The first sheets of a set of patterns: a square to check the printer by, how to put the sheets together, and for each piece
/// the map of its sheets and its marks in words.</summary>
internal sealed class PatternKey
{
    private const double Text = 3;
    private const double Line = 1.35 * Text;
    private const double CellWidth = 9;
    private const double CellHeight = 7;

    private static readonly string[] Advice =
    [
        "Print at 100 %, and measure the square with a ruler before you cut.",
        "Solid lines are cut, dashed lines are sewn. Notches lie on the cut line.",
        "A piece over several sheets: trim each sheet along its dotted frame on two sides, lay it on its neighbour so that "
            + "the ringed crosses and the numbered diamonds meet, and tape.",
        "Sheets without a line are left out; their places stay empty in the map.",
    ];

    private readonly Paper _paper;
    private readonly OrderUnits _units;
    private readonly List<(string Drawing, Spot Size)> _pages = [];
    private readonly string _title;
    private Canvas _canvas;
    private double _y;

    private PatternKey(string title, Paper paper, Units units)
    {
        (_title, _units) = (title, new OrderUnits(units));
        _paper = paper.IsRoll ? Paper.For(units) with { Width = paper.Width } : paper;
        _canvas = Open();
    }

    private double Width => _paper.Width - 2 * TileGrid.Margin;

    /// <summary>The pages.</summary>
    /// <param name="title">What the patterns are of.</param>
    /// <param name="sheets">The sheets of the set.</param>
    /// <param name="paper">The paper; a key on a roll is as long as a sheet.</param>
    /// <param name="units">The order's unit.</param>
    public static List<(string Drawing, Spot Size)> Draw(string title, IReadOnlyList<PatternSheet> sheets, Paper paper, Units units)
    {
        var key = new PatternKey(title, paper, units);
        key.AddHead(sheets.Count, units);
        foreach (
            var parts in sheets
                .SelectMany(sheet => sheet.Parts.Select(part => (Sheet: sheet, Part: part)))
                .GroupBy(one => one.Part.Piece)
                .OrderBy(group => group.Key.Number)
        )
        {
            key.Add(parts.Key, [.. parts]);
        }

        key._pages.Add((key._canvas.Finish(), key.Size));
        return key._pages;
    }

    private Spot Size => new(_paper.Width, _paper.Height);

    private Canvas Open()
    {
        string id = string.Create(CultureInfo.InvariantCulture, $"key-{_pages.Count + 1}");
        _y = TileGrid.Margin + 4;
        return new Canvas(new Spot(_paper.Width, _paper.Height), 1, id, $"Key to the patterns of {_title}", "How the sheets go together.");
    }

    private void Room(double height)
    {
        if (_y + height > _paper.Height - TileGrid.Margin)
        {
            _pages.Add((_canvas.Finish(), Size));
            _canvas = Open();
        }
    }

    private void Write(string text, double size = Text, bool bold = false, double indent = 0)
    {
        Room(size);
        _canvas.Text(
            new Spot(TileGrid.Margin + indent, _y),
            TextWidth.Shorten(PrintableText.Of(text), (Width - indent) / size, bold),
            size,
            bold: bold
        );
        _y += 1.35 * size;
    }

    private void AddHead(int sheets, Units units)
    {
        (double side, string measure) = units == Units.In ? (101.6, "4 in") : (100.0, "100 mm");
        Write($"Patterns at true size: {_title}", 5, true);
        Write(string.Create(CultureInfo.InvariantCulture, $"{sheets} sheets of {_paper.Name}"));
        _y += 2;
        double top = _y;
        _canvas.OpenStroked(Stroke.Cut);
        _canvas.Rectangle(new Box(TileGrid.Margin, top, side, side), ("class", "check"));
        _canvas.Close();
        _canvas.Text(new Spot(TileGrid.Margin + side / 2, top + side / 2), $"{measure} × {measure}", 4, "middle", true);
        double x = TileGrid.Margin + side + 5;
        double y = top + Text;
        foreach (string advice in Advice)
        {
            foreach (string line in TextWrap.Lines(advice, (_paper.Width - TileGrid.Margin - x) / Text))
            {
                _canvas.Text(new Spot(x, y), line, Text);
                y += Line;
            }

            y += Line / 2;
        }

        _y = top + side + 8;
    }

    private void Add(PatternPiece piece, (PatternSheet Sheet, PatternPart Part)[] parts)
    {
        TileGrid? grid = parts[0].Part.Tile?.Grid;
        double map = grid is null ? 0 : grid.Rows * CellHeight;
        Room(Math.Min(map + 3 * Line, 100));
        string size = _units.Size(piece.Answer.Width, piece.Answer.Length);
        string number = piece.Number.ToString(CultureInfo.InvariantCulture);
        Write($"{number}: {piece.Answer.Label ?? piece.Answer.Id}", Text, true);
        string where = grid is null
            ? string.Create(CultureInfo.InvariantCulture, $"sheet {parts[0].Sheet.Number}")
            : string.Create(CultureInfo.InvariantCulture, $"{parts.Length} sheets");
        Write(string.Create(CultureInfo.InvariantCulture, $"{size}, cut {piece.Answer.Quantity} of {piece.Answer.Fabric}; {where}"));
        foreach (PatternPiece same in piece.Same)
        {
            string also = same.Number.ToString(CultureInfo.InvariantCulture);
            Write(
                string.Create(
                    CultureInfo.InvariantCulture,
                    $"also {also}: {same.Answer.Label ?? same.Answer.Id}, cut {same.Answer.Quantity} of {same.Answer.Fabric}"
                )
            );
        }

        if (grid is not null)
        {
            AddMap(grid, parts);
        }

        foreach (string line in MarkWords.Lines(piece.Answer, _units, (Width - 4) / MarkWords.Type))
        {
            Write(line, MarkWords.Type, indent: 4);
        }

        _y += Line;
    }

    private void AddMap(TileGrid grid, (PatternSheet Sheet, PatternPart Part)[] parts)
    {
        double scale = Math.Min(1, Math.Min(Width / (grid.Columns * CellWidth), 0.7 * _paper.Height / (grid.Rows * CellHeight)));
        (double width, double height) = (CellWidth * scale, CellHeight * scale);
        Room(grid.Rows * height);
        _canvas.OpenStroked(Stroke.Fine);
        foreach ((_, PatternPart part) in parts)
        {
            _canvas.Rectangle(new Box(TileGrid.Margin + part.Tile!.Column * width, _y - Text + part.Tile.Row * height, width, height));
        }

        _canvas.Close();
        foreach ((PatternSheet sheet, PatternPart part) in parts)
        {
            var at = new Spot(
                TileGrid.Margin + (part.Tile!.Column + 0.5) * width,
                _y - Text + (part.Tile.Row + 0.5) * height + 0.35 * Text * scale
            );
            _canvas.Text(at, sheet.Number.ToString(CultureInfo.InvariantCulture), Text * scale, "middle");
        }

        _y += grid.Rows * height + Line;
    }
}
