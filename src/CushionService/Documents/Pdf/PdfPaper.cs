using System.Globalization;
using System.Text;
using System.Text.RegularExpressions;
using CushionService.Documents.Drawings;
using PdfSharp.Drawing;
using PdfSharp.Fonts;
using PdfSharp.Pdf;
using PdfSharp.Pdf.Annotations;

namespace CushionService.Documents.Pdf;

/// <summary>Makes a PDF of drawings, a page for each, exactly as large as the drawing says. The same
/// drawings make the same bytes.</summary>
internal static class PdfPaper
{
    private const double PointsInMillimetre = 72 / 25.4;

    // A date of its own would make every PDF different from the one before.
    private static readonly DateTime Undated = new(2000, 1, 1, 0, 0, 0, DateTimeKind.Utc);

    private static readonly Regex SubsetTag = new("([A-Z]{6})\\+DejaVu");
    private static readonly Regex Uuid = new("uuid:[0-9a-f]{8}(-[0-9a-f]{4}){3}-[0-9a-f]{12}");
    private static readonly Regex TrailerId = new("/ID\\[<[0-9A-F]{32}><[0-9A-F]{32}>\\]");

    // The library takes one resolver for the process, and only before its first font.
    static PdfPaper() => GlobalFontSettings.FontResolver = new EmbeddedFonts();

    /// <summary>Makes the typeface known to the library, before anything is measured or drawn.</summary>
    public static void Prepare() { }

    /// <summary>The document.</summary>
    /// <param name="title">Its title, which readers show.</param>
    /// <param name="pages">The drawings, as <see cref="Canvas"/> writes them, with their sizes in millimetres.</param>
    /// <param name="cancellation">Gives up between two pages.</param>
    /// <exception cref="OperationCanceledException">The caller cancelled.</exception>
    public static byte[] Write(string title, IEnumerable<(string Drawing, Spot Size)> pages, CancellationToken cancellation)
    {
        using var document = new PdfDocument();
        document.Info.Title = PrintableText.Of(title);
        (document.Info.CreationDate, document.Info.ModificationDate) = (Undated, Undated);
        foreach ((string drawing, Spot size) in pages)
        {
            cancellation.ThrowIfCancellationRequested();
            PdfPage page = document.AddPage();
            page.Width = XUnit.FromPoint(size.X * PointsInMillimetre);
            page.Height = XUnit.FromPoint(size.Y * PointsInMillimetre);
            using XGraphics graphics = XGraphics.FromPdfPage(page, XGraphicsUnit.Point);
            new PdfInk(graphics).Draw(drawing, page.Width.Point);
        }

        // The library dates and names links by clock and chance.
        int links = 0;
        for (int page = 0; page < document.PageCount; page++)
        {
            PdfAnnotations annotations = document.Pages[page].Annotations;
            for (int i = 0; i < annotations.Count; i++)
            {
                links++;
                annotations[i].Elements.SetString("/NM", string.Create(CultureInfo.InvariantCulture, $"link-{links}"));
                annotations[i].Elements.SetDateTime("/M", Undated);
            }
        }

        using var bytes = new MemoryStream();
        document.Save(bytes);
        return Undone(bytes.ToArray());
    }

    // The library names the document, and each subset of a font, at random. Names of the same length in their place leave every offset in
    // the file as it is.
    private static byte[] Undone(byte[] document)
    {
        string text = Encoding.Latin1.GetString(document);
        Dictionary<string, string> tags = [];
        text = SubsetTag.Replace(text, found => Tag(found.Groups[1].Value) + "+DejaVu");
        text = Uuid.Replace(text, "uuid:00000000-0000-0000-0000-000000000000");
        text = TrailerId.Replace(text, $"/ID[<{new string('0', 32)}><{new string('0', 32)}>]");
        return Encoding.Latin1.GetBytes(text);

        string Tag(string random)
        {
            if (!tags.TryGetValue(random, out string? tag))
            {
                tags[random] = tag = string.Create(CultureInfo.InvariantCulture, $"CUSHN{(char)('A' + tags.Count)}");
            }

            return tag;
        }
    }
}
