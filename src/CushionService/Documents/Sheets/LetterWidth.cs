using CushionService.Documents.Pdf;
using PdfSharp.Drawing;

namespace CushionService.Documents.Sheets;

/// <summary>How wide words are in the typeface of our PDFs, in ems.</summary>
/// <remarks>The typeface is wider than the usual faces of browsers, so what fits by it fits there too.</remarks>
internal static class LetterWidth
{
    // Not measured yet. Widths are kept by letter, for all documents of the process.
    private const double Unknown = -1;
    private const double Measured = 100;
    private static readonly double[] Regular = Empty();
    private static readonly double[] Bold = Empty();

    /// <summary>Width of a line in ems.</summary>
    /// <param name="text">One line.</param>
    /// <param name="bold">Whether it is bold.</param>
    public static double Of(string text, bool bold = false)
    {
        double[] known = bold ? Bold : Regular;
        double sum = 0;
        foreach (char letter in text)
        {
            // Writing the same width twice does no harm.
            double width = known[letter];
            sum += width >= 0 ? width : known[letter] = Measure(letter, bold);
        }

        return sum;
    }

    private static double[] Empty()
    {
        double[] widths = new double[char.MaxValue + 1];
        Array.Fill(widths, Unknown);
        return widths;
    }

    // Both halves of a pair together make the width of the sign for a letter that the typeface has not.
    private static double Measure(char letter, bool bold)
    {
        PdfPaper.Prepare();
        using XGraphics graphics = XGraphics.CreateMeasureContext(
            new XSize(Measured, Measured),
            XGraphicsUnit.Point,
            XPageDirection.Downwards
        );
        var font = new XFont(EmbeddedFonts.Family, Measured, bold ? XFontStyleEx.Bold : XFontStyleEx.Regular);
        return Isolation.IsSign(letter) ? 0
            : char.IsSurrogate(letter) ? 0.5
            : graphics.MeasureString(letter.ToString(), font).Width / Measured;
    }
}
