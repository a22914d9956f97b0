using System.Globalization;

namespace CushionService.Documents.Pictures;

/// <summary>A colour that a style sheet may replace.</summary>
/// <param name="Variable">The CSS variable.</param>
/// <param name="Value">The colour where it is not set: six hexadecimal digits.</param>
internal sealed record Tint(string Variable, string Value)
{
    /// <summary>Its grey, from 0 for black to 1 for white.</summary>
    /// <remarks>Relative luminance, Web Content Accessibility Guidelines 2.2.</remarks>
    public double Grey => 0.2126 * Channel(1) + 0.7152 * Channel(3) + 0.0722 * Channel(5);

    /// <summary>Lines.</summary>
    public static Tint Line { get; } = new("--cushion-line", "#2b2b2b");

    /// <summary>Hatches and prints.</summary>
    public static Tint Print { get; } = new("--cushion-print", "#3a3a3a");

    /// <summary>What lies in the shade.</summary>
    public static Tint Shade { get; } = new("--cushion-shade", "#000000");

    /// <summary>What catches the light.</summary>
    public static Tint Light { get; } = new("--cushion-light", "#ffffff");

    /// <summary>Webbing.</summary>
    public static Tint Webbing { get; } = new("--cushion-webbing", "#8c7b62");

    /// <summary>What a reader is to look at.</summary>
    public static Tint Accent { get; } = new("--cushion-accent", "#b3261e");

    /// <summary>What is there and is not what a reader is to look at.</summary>
    public static Tint Quiet { get; } = new("--cushion-quiet", "#f4f2ee");

    private double Channel(int place)
    {
        double share = int.Parse(Value.AsSpan(place, 2), NumberStyles.HexNumber, CultureInfo.InvariantCulture) / 255.0;
        return share <= 0.04045 ? share / 12.92 : Math.Pow((share + 0.055) / 1.055, 2.4);
    }
}
