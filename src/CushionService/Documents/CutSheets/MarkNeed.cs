using CushionService.Contract.Answers;
using CushionService.Engine.Patterns.Panels;

namespace CushionService.Documents.CutSheets;

/// <summary>Tells the marks that every piece has, and that one sentence says for all, from those that must be measured.</summary>
internal static class MarkNeed
{
    // As near as marks are rounded: 1/32 in, or a millimetre, in any unit.
    private const double Near = 1.0 / 32;

    // A dot at a corner of the seam line is about one allowance from both edges, and no allowance is wider than this share of a side.
    private const double Corner = 0.25;

    /// <summary>The marks that must be measured, then the others.</summary>
    public static (IReadOnlyList<MarkAnswer> Marks, int Needed) Of(PieceAnswer piece)
    {
        ILookup<bool, MarkAnswer> sorted = piece.Marks.ToLookup(mark => IsUsual(piece, mark));
        return ([.. sorted[false], .. sorted[true]], sorted[false].Count());
    }

    private static bool IsUsual(PieceAnswer piece, MarkAnswer mark) =>
        mark.Kind switch
        {
            MarkKind.UpArrow or MarkKind.FaceName => true,
            MarkKind.Notch or MarkKind.DoubleNotch => piece.Points is null && IsQuarter(piece, mark),
            MarkKind.SeamDot => piece.Points is null && IsCorner(mark.X, piece.Width) && IsCorner(mark.Y, piece.Length),
            _ => false,
        };

    private static bool IsQuarter(PieceAnswer piece, MarkAnswer mark)
    {
        bool isLevel = mark.Y <= 0 || mark.Y >= piece.Length;
        (double at, double side) = isLevel ? (mark.X, piece.Width) : (mark.Y, piece.Length);
        // Quarters lie between the seam lines' corners, so that they are found by folding the finished side.
        return Math.Abs(at - side / 2) <= Near * side / 4 || IsFolded(piece, mark, at, side);
    }

    // The fold of a fold: half way between the middle and a corner of the seam line, which is one allowance in.
    private static bool IsFolded(PieceAnswer piece, MarkAnswer mark, double at, double side)
    {
        bool isLevel = mark.Y <= 0 || mark.Y >= piece.Length;
        double aside = Math.Abs(at - side / 2);
        return piece
            .Marks.Where(one => one.Kind == MarkKind.SeamDot)
            .Select(one => Math.Abs((isLevel ? one.X : one.Y) - side / 2))
            .Any(corner => corner > 0 && Math.Abs(aside - corner / 2) <= Near * side / 4);
    }

    private static bool IsCorner(double at, double side) => Math.Min(at, side - at) <= Corner * side;
}
