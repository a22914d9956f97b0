using CushionService.Contract;
using CushionService.Engine.Measures;
using CushionService.Engine.Messages;

namespace CushionService.Documents;

/// <summary>Prints an answer's lengths as its workroom reads them: fractions of an inch, or metric decimals, to the nearest mark of a
/// tape, and messages in the reader's language. No line breaks between a whole number, its fraction and its unit.</summary>
/// <param name="units">The order's unit.</param>
/// <param name="language">The reader's language.</param>
internal sealed class OrderUnits(Units units, Language language = Language.English)
{
    private MessageWriter? _writer;

    /// <summary>The reader's language.</summary>
    public Language Language => language;

    /// <summary>The unit of every length in the answer.</summary>
    public LengthUnit Unit { get; } =
        units switch
        {
            Units.In => LengthUnit.Inch,
            Units.Cm => LengthUnit.Centimetre,
            _ => LengthUnit.Millimetre,
        };

    /// <summary>The unit's symbol in the contract.</summary>
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

    /// <summary>A length with its unit: <c>15 1/2 in</c>, in German <c>15 1/2 Zoll</c>.</summary>
    public string Text(double length) => Unbroken(Written($"{LengthText.FormatNumber(Of(length), Unit)} {Symbol}"));

    /// <summary>A length without its unit: <c>15 1/2</c>.</summary>
    public string Number(double length) => Unbroken(Written(LengthText.FormatNumber(Of(length), Unit)));

    /// <summary>Width by length: <c>15 1/2 × 19 in</c>.</summary>
    public string Size(double width, double length) => $"{Number(width)} × {Text(length)}";

    /// <summary>A message in words.</summary>
    public string Say(Message message) => Writer.Text(message);

    /// <summary>An amount of money as the answer has it, with the language's sign for decimals.</summary>
    public string Amount(string amount) => Written(amount);

    /// <summary>A bought quantity with its unit, as <see cref="SaleText"/> writes it.</summary>
    public string Sale(double quantity, SaleUnit unit) => Written(SaleText.Of(quantity, unit));

    /// <summary>A length that is sold in one unit, in another; null when the quantity is not a length.</summary>
    public string? Sale(LengthUnit other, double quantity, SaleUnit unit) =>
        SaleText.As(other, quantity, unit) is { } text ? Written(text) : null;

    /// <summary>A measure as a number of the answer's units.</summary>
    public double From(Length length) => (double)length.In(Unit);

    private MessageWriter Writer => _writer ??= new MessageWriter(language, Unit, spellsNames: true);

    // A number with a decimal point, as the language writes it.
    private string Written(string number) => Writer.Measure(number);

    private Length Of(double length) => Length.From((decimal)length, Unit);

    /// <summary>The text with its spaces made unbreakable.</summary>
    public static string Unbroken(string text) => text.Replace(' ', '\u00A0');
}
