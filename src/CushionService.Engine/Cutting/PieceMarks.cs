using CushionService.Engine.Geometry;
using CushionService.Engine.Measures;
using CushionService.Engine.Patterns;

namespace CushionService.Engine.Cutting;

/// <summary>The marks of a cut piece: notches where edges meet within a side and at the middle of long edges, fold lines of hems and
/// turn-ins, and the panel's own.</summary>
/// <remarks>Centre notches front and back, and at the start and stop of a closure (common practice, no source).</remarks>
public static class PieceMarks
{
    private static readonly Length ShortestNotched = Length.FromInches(6);

    /// <summary>The marks of a piece; none for a loose piece.</summary>
    /// <param name="piece">The piece.</param>
    /// <param name="unit">The unit of the distances in words.</param>
    public static IReadOnlyList<PieceMark> Of(CutPiece piece, LengthUnit unit)
    {
        var marks = new List<PieceMark>();
        if (piece.Panel is not { } panel)
        {
            return marks;
        }

        for (var i = 0; i < panel.Edges.Length; i++)
        {
            Edge edge = panel.Edges[i], next = panel.Edges[(i + 1) % panel.Edges.Length];
            if (edge.Facing == next.Facing)
            {
                marks.Add(Notch(piece, edge, edge.To, $"where {edge.Name} meets {next.Name}", unit));
            }

            if (edge.Finish.Kind == FinishKind.Seam && edge.Length >= ShortestNotched)
            {
                marks.Add(Notch(piece, edge, edge.Middle, $"middle of {edge.Name}", unit));
            }

            AddFolds(marks, piece, edge, unit);
        }

        foreach (PanelMark mark in panel.Marks)
        {
            Point from = Placed(piece, mark.From);
            Point? to = mark.To is { } end ? Placed(piece, end) : null;
            marks.Add(new PieceMark(mark.Kind, from, to, $"{mark.Purpose}; {Distances(piece, from, unit)}"));
        }

        return marks;
    }

    private static PieceMark Notch(CutPiece piece, Edge edge, Point at, string where, LengthUnit unit)
    {
        Point placed = Placed(piece, at);
        Point onCut = edge.Facing switch
        {
            EdgeFacing.Down => placed with { Y = Length.Zero },
            EdgeFacing.Right => placed with { X = piece.Width },
            EdgeFacing.Up => placed with { Y = piece.Length },
            _ => placed with { X = Length.Zero },
        };
        return new PieceMark(MarkKind.Notch, onCut, null, $"Notch {where}; {Distances(piece, onCut, unit)}");
    }

    private static void AddFolds(List<PieceMark> marks, CutPiece piece, Edge edge, LengthUnit unit)
    {
        EdgeFinish finish = edge.Finish;
        if (finish.Kind is FinishKind.Seam or FinishKind.Caught || finish.Depth == Length.Zero)
        {
            return;
        }

        for (var turn = 1; turn <= finish.Turns; turn++)
        {
            Length inward = turn * finish.Depth;
            (Point from, Point to) = edge.Facing switch
            {
                EdgeFacing.Down => (new Point(Length.Zero, inward), new Point(piece.Width, inward)),
                EdgeFacing.Up => (new Point(Length.Zero, piece.Length - inward), new Point(piece.Width, piece.Length - inward)),
                EdgeFacing.Left => (new Point(inward, Length.Zero), new Point(inward, piece.Length)),
                _ => (new Point(piece.Width - inward, Length.Zero), new Point(piece.Width - inward, piece.Length)),
            };
            marks.Add(new PieceMark(MarkKind.FoldLine, from, to, $"Fold {turn} of the {finish.Name}, {LengthText.Format(inward, unit)} from the cut edge"));
        }
    }

    // Marks stand on the finished panel; what tufts take up is spread over it.
    private static Point Placed(CutPiece piece, Point point) => new(
        Spread(point.X, piece.Panel!.Width, piece.Panel.TakeUpAcross) + piece.Origin.X,
        Spread(point.Y, piece.Panel.Height, piece.Panel.TakeUpAlong) + piece.Origin.Y);

    private static Length Spread(Length at, Length over, Length takeUp) =>
        takeUp == Length.Zero ? at : at + Length.FromNanometres((long)((Int128)takeUp.Nanometres * at.Nanometres / over.Nanometres));

    // From the nearer cut end both ways.
    private static string Distances(CutPiece piece, Point point, LengthUnit unit)
    {
        bool left = point.X <= piece.Width - point.X, lower = point.Y <= piece.Length - point.Y;
        string across = LengthText.Format(left ? point.X : piece.Width - point.X, unit);
        string along = LengthText.Format(lower ? point.Y : piece.Length - point.Y, unit);
        return $"{across} from the {(left ? "left" : "right")} end, {along} from the {(lower ? "lower" : "upper")} edge";
    }
}
