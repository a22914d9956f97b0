using System.Globalization;

namespace CushionService.Documents.Projects;

/// <summary>Whose name the project sheets have: a shop that gives them away with its fabric.</summary>
/// <param name="Name">The shop's name; null for none.</param>
/// <param name="Link">Where its page is, an absolute address of https or http; null for nowhere.</param>
/// <param name="Colour">Colour of headings, as six hexadecimal digits after a number sign.</param>
internal sealed record ShopDetails(string? Name, Uri? Link, string Colour)
{
    /// <summary>The section of the configuration.</summary>
    public const string Section = "Shop";

    private const string Ink = "#111111";
    private const int LongestName = 80;

    // Large type, above 18 points or 14 bold, needs three to one (WCAG 2.2, 1.4.3); numbers of steps are smaller, and need more.
    private const double LeastContrast = 4.5;

    /// <summary>No shop.</summary>
    public static ShopDetails None { get; } = new(null, null, Ink);

    /// <summary>Reads the configuration.</summary>
    /// <param name="section">Name, Link and Colour, each of which may be left out.</param>
    /// <exception cref="InvalidDataException">A value is none that can be printed; says which and what would be right.</exception>
    public static ShopDetails Of(IConfiguration section)
    {
        string? name = section["Name"];
        if (name is { Length: > LongestName })
        {
            throw new InvalidDataException($"{Section}:Name has {name.Length} characters, where {LongestName} are allowed.");
        }

        return new ShopDetails(string.IsNullOrWhiteSpace(name) ? null : name, LinkOf(section["Link"]), ColourOf(section["Colour"]));
    }

    private static Uri? LinkOf(string? link) =>
        string.IsNullOrEmpty(link) ? null
        : Uri.TryCreate(link, UriKind.Absolute, out Uri? address) && address.Scheme is "https" or "http" ? address
        : throw new InvalidDataException($"{Section}:Link is an address that begins with https:// or http://, not \"{link}\".");

    private static string ColourOf(string? colour)
    {
        if (string.IsNullOrEmpty(colour))
        {
            return Ink;
        }

        bool isHex = colour.Length == 7 && colour[0] == '#' && colour.AsSpan(1).ToString().All(char.IsAsciiHexDigit);
        if (!isHex)
        {
            throw new InvalidDataException(
                $"{Section}:Colour is six hexadecimal digits after a number sign, as #1F5A44, not \"{colour}\"."
            );
        }

        return Contrast(colour) >= LeastContrast
            ? colour
            : throw new InvalidDataException($"{Section}:Colour {colour} is too pale to read on white paper; take a darker one.");
    }

    // Against white: (1 + 0.05) / (L + 0.05), L the relative luminance (WCAG 2.2).
    private static double Contrast(string colour)
    {
        double[] shares = [0.2126, 0.7152, 0.0722];
        double luminance = 0;
        for (int i = 0; i < shares.Length; i++)
        {
            double value = int.Parse(colour.AsSpan(1 + 2 * i, 2), NumberStyles.HexNumber, CultureInfo.InvariantCulture) / 255.0;
            luminance += shares[i] * (value <= 0.04045 ? value / 12.92 : Math.Pow((value + 0.055) / 1.055, 2.4));
        }

        return 1.05 / (luminance + 0.05);
    }
}
