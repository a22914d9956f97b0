using System.Buffers;
using System.Globalization;
using System.Xml.Linq;
using PdfSharp.Drawing;

namespace CushionService.Documents.Pdf;

/// <summary>The shapes of a drawing as paths of a page.</summary>
internal static class SvgShape
{
    // Control points of a quarter of a circle, from the ends, in radii: 4/3 tan(π/8) (general geometry).
    private const double Quarter = 0.5522847498;
    private static readonly SearchValues<char> Commands = SearchValues.Create("MLHVCZ");

    /// <summary>The path of a line, a rectangle, a circle, a polygon, a polyline or a path of M, L, H, V, C and Z.</summary>
    /// <param name="element">The shape.</param>
    /// <param name="matrix">From its user units to points of the page.</param>
    /// <returns>One, and of a path with open lines one for each: a page would draw a line from one to the next.</returns>
    /// <exception cref="NotSupportedException">Another element.</exception>
    public static IReadOnlyList<XGraphicsPath> PathsOf(XElement element, XMatrix matrix)
    {
        var pen = new Pen(matrix);
        switch (element.Name.LocalName)
        {
            case "line":
                pen.Polyline([Number("x1"), Number("y1"), Number("x2"), Number("y2")], false);
                break;
            case "rect":
                (double x, double y, double right, double bottom) = (Number("x"), Number("y"), Number("width"), Number("height"));
                (right, bottom) = (x + right, y + bottom);
                pen.Polyline([x, y, right, y, right, bottom, x, bottom], true);
                break;
            case "circle":
                pen.Ring(Number("cx"), Number("cy"), Number("r"));
                break;
            case "polygon" or "polyline":
                pen.Polyline(SvgText.Numbers(element.Attribute("points")!.Value), element.Name.LocalName == "polygon");
                break;
            case "path":
                pen.Follow(element.Attribute("d")!.Value);
                break;
            default:
                throw new NotSupportedException($"No page knows the element {element.Name.LocalName}.");
        }

        return pen.Paths;

        double Number(string name) =>
            element.Attribute(name) is { } attribute ? double.Parse(attribute.Value, CultureInfo.InvariantCulture) : 0;
    }

    // Keeps the point in both systems: H and V need the shape's own, and the page's path needs the page's.
    private sealed class Pen(XMatrix matrix)
    {
        // The pen on the page, and in the shape's own units.
        private XPoint _at;
        private double _x;
        private double _y;
        private bool _isOpen;

        public List<XGraphicsPath> Paths { get; } = [new XGraphicsPath()];

        private XGraphicsPath Path => Paths[^1];

        public void Polyline(ReadOnlySpan<double> numbers, bool closed)
        {
            var points = new XPoint[numbers.Length / 2];
            for (int i = 0; i < points.Length; i++)
            {
                points[i] = Point(numbers[2 * i], numbers[2 * i + 1]);
            }

            if (points.Length < 2)
            {
                return;
            }

            Path.AddLines(points);
            if (closed)
            {
                Path.CloseFigure();
            }
        }

        // Four cubic curves: off the circle by less than 0.03 % of its radius.
        public void Ring(double x, double y, double r)
        {
            double k = Quarter * r;
            _at = Point(x + r, y);
            Curve(x + r, y + k, x + k, y + r, x, y + r);
            Curve(x - k, y + r, x - r, y + k, x - r, y);
            Curve(x - r, y - k, x - k, y - r, x, y - r);
            Curve(x + k, y - r, x + r, y - k, x + r, y);
            Path.CloseFigure();
        }

        // Each command has its letter, as our drawings write them.
        public void Follow(string path)
        {
            int i = 0;
            while (i < path.Length)
            {
                char command = path[i++];
                int next = path.AsSpan(i).IndexOfAny(Commands);
                int end = next < 0 ? path.Length : i + next;
                double[] numbers = SvgText.Numbers(path[i..end]);
                i = end;
                switch (command)
                {
                    case 'M':
                        Start();
                        Move(numbers[0], numbers[1]);
                        break;
                    case 'L':
                        Line(numbers[0], numbers[1]);
                        break;
                    case 'H':
                        Line(numbers[0], _y);
                        break;
                    case 'V':
                        Line(_x, numbers[0]);
                        break;
                    case 'C':
                        Curve(numbers[0], numbers[1], numbers[2], numbers[3], numbers[4], numbers[5]);
                        (_x, _y) = (numbers[4], numbers[5]);
                        break;
                    case 'Z':
                        Path.CloseFigure();
                        _isOpen = false;
                        break;
                    default:
                        throw new NotSupportedException($"No page knows the path {path}.");
                }
            }
        }

        // A new path where the last figure was left open.
        private void Start()
        {
            if (_isOpen)
            {
                Paths.Add(new XGraphicsPath());
            }

            _isOpen = false;
            Path.StartFigure();
        }

        private void Move(double x, double y)
        {
            (_x, _y) = (x, y);
            _at = Point(x, y);
        }

        private void Line(double x, double y)
        {
            Path.AddLine(_at, Point(x, y));
            _isOpen = true;
            Move(x, y);
        }

        // Sets the place on the page alone; the caller knows the place in its own units.
        private void Curve(double x1, double y1, double x2, double y2, double x, double y)
        {
            XPoint to = Point(x, y);
            Path.AddBezier(_at, Point(x1, y1), Point(x2, y2), to);
            _isOpen = true;
            _at = to;
        }

        private XPoint Point(double x, double y) => matrix.Transform(new XPoint(x, y));
    }
}
