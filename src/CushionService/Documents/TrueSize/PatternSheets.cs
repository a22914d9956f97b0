using CushionService.Documents.Drawings;

namespace CushionService.Documents.TrueSize;

/// <summary>Lays pieces out on paper: small ones several to a sheet, large ones over as many sheets as they take, those left out that
/// hold no line or mark.</summary>
/// <remarks>Small pieces lie on shelves, the longest first, each on the first shelf with room (first fit by decreasing height). A piece
/// lies the way that takes less paper; the arrow on it says how its fabric runs.</remarks>
internal sealed class PatternSheets
{
    /// <summary>Between two pieces, in millimetres: room for a line of text.</summary>
    private const double Gap = 6;

    private readonly Paper _paper;
    private readonly double _width;
    private readonly double _height;
    private readonly List<PatternSheet> _sheets = [];

    private PatternSheets(Paper paper)
    {
        _paper = paper;
        _width = paper.Width - 2 * TileGrid.Margin - 2 * TileGrid.Slack;
        _height = paper.Height - 2 * TileGrid.Margin - 2 * TileGrid.Slack;
    }

    /// <summary>The sheets: first those of large pieces, then those of several small ones.</summary>
    /// <param name="pieces">The pieces.</param>
    /// <param name="paper">The paper.</param>
    public static IReadOnlyList<PatternSheet> Of(IReadOnlyList<PatternPiece> pieces, Paper paper)
    {
        var sheets = new PatternSheets(paper);
        List<PatternPiece> small = [];
        foreach (PatternPiece piece in pieces)
        {
            if (sheets.Fits(piece, false) || sheets.Fits(piece, true))
            {
                small.Add(piece);
            }
            else
            {
                sheets.AddTiles(piece);
            }
        }

        sheets.AddShelves(small);
        return sheets._sheets;
    }

    private static (double Across, double Down) Size(PatternPiece piece, bool turned) =>
        turned ? (piece.Drawn.Length, piece.Drawn.Width) : (piece.Drawn.Width, piece.Drawn.Length);

    private bool Fits(PatternPiece piece, bool turned)
    {
        (double across, double down) = Size(piece, turned);
        return across <= _width && down <= _height;
    }

    private void AddTiles(PatternPiece piece)
    {
        (List<Tile> upright, List<Tile> turned) = (Tiles(piece, false), Tiles(piece, true));
        // Counted by sheets that hold a line: empty ones are not printed.
        bool turns = turned.Count < upright.Count;
        foreach (Tile tile in turns ? turned : upright)
        {
            Spot corner = new Spot(TileGrid.Margin, TileGrid.Margin) - new Spot(tile.Net.X, tile.Net.Y);
            Add(new Spot(_paper.Width, _paper.Height), [new PatternPart(piece, piece.View(corner, turns), tile)]);
        }
    }

    private List<Tile> Tiles(PatternPiece piece, bool turned)
    {
        FabricView view = piece.View(new Spot(0, 0), turned);
        Paper paper = _paper.IsRoll
            ? _paper with
            {
                Height = Math.Min(_paper.Height, view.Frame.Height + 2 * TileGrid.Margin + 2 * TileGrid.Slack),
            }
            : _paper;
        return new TileGrid(paper, view.Frame).Holding(piece.Strokes(view));
    }

    // Each sheet is a list of shelves, each shelf a row of pieces.
    private void AddShelves(List<PatternPiece> pieces)
    {
        List<(double Top, double Height, double Used)> shelves = [];
        List<PatternPart> parts = [];
        double bottom = 0;
        foreach ((PatternPiece piece, bool turned) in pieces.Select(piece => (piece, Turns(piece))).OrderByDescending(Depth))
        {
            (double across, double down) = Size(piece, turned);
            int shelf = shelves.FindIndex(shelf => shelf.Height >= down && shelf.Used + across <= _width);
            if (shelf < 0)
            {
                if (bottom + down > _height)
                {
                    AddShared(parts, bottom);
                    (parts, bottom) = ([], 0);
                    shelves.Clear();
                }

                shelves.Add((bottom, down, 0));
                bottom += down + Gap;
                shelf = shelves.Count - 1;
            }

            (double top, double height, double used) = shelves[shelf];
            shelves[shelf] = (top, height, used + across + Gap);
            double edge = TileGrid.Margin + TileGrid.Slack;
            parts.Add(new PatternPart(piece, piece.View(new Spot(edge + used, edge + top), turned), null));
        }

        AddShared(parts, bottom);

        double Depth((PatternPiece Piece, bool Turned) one) => Size(one.Piece, one.Turned).Down;
    }

    // The long side across makes low shelves.
    private bool Turns(PatternPiece piece) =>
        !Fits(piece, false) || (piece.Drawn.Length > piece.Drawn.Width && Fits(piece, true) && _paper.IsRoll);

    private void AddShared(List<PatternPart> parts, double bottom)
    {
        if (parts.Count > 0)
        {
            double height = _paper.IsRoll ? bottom - Gap + 2 * TileGrid.Margin + 2 * TileGrid.Slack : _paper.Height;
            Add(new Spot(_paper.Width, height), parts);
        }
    }

    private void Add(Spot size, IReadOnlyList<PatternPart> parts) => _sheets.Add(new PatternSheet(_sheets.Count + 1, size, parts));
}
