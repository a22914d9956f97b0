using System.Globalization;
using System.Text;
using System.Xml;

namespace CushionService.Documents.Pictures;

/// <summary>Writes shapes as one SVG element. Colours are attributes, so that any reader shows them, and styles with CSS variables, which a
/// page may set.</summary>
internal static class PictureWriter
{
    private const string Namespace = "http://www.w3.org/2000/svg";
    private const string Typeface = "Arial, Helvetica, 'Liberation Sans', 'DejaVu Sans', sans-serif";

    /// <summary>The picture.</summary>
    /// <param name="text">Its words, and the prefix of its ids.</param>
    /// <param name="height">Its height, where it is a thousand wide.</param>
    /// <param name="shapes">The furthest first.</param>
    public static string Write(PictureText text, int height, IReadOnlyList<Shape> shapes)
    {
        var svg = new StringBuilder();
        using (
            var xml = XmlWriter.Create(
                svg,
                // The writer escapes text, and the fragment may be put into a page as it is.
                new XmlWriterSettings { OmitXmlDeclaration = true, ConformanceLevel = ConformanceLevel.Fragment }
            )
        )
        {
            xml.WriteStartElement("svg", Namespace);
            xml.WriteAttributeString("viewBox", string.Create(CultureInfo.InvariantCulture, $"0 0 1000 {height}"));
            // A reader that does not see the picture is read its title and description (WAI-ARIA 1.2, role img).
            xml.WriteAttributeString("role", "img");
            xml.WriteAttributeString("aria-labelledby", $"{text.Id}-title {text.Id}-desc");
            xml.WriteAttributeString("font-family", Typeface);
            xml.WriteAttributeString("stroke-linejoin", "round");
            xml.WriteAttributeString("stroke-linecap", "round");
            Element(xml, "title", $"{text.Id}-title", text.Title);
            Element(xml, "desc", $"{text.Id}-desc", text.Description);
            for (int i = 0; i < shapes.Count; )
            {
                i = shapes[i].Text is null ? Paths(xml, shapes, i) : Words(xml, shapes[i], i);
            }

            xml.WriteEndElement();
        }

        return svg.ToString();
    }

    private static void Element(XmlWriter xml, string name, string id, string content)
    {
        xml.WriteStartElement(name, Namespace);
        xml.WriteAttributeString("id", id);
        xml.WriteString(PrintableText.Of(content));
        xml.WriteEndElement();
    }

    // Shapes that follow each other and are drawn the same way are one path.
    private static int Paths(XmlWriter xml, IReadOnlyList<Shape> shapes, int first)
    {
        Ink ink = shapes[first].Ink;
        var data = new StringBuilder();
        int next = first;
        while (next < shapes.Count && shapes[next].Text is null && shapes[next].Ink == ink)
        {
            SketchPath.Write(data, shapes[next].Points, shapes[next].IsClosed);
            next++;
        }

        if (data.Length > 0)
        {
            xml.WriteStartElement("path", Namespace);
            xml.WriteAttributeString("d", data.ToString());
            Write(xml, ink);
            xml.WriteEndElement();
        }

        return next;
    }

    private static int Words(XmlWriter xml, Shape shape, int at)
    {
        xml.WriteStartElement("text", Namespace);
        xml.WriteAttributeString("x", Number(shape.Points[0].X));
        xml.WriteAttributeString("y", Number(shape.Points[0].Y));
        xml.WriteAttributeString("font-size", Number(shape.Ink.Width));
        xml.WriteAttributeString("text-anchor", shape.IsClosed ? "middle" : "start");
        Write(xml, shape.Ink with { Width = 0, Stroke = null });
        xml.WriteString(PrintableText.Of(shape.Text!));
        xml.WriteEndElement();
        return at + 1;
    }

    private static void Write(XmlWriter xml, Ink ink)
    {
        var style = new StringBuilder();
        xml.WriteAttributeString("fill", ink.Fill?.Value ?? "none");
        if (ink.Fill is { } fill)
        {
            style.Append(CultureInfo.InvariantCulture, $"fill:var({fill.Variable},{fill.Value})");
        }

        if (ink.Fill is not null && ink.Opacity < 1)
        {
            xml.WriteAttributeString("fill-opacity", Number(ink.Opacity));
        }

        if (ink.Stroke is { } stroke)
        {
            xml.WriteAttributeString("stroke", stroke.Value);
            xml.WriteAttributeString("stroke-width", Number(ink.Width));
            if (ink.Fill is null && ink.Opacity < 1)
            {
                xml.WriteAttributeString("stroke-opacity", Number(ink.Opacity));
            }

            style.Append(CultureInfo.InvariantCulture, $"{(style.Length > 0 ? ";" : "")}stroke:var({stroke.Variable},{stroke.Value})");
            if (ink.IsDashed)
            {
                xml.WriteAttributeString(
                    "stroke-dasharray",
                    string.Create(CultureInfo.InvariantCulture, $"{2.4 * ink.Width:0.#} {2 * ink.Width:0.#}")
                );
            }
        }

        xml.WriteAttributeString("style", style.ToString());
    }

    private static string Number(double value) => value.ToString("0.##", CultureInfo.InvariantCulture);
}
