using System.Globalization;
using PdfSharp.Drawing;

namespace CushionService.Documents.Pdf;

/// <summary>Reads the attributes of our own drawings.</summary>
internal static class SvgText
{
    /// <summary>Numbers with spaces or commas between.</summary>
    /// <param name="text">The value of an attribute.</param>
    public static double[] Numbers(string text) =>
        [
            .. text.Split([' ', ','], StringSplitOptions.RemoveEmptyEntries)
                .Select(number => double.Parse(number, CultureInfo.InvariantCulture)),
        ];

    /// <summary>A colour of three or six hexadecimal digits.</summary>
    /// <param name="hex">With its number sign.</param>
    /// <param name="opacity">From 0 to 1.</param>
    public static XColor Colour(string hex, double opacity)
    {
        string digits = hex.Length == 4 ? string.Concat(hex[1..].Select(digit => new string(digit, 2))) : hex[1..];
        int rgb = int.Parse(digits, NumberStyles.HexNumber, CultureInfo.InvariantCulture);
        return XColor.FromArgb((int)Math.Round(255 * opacity), (rgb >> 16) & 255, (rgb >> 8) & 255, rgb & 255);
    }

    /// <summary>One transform: a matrix, a translation, or a rotation about a point.</summary>
    /// <exception cref="NotSupportedException">Another one.</exception>
    /// <param name="text">The value of the attribute.</param>
    public static XMatrix Transform(string text)
    {
        int open = text.IndexOf('(', StringComparison.Ordinal);
        double[] numbers = Numbers(text[(open + 1)..^1]);
        switch (text[..open])
        {
            case "matrix":
                return new XMatrix(numbers[0], numbers[1], numbers[2], numbers[3], numbers[4], numbers[5]);
            case "translate":
                return new XMatrix(1, 0, 0, 1, numbers[0], numbers[1]);
            case "rotate":
                var matrix = new XMatrix();
                matrix.RotateAtAppend(numbers[0], new XPoint(numbers[1], numbers[2]));
                return matrix;
            default:
                throw new NotSupportedException($"No page knows the transform {text}.");
        }
    }
}
