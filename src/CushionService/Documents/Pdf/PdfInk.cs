using System.Globalization;
using System.Xml.Linq;
using PdfSharp.Drawing;
using PdfSharp.Pdf;

namespace CushionService.Documents.Pdf;

/// <summary>Copies a drawing onto a page of a PDF: the elements of SVG that our drawings use, and no others. Lines stay lines, curves
/// stay curves, text stays text.</summary>
/// <param name="graphics">The page, in points from its upper left corner.</param>
internal sealed class PdfInk(XGraphics graphics)
{
    private readonly Dictionary<string, XElement> _clips = [];

    // Where a click on the text leads that is written now.
    private string? _link;

    /// <summary>Draws all of a drawing across the page.</summary>
    /// <param name="drawing">A well-formed SVG element with a view box from (0, 0).</param>
    /// <param name="width">The page's width, in points.</param>
    /// <exception cref="NotSupportedException">The drawing has an element that no page can show.</exception>
    public void Draw(string drawing, double width)
    {
        XElement root = XElement.Parse(drawing, LoadOptions.PreserveWhitespace);
        foreach (XElement clip in root.Descendants().Where(element => element.Name.LocalName == "clipPath"))
        {
            _clips[clip.Attribute("id")!.Value] = clip;
        }

        double[] view = SvgText.Numbers(root.Attribute("viewBox")!.Value);
        DrawAll(root, PdfStyle.Start(width / view[2]).Under(root));
    }

    private void DrawAll(XElement parent, PdfStyle style)
    {
        foreach (XElement element in parent.Elements())
        {
            Draw(element, style.Under(element));
        }
    }

    private void Draw(XElement element, PdfStyle style)
    {
        switch (element.Name.LocalName)
        {
            // Not seen: what describes the drawing, and what other elements refer to.
            case "title" or "desc" or "clipPath" or "style" or "defs":
                break;
            case "g" when element.Attribute("clip-path") is { } clip:
                XGraphicsState state = graphics.Save();
                XElement shape = _clips[clip.Value["url(#".Length..^1]].Elements().Single();
                graphics.IntersectClip(SvgShape.PathsOf(shape, style.Matrix)[0]);
                DrawAll(element, style);
                graphics.Restore(state);
                break;
            case "g" or "svg":
                DrawAll(element, style);
                break;
            case "a":
                _link = element.Attribute("href")!.Value;
                DrawAll(element, style);
                _link = null;
                break;
            case "text":
                Write(element, style);
                break;
            default:
                foreach (XGraphicsPath path in SvgShape.PathsOf(element, style.Matrix))
                {
                    graphics.DrawPath(style.Pen, style.Brush, path);
                }

                break;
        }
    }

    private void Write(XElement text, PdfStyle style)
    {
        if (text.Value.Length == 0 || style.Brush is null)
        {
            return;
        }

        double size = style.FontSize * style.Scale;
        var font = new XFont(EmbeddedFonts.Family, size, style.IsBold ? XFontStyleEx.Bold : XFontStyleEx.Regular);
        XPoint at = style.Matrix.Transform(new XPoint(Number(text, "x"), Number(text, "y")));
        XGraphicsState state = graphics.Save();
        // The library writes text level, so the page is turned instead; scale is in the size of the type already.
        graphics.TranslateTransform(at.X, at.Y);
        double turn = Math.Atan2(style.Matrix.M12, style.Matrix.M11) * 180 / Math.PI;
        if (turn != 0)
        {
            graphics.RotateTransform(turn);
        }

        XStringFormat format = style.Anchor switch
        {
            "middle" => XStringFormats.BaseLineCenter,
            "end" => XStringFormats.BaseLineRight,
            _ => XStringFormats.BaseLineLeft,
        };
        // A page shows letters in the order in which they are written into it.
        string shown = ReadingOrder.Of(text.Value);
        graphics.DrawString(shown, font, style.Brush, 0, 0, format);
        graphics.Restore(state);
        if (_link is { } link)
        {
            AddLink(link, at, new XSize(graphics.MeasureString(shown, font).Width, size));
        }
    }

    // Of upright text from its start; underlined, for paper shows no colour.
    private void AddLink(string link, XPoint at, XSize size)
    {
        graphics.DrawLine(
            new XPen(XColors.Black, size.Height / 20),
            at.X,
            at.Y + size.Height / 8,
            at.X + size.Width,
            at.Y + size.Height / 8
        );
        var place = new XRect(at.X, at.Y - size.Height, size.Width, 1.25 * size.Height);
        graphics.PdfPage?.AddWebLink(new PdfRectangle(graphics.Transformer.WorldToDefaultPage(place)), link);
    }

    private static double Number(XElement element, string name) =>
        element.Attribute(name) is { } attribute ? double.Parse(attribute.Value, CultureInfo.InvariantCulture) : 0;
}
