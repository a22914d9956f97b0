using CushionService.Engine.Messages;
using CushionService.Nesting;

namespace CushionService.Documents.Drawings;

/// <summary>The sign of how a piece may lie: one head and a foot where one end must stay up, a head at each end where it may stand on
/// its head, four heads where any quarter turn will do.</summary>
internal static class GrainArrow
{
    private const double Head = 1.8;

    // Where four heads meet about a short sign, each is kept to a share of it.
    private const double HeadShare = 0.24;

    /// <summary>What the sign says, in a word or two.</summary>
    /// <param name="rotation">The turns that the piece may be laid in.</param>
    public static Message Meaning(Rotations rotation) => DrawingTexts.Rotation(rotation);

    /// <summary>Draws the sign about its centre.</summary>
    /// <param name="canvas">The drawing.</param>
    /// <param name="centre">In user units.</param>
    /// <param name="up">The piece's own up, one long.</param>
    /// <param name="length">From end to end, in user units.</param>
    /// <param name="rotation">The turns that the piece may be laid in.</param>
    public static void Draw(Canvas canvas, Spot centre, Spot up, double length, Rotations rotation)
    {
        canvas.OpenStroked(Stroke.Mark, Stroke.Ink);
        Shaft(canvas, centre, up, length, rotation != Rotations.None);
        if (rotation == Rotations.QuarterTurns)
        {
            Shaft(canvas, centre, up.Turned(), length, true);
        }

        canvas.Close();
    }

    private static void Shaft(Canvas canvas, Spot centre, Spot up, double length, bool bothEnds)
    {
        Spot top = centre + length / 2 * up;
        Spot foot = centre - length / 2 * up;
        canvas.Line(foot, top);
        double head = Math.Min(Head * canvas.Mm, HeadShare * length);
        Point(canvas, top, up, head);
        if (bothEnds)
        {
            Point(canvas, foot, -1 * up, head);
            return;
        }

        Spot half = head / 2 * up.Turned();
        canvas.Line(foot - half, foot + half);
    }

    private static void Point(Canvas canvas, Spot tip, Spot towards, double head)
    {
        Spot root = tip - head * towards;
        Spot half = head / 2 * towards.Turned();
        canvas.Polygon([tip, root - half, root + half], ("stroke", "none"));
    }
}
