namespace CushionService.Documents.Pictures;

/// <summary>A colour that a style sheet may replace.</summary>
/// <param name="Variable">The CSS variable.</param>
/// <param name="Value">The colour where it is not set: six hexadecimal digits.</param>
internal sealed record Tint(string Variable, string Value)
{
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
}
