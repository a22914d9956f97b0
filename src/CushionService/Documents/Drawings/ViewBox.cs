using System.Globalization;

namespace CushionService.Documents.Drawings;

/// <summary>Reads how wide and high a drawing is, in its own units.</summary>
internal static class ViewBox
{
    private const string Start = "viewBox=\"";

    /// <summary>The size of the view box of a drawing, which must have one from (0, 0).</summary>
    /// <param name="drawing">One that <see cref="Canvas"/> or the writer of pictures has made.</param>
    public static Spot Of(string drawing)
    {
        int from = drawing.IndexOf(Start, StringComparison.Ordinal) + Start.Length;
        string[] numbers = drawing[from..drawing.IndexOf('"', from)].Split(' ');
        return new Spot(double.Parse(numbers[2], CultureInfo.InvariantCulture), double.Parse(numbers[3], CultureInfo.InvariantCulture));
    }
}
