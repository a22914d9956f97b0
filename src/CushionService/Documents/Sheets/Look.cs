namespace CushionService.Documents.Sheets;

/// <summary>How a sheet looks.</summary>
/// <param name="Type">Size of its type, in points.</param>
/// <param name="Accent">Colour of headings, rules and the numbers of steps, as six hexadecimal digits after a number sign.</param>
internal sealed record Look(double Type, string Accent = "#111111")
{
    /// <summary>Millimetres in a point.</summary>
    public const double Point = 25.4 / 72;

    /// <summary>For the workroom: small enough for a cushion to a page.</summary>
    /// <remarks>Black alone, as workrooms print.</remarks>
    public static Look Workroom { get; } = new(9);

    /// <summary>Size of the type in millimetres.</summary>
    public double Em => Type * Point;
}
