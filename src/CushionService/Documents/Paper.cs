using System.Globalization;
using CushionService.Contract;

namespace CushionService.Documents;

/// <summary>A sheet of paper, upright, or a roll of it.</summary>
/// <param name="Name">What callers call it; a sheet's is also its name in a style sheet's <c>@page</c> rule (CSS Paged Media).</param>
/// <param name="Width">In millimetres.</param>
/// <param name="Height">In millimetres; of a roll the most that is printed at once.</param>
internal sealed record Paper(string Name, double Width, double Height)
{
    /// <summary>How callers name a paper, for documentation and refusals.</summary>
    public const string Names = "a4, a3, letter, tabloid, or a roll by its width, as roll-36in or roll-914mm (300 to 1900 mm)";

    /// <summary>How callers name a sheet of paper.</summary>
    public static readonly string[] SheetNames = ["a4", "a3", "letter", "tabloid"];

    // A page of a PDF is 5080 mm long at most (ISO 32000-1, annex C: 14 400 units).
    private const double LongestPage = 5000;
    private const double NarrowestRoll = 300;
    private const double WidestRoll = 1900;
    private const string Roll = "roll-";

    /// <summary>210 by 297 mm (ISO 216).</summary>
    public static Paper A4 { get; } = new("A4", 210, 297);

    /// <summary>297 by 420 mm (ISO 216).</summary>
    public static Paper A3 { get; } = new("A3", 297, 420);

    /// <summary>8 1/2 by 11 in (ANSI A).</summary>
    public static Paper Letter { get; } = new("letter", 215.9, 279.4);

    /// <summary>11 by 17 in (ANSI B).</summary>
    public static Paper Tabloid { get; } = new("tabloid", 279.4, 431.8);

    /// <summary>Whether it is cut off where the drawing ends.</summary>
    public bool IsRoll => Name.StartsWith(Roll, StringComparison.Ordinal);

    /// <summary>The paper that a workroom measuring in these units has at hand.</summary>
    public static Paper For(Units units) => units == Units.In ? Letter : A4;

    /// <summary>The paper of a name.</summary>
    /// <returns>Null for any other name than <see cref="Names"/> says.</returns>
    public static Paper? Named(string name) =>
        name switch
        {
            "a4" => A4,
            "a3" => A3,
            "letter" => Letter,
            "tabloid" => Tabloid,
            _ => RollOf(name),
        };

    private static Paper? RollOf(string name)
    {
        double unit =
            name.EndsWith("in", StringComparison.Ordinal) ? 25.4
            : name.EndsWith("mm", StringComparison.Ordinal) ? 1
            : 0;
        bool isNumber = unit > 0 && name.StartsWith(Roll, StringComparison.Ordinal) && name.Length > Roll.Length + 2;
        return
            isNumber
            && int.TryParse(name.AsSpan()[Roll.Length..^2], NumberStyles.None, CultureInfo.InvariantCulture, out int width)
            && width * unit is >= NarrowestRoll and <= WidestRoll
            ? new Paper(name, width * unit, LongestPage)
            : null;
    }
}
