using System.Globalization;
using System.Text;
using System.Xml;

namespace CushionService.Documents.Drawings;

/// <summary>Writes one SVG drawing. User units are the answer's own; sizes of print are given in millimetres of the nominal
/// print.</summary>
internal sealed class Canvas
{
    private const string Namespace = "http://www.w3.org/2000/svg";
    private const string Typeface = "Arial, Helvetica, 'Liberation Sans', 'DejaVu Sans', sans-serif";
    private readonly StringBuilder _text = new();
    private readonly XmlWriter _xml;

    /// <param name="size">Width and height, in user units.</param>
    /// <param name="millimetre">User units in a millimetre of the nominal print.</param>
    /// <param name="id">Prefix of every id, unique among the drawings of one document.</param>
    /// <param name="title">What it shows, in a few words.</param>
    /// <param name="description">What it shows, for those who do not see it.</param>
    /// <param name="data">Attributes of the root for programs.</param>
    /// <summary>Starts a drawing with a title and a description, which screen readers read instead of it.</summary>
    public Canvas(
        Spot size,
        double millimetre,
        string id,
        string title,
        string description,
        params ReadOnlySpan<(string Name, string Value)> data
    )
        : this(size, millimetre, [])
    {
        Id = id;
        Write([("role", "img"), ("aria-labelledby", $"{id}-title {id}-desc"), ("font-family", Typeface)]);
        Write(data);
        Element("title", title, ("id", $"{id}-title"));
        Element("desc", description, ("id", $"{id}-desc"));
    }

    /// <summary>A small sign beside words that say the same: without an id, hidden from screen readers.</summary>
    /// <param name="size">Width and height, in millimetres.</param>
    public static Canvas Sign(Spot size) => new(size, 1, [("aria-hidden", "true")]);

    private Canvas(Spot size, double millimetre, ReadOnlySpan<(string Name, string Value)> attributes)
    {
        Mm = millimetre;
        _xml = XmlWriter.Create(_text, new XmlWriterSettings { OmitXmlDeclaration = true, ConformanceLevel = ConformanceLevel.Fragment });
        _xml.WriteStartElement("svg", Namespace);
        Write([
            ("viewBox", $"0 0 {Number(size.X)} {Number(size.Y)}"),
            ("width", $"{Number(size.X / millimetre)}mm"),
            ("height", $"{Number(size.Y / millimetre)}mm"),
            ("fill", Stroke.Ink),
            ("stroke-linejoin", "round"),
            ("stroke-linecap", "butt"),
        ]);
        Write(attributes);
    }

    /// <summary>User units in a millimetre of the nominal print.</summary>
    public double Mm { get; }

    /// <summary>Prefix of every id.</summary>
    public string Id { get; } = "";

    /// <summary>A number for the eye: four decimals.</summary>
    public static string Number(double value) => value.ToString("0.####", CultureInfo.InvariantCulture);

    /// <summary>A number exactly as the JSON answer writes it.</summary>
    /// <remarks>The shortest text that reads back as the same number, so that programs may compare a drawing with the
    /// answer.</remarks>
    public static string Exact(double value) => value.ToString("R", CultureInfo.InvariantCulture);

    /// <summary>An attribute with a number for the eye.</summary>
    public static (string, string) Attribute(string name, double value) => (name, Number(value));

    /// <summary>Starts an element; what is written next is inside it until <see cref="Close"/>.</summary>
    /// <param name="name">Of SVG.</param>
    /// <param name="attributes">Values are escaped, and signs that XML does not allow are left out.</param>
    public void Open(string name, params ReadOnlySpan<(string Name, string Value)> attributes)
    {
        _xml.WriteStartElement(name, Namespace);
        Write(attributes);
    }

    /// <summary>Ends the element that was started last.</summary>
    public void Close() => _xml.WriteEndElement();

    /// <summary>An element without content.</summary>
    public void Element(string name, params ReadOnlySpan<(string Name, string Value)> attributes)
    {
        Open(name, attributes);
        Close();
    }

    /// <summary>An element with text, which is escaped.</summary>
    public void Element(string name, string content, params ReadOnlySpan<(string Name, string Value)> attributes)
    {
        Open(name, attributes);
        _xml.WriteString(PrintableText.Of(content));
        Close();
    }

    /// <summary>Starts a group that is stroked one way, nothing filled.</summary>
    /// <param name="stroke">Its widths are in millimetres of the nominal print, whatever the scale of the
    /// drawing.</param>
    /// <param name="fill">What fills the shapes in it.</param>
    public void OpenStroked(Stroke stroke, string fill = "none")
    {
        Open("g", ("fill", fill), ("stroke", stroke.Colour), Attribute("stroke-width", stroke.Width * Mm));
        if (stroke.Dash.Length > 0)
        {
            Write([("stroke-dasharray", string.Join(' ', stroke.Dash.Select(length => Number(length * Mm))))]);
        }
    }

    /// <summary>A straight line in the stroke of the group that it is in.</summary>
    public void Line(Spot from, Spot to) =>
        Element("line", Attribute("x1", from.X), Attribute("y1", from.Y), Attribute("x2", to.X), Attribute("y2", to.Y));

    /// <summary>A rectangle, upright.</summary>
    public void Rectangle(Box box, params ReadOnlySpan<(string Name, string Value)> attributes)
    {
        Open("rect", Attribute("x", box.X), Attribute("y", box.Y), Attribute("width", box.Width), Attribute("height", box.Height));
        Write(attributes);
        Close();
    }

    /// <summary>A closed outline, its corners as exactly as the answer has them.</summary>
    public void Polygon(ReadOnlySpan<Spot> corners, params ReadOnlySpan<(string Name, string Value)> attributes)
    {
        Open("polygon", ("points", Points(corners)));
        Write(attributes);
        Close();
    }

    /// <summary>A line of text.</summary>
    /// <param name="at">Its baseline.</param>
    /// <param name="content">What it says.</param>
    /// <param name="size">In user units.</param>
    /// <param name="anchor">What is at <paramref name="at"/>: start, middle or end.</param>
    /// <param name="bold">Whether it is bold.</param>
    /// <param name="upwards">Whether it reads upwards instead of to the right.</param>
    public void Text(Spot at, string content, double size, string anchor = "start", bool bold = false, bool upwards = false)
    {
        Open("text", Attribute("x", at.X), Attribute("y", at.Y), Attribute("font-size", size), ("text-anchor", anchor));
        if (bold)
        {
            Write([("font-weight", "bold")]);
        }

        if (upwards)
        {
            Write([("transform", $"rotate(-90 {Number(at.X)} {Number(at.Y)})")]);
        }

        _xml.WriteString(PrintableText.Of(content));
        Close();
    }

    /// <summary>Puts another drawing into this one.</summary>
    /// <param name="drawing">A well-formed SVG element with a view box from (0, 0); its ids must be none of this one's.</param>
    /// <param name="at">Its upper left corner.</param>
    /// <param name="width">How wide it is shown, in user units.</param>
    public void Draw(string drawing, Spot at, double width)
    {
        // A matrix and not a nested svg element with a size, which some printing programs place wrongly.
        string scale = Exact(width / ViewBox.Of(drawing).X);
        Open("g", ("transform", $"matrix({scale} 0 0 {scale} {Number(at.X)} {Number(at.Y)})"));
        _xml.WriteRaw(drawing);
        Close();
    }

    /// <summary>Ends the drawing.</summary>
    /// <returns>A well-formed SVG element.</returns>
    public string Finish()
    {
        _xml.WriteEndElement();
        _xml.Dispose();
        return _text.ToString();
    }

    /// <summary>Corners as the attribute of a polygon, each number as the JSON answer writes it.</summary>
    public static string Points(ReadOnlySpan<Spot> corners)
    {
        var points = new string[corners.Length];
        for (int i = 0; i < corners.Length; i++)
        {
            points[i] = $"{Exact(corners[i].X)},{Exact(corners[i].Y)}";
        }

        return string.Join(' ', points);
    }

    private void Write(ReadOnlySpan<(string Name, string Value)> attributes)
    {
        foreach ((string name, string value) in attributes)
        {
            _xml.WriteAttributeString(name, PrintableText.Of(value));
        }
    }
}
