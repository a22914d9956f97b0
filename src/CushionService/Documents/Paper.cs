using CushionService.Contract;

namespace CushionService.Documents;

/// <summary>A sheet of paper, upright.</summary>
/// <param name="Name">Its name in a style sheet's <c>@page</c> rule (CSS Paged Media).</param>
/// <param name="Width">In millimetres.</param>
/// <param name="Height">In millimetres.</param>
internal sealed record Paper(string Name, double Width, double Height)
{
    /// <summary>210 by 297 mm (ISO 216).</summary>
    public static Paper A4 { get; } = new("A4", 210, 297);

    /// <summary>8 1/2 by 11 in (ANSI A).</summary>
    public static Paper Letter { get; } = new("letter", 215.9, 279.4);

    /// <summary>The paper that a workroom measuring in these units has at hand.</summary>
    public static Paper For(Units units) => units == Units.In ? Letter : A4;
}
