using PdfSharp.Fonts;

namespace CushionService.Documents.Pdf;

/// <summary>The typeface of every PDF, which travels with the service: no machine need have it installed. It has Latin, Greek, Cyrillic,
/// Hebrew and Arabic letters.</summary>
internal sealed class EmbeddedFonts : IFontResolver
{
    /// <summary>The family, under the name that the library is asked for.</summary>
    public const string Family = "DejaVu Sans";

    private const string Regular = "DejaVuSans.ttf";
    private const string Bold = "DejaVuSans-Bold.ttf";

    /// <inheritdoc/>
    public FontResolverInfo? ResolveTypeface(string familyName, bool isBold, bool isItalic) => new(isBold ? Bold : Regular);

    /// <inheritdoc/>
    public byte[]? GetFont(string faceName)
    {
        using Stream stream =
            typeof(EmbeddedFonts).Assembly.GetManifestResourceStream("Fonts/" + faceName)
            ?? throw new InvalidOperationException($"The build left out {faceName}.");
        byte[] font = new byte[stream.Length];
        stream.ReadExactly(font);
        return font;
    }
}
