using CushionService.Contract.Answers;
using CushionService.Nesting;

namespace CushionService.Documents.Drawings;

/// <summary>What is on a piece: its label and the sign of how it may lie, side by side in the room that there is.</summary>
/// <param name="Label">Null when not even the number fits.</param>
/// <param name="LabelAt">Middle of the label.</param>
/// <param name="Arrow">Length of the sign, in user units; 0 when there is no room.</param>
/// <param name="ArrowAt">Middle of the sign.</param>
internal sealed record Caption(Label? Label, Spot LabelAt, double Arrow, Spot ArrowAt)
{
    // In millimetres of the nominal print: round the caption, across the sign's strip, and the longest and shortest sign
    // that is drawn.
    private const double Margin = 0.25;
    private const double Strip = 3;
    private const double LongestArrow = 11;
    private const double ShortestArrow = 4.5;

    /// <summary>Fills a room.</summary>
    /// <param name="number">The piece's number.</param>
    /// <param name="piece">The piece.</param>
    /// <param name="units">Prints its size.</param>
    /// <param name="room">In user units.</param>
    /// <param name="up">The piece's own up in the drawing.</param>
    /// <param name="mm">User units in a millimetre.</param>
    public static Caption For(string number, PieceAnswer piece, OrderUnits units, Box room, Spot up, double mm)
    {
        Box inner = room.Inset(Margin * mm);
        bool upright = up.X == 0;
        double along = (upright ? inner.Height : inner.Width) / mm;
        double arrow = Math.Min(LongestArrow, 0.8 * along);
        arrow = piece.Rotation == Rotations.QuarterTurns ? ShortestArrow : arrow;
        double strip = (piece.Rotation == Rotations.QuarterTurns ? ShortestArrow + 1 : Strip) * mm;
        Box rest = upright
            ? inner with
            {
                X = inner.X + strip,
                Width = inner.Width - strip,
            }
            : inner with
            {
                Y = inner.Y + strip,
                Height = inner.Height - strip,
            };
        Label? beside = arrow >= ShortestArrow && arrow <= along ? Fit(rest) : null;
        // Words come before the sign: without room for both, the whole room is the label's.
        if (beside is null)
        {
            return new Caption(Fit(inner), inner.Centre, 0, inner.Centre);
        }

        Box place = upright ? inner with { Width = strip } : inner with { Height = strip };
        return new Caption(beside, rest.Centre, arrow * mm, place.Centre);

        Label? Fit(Box box) =>
            Label.For(number, PieceNames.BesideNumber(piece), units.Size(piece.Width, piece.Length), box.Width / mm, box.Height / mm);
    }

    /// <summary>The same caption elsewhere.</summary>
    /// <param name="by">In user units.</param>
    public Caption Moved(Spot by) => this with { LabelAt = LabelAt + by, ArrowAt = ArrowAt + by };

    /// <summary>Draws the sign and the words.</summary>
    /// <param name="canvas">The drawing.</param>
    /// <param name="up">The piece's own up in the drawing, one long.</param>
    /// <param name="rotation">The turns that the piece may be laid in.</param>
    public void Draw(Canvas canvas, Spot up, Rotations rotation)
    {
        if (Arrow > 0)
        {
            GrainArrow.Draw(canvas, ArrowAt, up, Arrow, rotation);
        }

        Label?.Draw(canvas, LabelAt);
    }
}
