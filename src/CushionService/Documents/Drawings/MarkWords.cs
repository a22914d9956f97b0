using CushionService.Contract.Answers;
using CushionService.Engine.Messages;

namespace CushionService.Documents.Drawings;

/// <summary>Marks in words.</summary>
internal static class MarkWords
{
    /// <summary>Height of the type of a list of marks, in millimetres.</summary>
    public const double Type = 2.6;

    /// <summary>The letter of the nth mark of a piece, from 0: a to z, then aa, ab, …</summary>
    /// <param name="n">At least 0. As columns of a spreadsheet are named: there is no zero, so 26 is aa.</param>
    public static string Letter(int n) => n < 26 ? $"{(char)('a' + n)}" : Letter(n / 26 - 1) + Letter(n % 26);

    /// <summary>Where it is, from the piece's lower left corner.</summary>
    /// <param name="mark">The mark.</param>
    /// <param name="units">Writes lengths.</param>
    public static Message Place(MarkAnswer mark, OrderUnits units) =>
        mark is { ToX: { } x, ToY: { } y }
            ? DrawingTexts.LinePlace(units.Number(mark.X), units.Text(mark.Y), units.Number(x), units.Text(y))
            : DrawingTexts.Place(units.Number(mark.X), units.Text(mark.Y));

    /// <summary>All marks of a piece, broken into lines.</summary>
    /// <param name="piece">The piece.</param>
    /// <param name="units">Writes lengths, in the reader's language.</param>
    /// <param name="ems">How wide a line may be, in heights of the type.</param>
    public static List<string> Lines(PieceAnswer piece, OrderUnits units, double ems) =>
        [
            .. piece.Marks.SelectMany(
                (mark, i) =>
                    TextWrap.Lines(
                        units.Say(DrawingTexts.Mark(Letter(i), DrawingTexts.MarkKind(mark.Kind), Place(mark, units), mark.Because)),
                        ems
                    )
            ),
        ];
}
