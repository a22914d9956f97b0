using System.Globalization;
using CushionService.Contract;
using CushionService.Documents.Drawings;
using CushionService.Engine.Measures;
using CushionService.Engine.Messages;

namespace CushionService.Documents.TrueSize;

/// <summary>The first sheets of a set of patterns: a square to check the printer by, how to put the sheets together, and for each piece
/// the map of its sheets and its marks in words.</summary>
internal sealed class PatternKey
{
    private const double Text = 3;
    private const double Line = 1.35 * Text;
    private const double CellWidth = 9;
    private const double CellHeight = 7;

    private static readonly Message[] Advice = [PatternTexts.PrintAt, PatternTexts.LinesMean, PatternTexts.HowToJoin, PatternTexts.LeftOut];

    private readonly Paper _paper;
    private readonly OrderUnits _units;
    private readonly List<(string Drawing, Spot Size)> _pages = [];
    private readonly string _title;
    private Canvas _canvas;
    private double _y;

    private PatternKey(string title, Paper paper, OrderUnits units)
    {
        (_title, _units) = (title, units);
        _paper = paper.IsRoll ? Paper.For(IsInches ? Units.In : Units.Mm) with { Width = paper.Width } : paper;
        _canvas = Open();
    }

    private bool IsInches => _units.Unit == LengthUnit.Inch;

    private double Width => _paper.Width - 2 * TileGrid.Margin;

    /// <summary>The pages.</summary>
    /// <param name="title">What the document is called.</param>
    /// <param name="sheets">The sheets of the set.</param>
    /// <param name="paper">The paper; a key on a roll is as long as a sheet.</param>
    /// <param name="units">The order's unit and the reader's language.</param>
    public static List<(string Drawing, Spot Size)> Draw(string title, IReadOnlyList<PatternSheet> sheets, Paper paper, OrderUnits units)
    {
        var key = new PatternKey(title, paper, units);
        key.AddHead(sheets.Count);
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
        return new Canvas(
            new Spot(_paper.Width, _paper.Height),
            1,
            id,
            _units.Say(PatternTexts.KeyTitle(_title)),
            _units.Say(PatternTexts.KeyShows)
        );
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

    private void AddHead(int sheets)
    {
        (double side, string square) = IsInches ? (101.6, _units.Size(4, 4)) : (100.0, "100\u00A0×\u00A0100\u00A0mm");
        Write(_title, 5, true);
        Write(_units.Say(PatternTexts.SheetsOf(sheets, _paper.Name)));
        _y += 2;
        double top = _y;
        _canvas.OpenStroked(Stroke.Cut);
        _canvas.Rectangle(new Box(TileGrid.Margin, top, side, side), ("class", "check"));
        _canvas.Close();
        _canvas.Text(new Spot(TileGrid.Margin + side / 2, top + side / 2), square, 4, "middle", true);
        double x = TileGrid.Margin + side + 5;
        double y = top + Text;
        foreach (Message advice in Advice)
        {
            foreach (string line in TextWrap.Lines(_units.Say(advice), (_paper.Width - TileGrid.Margin - x) / Text))
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
        Write(_units.Say(PatternTexts.Piece(piece.Number, piece.Answer.Label ?? piece.Answer.Id)), Text, true);
        Write(
            _units.Say(
                PatternTexts.CutFrom(
                    size,
                    piece.Answer.Quantity,
                    piece.Answer.Fabric,
                    grid is null ? PatternTexts.OnSheet(parts[0].Sheet.Number) : PatternTexts.OverSheets(parts.Length)
                )
            )
        );
        foreach (PatternPiece same in piece.Same)
        {
            Write(
                _units.Say(PatternTexts.AlsoCut(same.Number, same.Answer.Label ?? same.Answer.Id, same.Answer.Quantity, same.Answer.Fabric))
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
