using CushionService.Contract;
using CushionService.Engine.Measures;

namespace CushionService.Documents;

/// <summary>Prints an answer's lengths as its workroom reads them: fractions of an inch, or metric decimals, to the nearest mark of a
/// tape. No line breaks between a whole number, its fraction and its unit.</summary>
internal sealed class OrderUnits(Units units)
{
    /// <summary>The unit of every length in the answer.</summary>
    public LengthUnit Unit { get; } =
        units switch
        {
            Units.In => LengthUnit.Inch,
            Units.Cm => LengthUnit.Centimetre,
            _ => LengthUnit.Millimetre,
        };

    /// <summary>The unit's symbol.</summary>
    public string Symbol => LengthText.Symbol(Unit);

    /// <summary>The unit's name, in the plural.</summary>
    public string Name =>
        Unit switch
        {
            LengthUnit.Inch => "inches",
            LengthUnit.Centimetre => "centimetres",
            _ => "millimetres",
        };

    /// <summary>Millimetres in one unit.</summary>
    public double Millimetres => Length.NanometresIn(Unit) / 1e6;

    /// <summary>A length with its unit: <c>15 1/2 in</c>.</summary>
    public string Text(double length) => Unbroken($"{LengthText.FormatNumber(Of(length), Unit)} {Symbol}");

    /// <summary>A length without its unit: <c>15 1/2</c>.</summary>
    public string Number(double length) => Unbroken(LengthText.FormatNumber(Of(length), Unit));

    /// <summary>Width by length: <c>15 1/2 × 19 in</c>.</summary>
    public string Size(double width, double length) => $"{Number(width)} × {Text(length)}";

    /// <summary>A measure as a number of the answer's units.</summary>
    public double From(Length length) => (double)length.In(Unit);

    private Length Of(double length) => Length.From((decimal)length, Unit);

    /// <summary>The text with its spaces made unbreakable.</summary>
    public static string Unbroken(string text) => text.Replace(' ', '\u00A0');
}
