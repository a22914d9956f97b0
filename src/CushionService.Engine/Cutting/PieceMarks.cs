using CushionService.Engine.Geometry;
using CushionService.Engine.Measures;
using CushionService.Engine.Messages;
using CushionService.Engine.Patterns.Panels;

namespace CushionService.Engine.Cutting;

/// <summary>The marks of a cut piece: notches where edges run on into each other, at the middle of long edges, at the quarters of very
/// long ones and where a join comes, dots where the seam line turns a corner, fold lines of hems and turn-ins, an arrow on fabric that may
/// not be turned, and the panel's own.</summary>
/// <remarks>Centre notches front and back, at the start and stop of a closure, and four round a disc, eight above 24 in (common practice,
/// no source).</remarks>
public static class PieceMarks
{
    /// <summary>The marks of a piece; none for a loose piece.</summary>
    /// <param name="piece">The piece.</param>
    public static IReadOnlyList<PieceMark> Of(CutPiece piece)
    {
        var marks = new List<PieceMark>();
        if (piece.Panel is not { } panel)
        {
            return marks;
        }

        for (var i = 0; i < panel.Edges.Length; i++)
        {
            Edge edge = panel.Edges[i],
                next = panel.Edges[(i + 1) % panel.Edges.Length];
            if (RunsOn(edge, next))
            {
                marks.Add(Notch(piece, edge, edge.Length, MarkTexts.NotchWhereEdgesMeet(edge.Name, next.Name)));
            }
            else if (edge.Finish.Kind == FinishKind.Seam && next.Finish.Kind == FinishKind.Seam)
            {
                Point corner = Placed(piece, edge.To);
                marks.Add(new PieceMark(MarkKind.SeamDot, corner, null, At(piece, corner, MarkTexts.SeamCorner(edge.Name, next.Name))));
            }

            if (edge.Finish.Kind == FinishKind.Seam)
            {
                foreach (EdgeNotch notch in EdgeNotch.Of(edge))
                {
                    marks.Add(Notch(piece, edge, notch.At, notch.Because) with { Kind = notch.Kind });
                }
            }

            AddFolds(marks, piece, edge);
        }

        foreach (PanelMark mark in panel.Marks)
        {
            Point from = Placed(piece, mark.From);
            Point? to = mark.To is { } end ? Placed(piece, end) : null;
            marks.Add(new PieceMark(mark.Kind, from, to, At(piece, from, MarkWords.Of(mark.Purpose))));
        }

        if (piece.Rotations == Nesting.Rotations.None)
        {
            Length x = piece.Width.HalfUp();
            (Length low, Length high) = FabricAt(piece, x);
            Length eighth = Length.FromNanometres((high - low).Nanometres / 8);
            marks.Add(new PieceMark(MarkKind.UpArrow, new Point(x, low + 3 * eighth), new Point(x, low + 5 * eighth), MarkTexts.Up));
        }

        return marks;
    }

    // Where the piece lies on a plumb line: from its lower to its upper edge there, the longest stretch where it is crossed more than once.
    private static (Length Low, Length High) FabricAt(CutPiece piece, Length x)
    {
        if (piece.Outline.IsEmpty)
        {
            return (Length.Zero, piece.Length);
        }

        Length[] crossings =
        [
            .. piece
                .Outline.Select((from, i) => (From: from, To: piece.Outline[(i + 1) % piece.Outline.Length]))
                .Where(side => side.From.X > x != side.To.X > x)
                .Select(side =>
                    side.From.Y
                    + Length.FromNanometres(
                        (long)(
                            (Int128)(side.To.Y - side.From.Y).Nanometres
                            * (x - side.From.X).Nanometres
                            / (side.To.X - side.From.X).Nanometres
                        )
                    )
                )
                .Order(),
        ];
        return crossings.Chunk(2).Select(pair => (Low: pair[0], High: pair[1])).MaxBy(pair => pair.High - pair.Low);
    }

    // One edge goes on in the direction in which the other ends.
    private static bool RunsOn(Edge edge, Edge next) =>
        Math.Abs(Math.IEEERemainder(next.Path[0].StartDirection - edge.Path[^1].EndDirection, 2 * Math.PI)) < 1e-4;

    // On the cut line, square to the seam line.
    private static PieceMark Notch(CutPiece piece, Edge edge, Length distance, Message what)
    {
        (Point at, double direction) = edge.At(distance);
        Point placed = Placed(piece, at);
        Point onCut = edge.Facing switch
        {
            EdgeFacing.Down when !IsWithin(piece) => placed with { Y = Length.Zero },
            EdgeFacing.Right when !IsWithin(piece) => placed with { X = piece.Width },
            EdgeFacing.Up when !IsWithin(piece) => placed with { Y = piece.Length },
            EdgeFacing.Left when !IsWithin(piece) => placed with { X = Length.Zero },
            _ => Beyond(piece, placed, direction, edge.Finish.Allowance.Nanometres),
        };
        return new PieceMark(MarkKind.Notch, onCut, null, At(piece, onCut, what));
    }

    // A template's level and plumb edges may lie inside its extent.
    private static bool IsWithin(CutPiece piece) => !piece.Outline.IsEmpty;

    // Out from the seam line by the allowance, but never off the piece: rounding may leave a point a micrometre outside.
    private static Point Beyond(CutPiece piece, Point seam, double direction, double allowance)
    {
        Point onLine = seam.Moved(
            Length.FromNanometres((long)Math.Round(allowance * Math.Sin(direction))),
            Length.FromNanometres((long)Math.Round(-allowance * Math.Cos(direction)))
        );
        return new Point(
            Length.Min(Length.Max(onLine.X, Length.Zero), piece.Width),
            Length.Min(Length.Max(onLine.Y, Length.Zero), piece.Length)
        );
    }

    // Seams and caught edges are not folded. Each turn of a hem has a fold of its own, the outer one first.
    private static void AddFolds(List<PieceMark> marks, CutPiece piece, Edge edge)
    {
        EdgeFinish finish = edge.Finish;
        if (finish.Kind is FinishKind.Seam or FinishKind.Caught || finish.Depth == Length.Zero)
        {
            return;
        }

        for (var turn = 1; turn <= finish.Turns; turn++)
        {
            Length inward = turn * finish.Depth;
            (Point from, Point to) = piece.Outline.IsEmpty
                ? AcrossPiece(piece, edge.Facing, inward)
                : BesideEdge(piece, edge, (finish.Allowance - inward).Nanometres);
            var fold = new PieceMark(MarkKind.FoldLine, from, to, MarkTexts.Fold(turn, finish.Kind, inward));
            // Edges in one line share the fold across the piece.
            if (!marks.Contains(fold))
            {
                marks.Add(fold);
            }
        }
    }

    // From one side of a rectangle to the other, so that edges on one line share their fold.
    private static (Point From, Point To) AcrossPiece(CutPiece piece, EdgeFacing facing, Length inward) =>
        facing switch
        {
            EdgeFacing.Down => (new Point(Length.Zero, inward), new Point(piece.Width, inward)),
            EdgeFacing.Up => (new Point(Length.Zero, piece.Length - inward), new Point(piece.Width, piece.Length - inward)),
            EdgeFacing.Left => (new Point(inward, Length.Zero), new Point(inward, piece.Length)),
            _ => (new Point(piece.Width - inward, Length.Zero), new Point(piece.Width - inward, piece.Length)),
        };

    // Along a template's own edge, where it is folded.
    private static (Point From, Point To) BesideEdge(CutPiece piece, Edge edge, double outward)
    {
        double direction = edge.Path[0].StartDirection;
        return (Beyond(piece, Placed(piece, edge.From), direction, outward), Beyond(piece, Placed(piece, edge.To), direction, outward));
    }

    // Where stitching draws the piece in, what is evenly spaced on the made panel is so on the flat one.
    /// <summary>Where a point of the made panel lies on the flat piece, from its lower left corner.</summary>
    /// <param name="piece">A piece that is cut for a panel.</param>
    /// <param name="point">In the panel's coordinates.</param>
    internal static Point Placed(CutPiece piece, Point point)
    {
        Panel panel = piece.Panel!;
        return new Point(Flat(point.X, panel.Width, panel.TakeUpAcross), Flat(point.Y, panel.Height, panel.TakeUpAlong)).Moved(
            piece.Origin.X,
            piece.Origin.Y
        );
    }

    // From a distance on the made panel to one on the flat piece, which is larger by what stitching takes up.
    private static Length Flat(Length made, Length size, Length takeUp) =>
        takeUp == Length.Zero
            ? made
            : Length.FromNanometres((long)((Int128)made.Nanometres * (size + takeUp).Nanometres / size.Nanometres));

    // With the distances from the nearer cut end both ways.
    private static Message At(CutPiece piece, Point point, Message what)
    {
        bool left = point.X <= piece.Width - point.X,
            lower = point.Y <= piece.Length - point.Y;
        return MarkTexts.At(what, left ? point.X : piece.Width - point.X, left, lower ? point.Y : piece.Length - point.Y, lower);
    }
}
