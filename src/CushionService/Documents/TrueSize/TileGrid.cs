using CushionService.Documents.Drawings;

namespace CushionService.Documents.TrueSize;

/// <summary>How a piece that is larger than the paper is cut into sheets: net areas edge to edge, a margin all round each for
/// gluing.</summary>
/// <param name="paper">The sheets.</param>
/// <param name="whole">The extent of the piece in its drawing, in millimetres.</param>
internal sealed class TileGrid(Paper paper, Box whole)
{
    /// <summary>From the edge of the paper to the net area, in millimetres: more than printers leave blank.</summary>
    public const double Margin = 15;

    /// <summary>How far lines run on beyond the net area, to be matched with the next sheet's, in millimetres.</summary>
    public const double Overlap = 4;

    /// <summary>Free room round a piece, in millimetres, so that no cut line runs along the edge of a net area.</summary>
    public const double Slack = 1;

    private double NetWidth => paper.Width - 2 * Margin;

    private double NetHeight => paper.Height - 2 * Margin;

    /// <summary>How many sheets lie side by side.</summary>
    public int Columns => Math.Max(1, (int)Math.Ceiling((whole.Width + 2 * Slack) / NetWidth));

    /// <summary>How many sheets lie one below the other.</summary>
    public int Rows => Math.Max(1, (int)Math.Ceiling((whole.Height + 2 * Slack) / NetHeight));

    /// <summary>The sheets that any of the lines passes through, row by row.</summary>
    /// <param name="lines">Straight lines of the drawing, in millimetres.</param>
    public List<Tile> Holding(IReadOnlyList<(Spot From, Spot To)> lines)
    {
        List<Tile> tiles = [];
        for (int row = 0; row < Rows; row++)
        {
            for (int column = 0; column < Columns; column++)
            {
                var net = new Box(whole.X - Slack + column * NetWidth, whole.Y - Slack + row * NetHeight, NetWidth, NetHeight);
                if (lines.Any(line => Outline.Enters(line.From, line.To, net)))
                {
                    tiles.Add(new Tile(row, column, net, this));
                }
            }
        }

        return tiles;
    }
}
