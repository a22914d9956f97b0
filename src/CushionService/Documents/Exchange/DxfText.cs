using System.Globalization;
using System.Text;

namespace CushionService.Documents.Exchange;

/// <summary>Writes a drawing exchange file of release 12 in ASCII: pairs of a group code and a value, a line each.</summary>
internal sealed class DxfText
{
    private readonly StringBuilder _text = new();

    /// <summary>Adds a pair of a code and a word.</summary>
    /// <param name="code">What the value means: 0 starts an entity, 8 names its layer, 10 and 20 are coordinates.</param>
    /// <param name="value">On one line.</param>
    public DxfText Add(int code, string value)
    {
        _text.Append(CultureInfo.InvariantCulture, $"{code, 3}\r\n").Append(value).Append("\r\n");
        return this;
    }

    /// <summary>Adds a pair of a code and a whole number.</summary>
    /// <param name="code">What the value means.</param>
    /// <param name="value">The number.</param>
    public DxfText Add(int code, int value) => Add(code, value.ToString(CultureInfo.InvariantCulture));

    /// <summary>Adds a point.</summary>
    /// <param name="x">Across.</param>
    /// <param name="y">Along.</param>
    /// <param name="code">Of the first coordinate: 10, or 11 for the end of a line.</param>
    public DxfText At(double x, double y, int code = 10) => Add(code, Number(x)).Add(code + 10, Number(y)).Add(code + 20, "0.0");

    /// <summary>Adds an entity on a layer.</summary>
    /// <param name="kind">Its name in the format, in capitals.</param>
    /// <param name="layer">A layer's name is its number here, as ASTM D6673 has it.</param>
    public DxfText Entity(string kind, int layer) => Add(0, kind).Add(8, layer);

    /// <summary>Adds a line of text.</summary>
    /// <param name="layer">Its layer.</param>
    /// <param name="x">Where it starts, across.</param>
    /// <param name="y">Its baseline, along.</param>
    /// <param name="height">Of the letters, in the file's unit.</param>
    /// <param name="content">Any letters; others than ASCII are escaped.</param>
    public void Text(int layer, double x, double y, double height, string content) =>
        Entity("TEXT", layer).At(x, y).Add(40, Number(height)).Add(1, Escaped(content));

    /// <summary>Adds a line of corners.</summary>
    /// <param name="layer">Its layer.</param>
    /// <param name="corners">In the file's unit.</param>
    /// <param name="closed">Whether the last joins the first.</param>
    public void Polyline(int layer, IReadOnlyList<(double X, double Y)> corners, bool closed)
    {
        Entity("POLYLINE", layer).Add(66, 1).At(0, 0).Add(70, closed ? 1 : 0);
        foreach ((double x, double y) in corners)
        {
            Entity("VERTEX", layer).At(x, y);
        }

        Entity("SEQEND", layer);
    }

    /// <summary>Adds a point on a layer.</summary>
    public void Point(int layer, double x, double y) => Entity("POINT", layer).At(x, y);

    /// <summary>Adds a straight line.</summary>
    public void Line(int layer, (double X, double Y) from, (double X, double Y) to) =>
        Entity("LINE", layer).At(from.X, from.Y).At(to.X, to.Y, 11);

    /// <inheritdoc/>
    public override string ToString() => _text.ToString();

    // Six decimals: a nanometre where the file is in millimetres.
    private static string Number(double value) => Math.Round(value, 6).ToString("0.0#####", CultureInfo.InvariantCulture);

    // Release 12 knows ASCII alone; readers take the escape for any other letter.
    private static string Escaped(string content)
    {
        var text = new StringBuilder();
        // Such readers do not know isolates.
        foreach (char letter in PrintableText.Of(content).Where(letter => !Isolation.IsSign(letter)))
        {
            if (letter is >= ' ' and <= '~')
            {
                text.Append(letter);
            }
            else
            {
                text.Append(CultureInfo.InvariantCulture, $"\\U+{(int)letter:X4}");
            }
        }

        return text.ToString();
    }
}
