using System.Globalization;
using System.Xml.Linq;
using PdfSharp.Drawing;

namespace CushionService.Documents.Pdf;

/// <summary>What an element of a drawing inherits from those around it: where it lies on the page, and how it is stroked and
/// filled.</summary>
internal sealed record PdfStyle
{
    private const string None = "none";

    /// <summary>From the element's user units to points of the page.</summary>
    public required XMatrix Matrix { get; init; }

    /// <summary>Size of type, in user units.</summary>
    public double FontSize { get; private init; } = 3;

    /// <summary>Whether type is bold.</summary>
    public bool IsBold { get; private init; }

    /// <summary>What of a line of text is at its point: start, middle or end.</summary>
    public string Anchor { get; private init; } = "start";

    /// <summary>Points in a user unit.</summary>
    /// <remarks>The root of the matrix's determinant: its turns keep lengths, and our drawings scale both ways the
    /// same.</remarks>
    public double Scale => Math.Sqrt(Math.Abs(Matrix.M11 * Matrix.M22 - Matrix.M12 * Matrix.M21));

    /// <summary>What shapes are filled and text is written with; null for nothing.</summary>
    public XBrush? Brush => Fill == None ? null : new XSolidBrush(SvgText.Colour(Fill, FillOpacity));

    /// <summary>What outlines are drawn with; null for nothing.</summary>
    public XPen? Pen =>
        Stroke == None
            ? null
            : new XPen(SvgText.Colour(Stroke, StrokeOpacity), StrokeWidth * Scale)
            {
                LineJoin = XLineJoin.Round,
                // The library counts dashes in widths of the line.
                DashPattern = Dash.Length == 0 ? [] : [.. Dash.Select(length => length / StrokeWidth)],
                DashStyle = Dash.Length == 0 ? XDashStyle.Solid : XDashStyle.Custom,
            };

    private string Fill { get; init; } = "#000";

    private double FillOpacity { get; init; } = 1;

    private string Stroke { get; init; } = None;

    private double StrokeOpacity { get; init; } = 1;

    private double StrokeWidth { get; init; } = 1;

    private double[] Dash { get; init; } = [];

    /// <summary>The style of a page.</summary>
    /// <param name="scale">Points in a user unit.</param>
    public static PdfStyle Start(double scale) => new() { Matrix = new XMatrix(scale, 0, 0, scale, 0, 0) };

    /// <summary>The style of an element in this one's.</summary>
    /// <param name="element">An element; attributes that change nothing here are passed over.</param>
    public PdfStyle Under(XElement element)
    {
        PdfStyle style = this;
        foreach (XAttribute attribute in element.Attributes())
        {
            string value = attribute.Value;
            style = attribute.Name.LocalName switch
            {
                "transform" => style with { Matrix = XMatrix.Multiply(SvgText.Transform(value), style.Matrix) },
                "fill" => style with { Fill = value },
                "fill-opacity" => style with { FillOpacity = Number(value) },
                "stroke" => style with { Stroke = value },
                "stroke-opacity" => style with { StrokeOpacity = Number(value) },
                "stroke-width" => style with { StrokeWidth = Number(value) },
                "stroke-dasharray" => style with { Dash = value == None ? [] : SvgText.Numbers(value) },
                "font-size" => style with { FontSize = Number(value) },
                "font-weight" => style with { IsBold = value == "bold" },
                "text-anchor" => style with { Anchor = value },
                _ => style,
            };
        }

        return style;
    }

    private static double Number(string value) => double.Parse(value, CultureInfo.InvariantCulture);
}
