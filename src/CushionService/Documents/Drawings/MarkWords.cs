using CushionService.Contract.Answers;
using CushionService.Engine.Patterns.Panels;

namespace CushionService.Documents.Drawings;

/// <summary>Marks in words.</summary>
internal static class MarkWords
{
    /// <summary>Height of the type of a list of marks, in millimetres.</summary>
    public const double Type = 2.6;

    /// <summary>The letter of the nth mark of a piece, from 0: a to z, then aa, ab, …</summary>
    public static string Letter(int n) => n < 26 ? $"{(char)('a' + n)}" : Letter(n / 26 - 1) + Letter(n % 26);

    /// <summary>What kind of mark it is.</summary>
    public static string Kind(MarkKind kind) =>
        kind switch
        {
            MarkKind.Notch => "notch",
            MarkKind.DoubleNotch => "double notch",
            MarkKind.ZipperStop => "end of a zipper",
            MarkKind.HandleEnd => "end of a handle",
            MarkKind.FoldLine => "fold line",
            MarkKind.CutLine => "cut line",
            MarkKind.TieEnd => "end of a tie or strap",
            MarkKind.SeamDot => "seam dot",
            MarkKind.StitchLine => "stitching line",
            MarkKind.TaperLine => "taper line",
            MarkKind.UpArrow => "arrow",
            MarkKind.FaceName => "name of the face",
            _ => KindText.Of(kind),
        };

    /// <summary>Where it is, from the piece's lower left corner.</summary>
    public static string Place(MarkAnswer mark, OrderUnits units)
    {
        string start = $"{units.Number(mark.X)} across, {units.Text(mark.Y)} up";
        return mark is { ToX: { } x, ToY: { } y } ? $"{start}, to {units.Number(x)} across, {units.Text(y)} up" : start;
    }

    /// <summary>All marks of a piece, broken into lines.</summary>
    public static List<string> Lines(PieceAnswer piece, OrderUnits units, double ems) =>
        [
            .. piece.Marks.SelectMany(
                (mark, i) => TextWrap.Lines($"{Letter(i)}: {Kind(mark.Kind)}, {Place(mark, units)}: {mark.Because}", ems)
            ),
        ];
}
