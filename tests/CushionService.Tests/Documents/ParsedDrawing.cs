using System.Globalization;
using System.Xml.Linq;

namespace CushionService.Tests.Documents;

/// <summary>A drawing read back as a program would.</summary>
internal sealed class ParsedDrawing
{
    public static readonly XNamespace Svg = "http://www.w3.org/2000/svg";

    public ParsedDrawing(string svg) => Root = XElement.Parse(svg);

    public XElement Root { get; }

    public double[] ViewBox => Numbers(Root.Attribute("viewBox")!.Value);

    /// <summary>User units in a millimetre.</summary>
    public double Mm =>
        ViewBox[2] / double.Parse(Root.Attribute("width")!.Value.Replace("mm", "", StringComparison.Ordinal), CultureInfo.InvariantCulture);

    public IEnumerable<XElement> All(string name) => Root.Descendants(Svg + name);

    public XElement Fabric => All("g").Single(group => (string?)group.Attribute("class") == "fabric");

    /// <summary>The transform of the fabric.</summary>
    public double[] Matrix => Numbers(Fabric.Attribute("transform")!.Value.Replace("matrix(", "", StringComparison.Ordinal).TrimEnd(')'));

    public IEnumerable<XElement> PieceGroups => Fabric.Elements(Svg + "g");

    public static double Number(XElement element, string name) =>
        double.Parse(element.Attribute(name)!.Value, CultureInfo.InvariantCulture);

    public static double[] Numbers(string text) =>
        [
            .. text.Split([' ', ','], StringSplitOptions.RemoveEmptyEntries)
                .Select(number => double.Parse(number, CultureInfo.InvariantCulture)),
        ];

    /// <summary>The outline of a piece's group, in the drawing: left, top, right, bottom.</summary>
    public double[] Seen(XElement group)
    {
        XElement shape = group.Elements().Single();
        double[] corners =
            shape.Name == Svg + "rect"
                ?
                [
                    Number(shape, "x"),
                    Number(shape, "y"),
                    Number(shape, "x") + Number(shape, "width"),
                    Number(shape, "y") + Number(shape, "height"),
                ]
                : Numbers(shape.Attribute("points")!.Value);
        double[] m = Matrix;
        var seen = corners
            .Chunk(2)
            .Select(point => (X: m[0] * point[0] + m[2] * point[1] + m[4], Y: m[1] * point[0] + m[3] * point[1] + m[5]))
            .ToList();
        return [seen.Min(point => point.X), seen.Min(point => point.Y), seen.Max(point => point.X), seen.Max(point => point.Y)];
    }
}
