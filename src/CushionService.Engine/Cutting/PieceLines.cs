using System.Collections.Immutable;
using CushionService.Engine.Geometry;
using CushionService.Engine.Measures;

namespace CushionService.Engine.Cutting;

/// <summary>The lines of a cut piece as they are drawn at true size: straight lines and true arcs, from its lower left corner.</summary>
/// <param name="Cut">The cut line, closed, counter-clockwise.</param>
/// <param name="Finished">The finished outline, which the seams follow, closed; empty for a loose piece.</param>
public sealed record PieceLines(ImmutableArray<Segment> Cut, ImmutableArray<Segment> Finished)
{
    /// <summary>The lines of a piece. A rectangle is cut as wide and as long as its size says; any other outline lies outside its seam
    /// line by exactly the allowance.</summary>
    /// <param name="piece">A cut piece.</param>
    /// <returns>Chords instead of arcs where an arc cannot be moved outward (see <see cref="CutCurves.Of"/>).</returns>
    public static PieceLines Of(CutPiece piece)
    {
        if (piece.Panel is not { } panel)
        {
            return new PieceLines(Closed(piece.Outline.IsEmpty ? Corners(piece) : piece.Outline), []);
        }

        ImmutableArray<Segment> finished = [.. panel.Edges.SelectMany(edge => edge.Path).Select(segment => Placed(piece, segment))];
        if (piece.Outline.IsEmpty)
        {
            return new PieceLines(Closed(Corners(piece)), finished);
        }

        ImmutableArray<Segment> cut = CutCurves.Of(panel);
        return new PieceLines(
            cut.IsEmpty ? Closed(piece.Outline) : [.. cut.Select(line => Moved(line, piece.Origin.X, piece.Origin.Y))],
            finished
        );
    }

    private static ImmutableArray<Point> Corners(CutPiece piece) =>
        [
            new Point(Length.Zero, Length.Zero),
            new Point(piece.Width, Length.Zero),
            new Point(piece.Width, piece.Length),
            new Point(Length.Zero, piece.Length),
        ];

    private static ImmutableArray<Segment> Closed(ImmutableArray<Point> corners) =>
        [.. corners.Select((corner, i) => new Segment(corner, corners[(i + 1) % corners.Length]))];

    // What stitching draws in is spread evenly over the flat piece, as its marks are; an arc keeps its sweep.
    private static Segment Placed(CutPiece piece, Segment made) =>
        made with
        {
            From = PieceMarks.Placed(piece, made.From),
            To = PieceMarks.Placed(piece, made.To),
        };

    private static Segment Moved(Segment line, Length right, Length up) =>
        line with
        {
            From = line.From.Moved(right, up),
            To = line.To.Moved(right, up),
        };
}
