using CushionService.Engine.Measures;

namespace CushionService.Engine.Tests.Measures;

/// <summary>Figures that two handbooks of the US forces print, and what the engine makes of them: each holds to the last printed
/// digit.</summary>
public sealed class HandbookFigureFacts
{
    private static readonly Length Inch = Length.From(1, LengthUnit.Inch),
        Centimetre = Length.From(1, LengthUnit.Centimetre),
        Metre = Length.From(1, LengthUnit.Metre),
        Yard = Length.From(1, LengthUnit.Yard),
        Foot = Length.From(12, LengthUnit.Inch);

    [Theory]
    [InlineData(LengthUnit.Inch, LengthUnit.Millimetre, "25.4", Sources.NavyEquivalents)]
    [InlineData(LengthUnit.Yard, LengthUnit.Metre, "0.9144", Sources.NavyEquivalents)]
    [InlineData(LengthUnit.Millimetre, LengthUnit.Inch, "0.0393701", Sources.NavyEquivalents)]
    [InlineData(LengthUnit.Metre, LengthUnit.Yard, "1.09361", Sources.NavyEquivalents)]
    [InlineData(LengthUnit.Inch, LengthUnit.Centimetre, "2.54", Sources.ForcesEquivalents)]
    [InlineData(LengthUnit.Metre, LengthUnit.Inch, "39.37", Sources.ForcesEquivalents)]
    [InlineData(LengthUnit.Metre, LengthUnit.Yard, "1.0936", Sources.ForcesEquivalents)]
    [InlineData(LengthUnit.Yard, LengthUnit.Metre, "0.914", Sources.ForcesEquivalents)]
    public void One_of_a_unit_of_length_is(LengthUnit from, LengthUnit to, string printed, string source) =>
        AsPrinted(printed, Length.From(1, from).In(to), source);

    [Theory]
    [InlineData(LengthUnit.Inch, LengthUnit.Centimetre, "6.4516", Sources.NavyEquivalents)]
    [InlineData(LengthUnit.Yard, LengthUnit.Metre, "0.836127", Sources.NavyEquivalents)]
    [InlineData(LengthUnit.Centimetre, LengthUnit.Inch, "0.155000", Sources.NavyEquivalents)]
    [InlineData(LengthUnit.Metre, LengthUnit.Yard, "1.19599", Sources.NavyEquivalents)]
    [InlineData(LengthUnit.Yard, LengthUnit.Metre, "0.8361", Sources.ForcesEquivalents)]
    [InlineData(LengthUnit.Yard, LengthUnit.Centimetre, "8361", Sources.ForcesEquivalents)]
    public void One_square_of_a_unit_is(LengthUnit from, LengthUnit to, string printed, string source)
    {
        Length side = Length.From(1, from);

        AsPrinted(printed, (decimal)Area.Of(side, side).In(to), source);
    }

    [Fact]
    public void Cubes_are_as_printed()
    {
        // Sources.NavyEquivalents
        Volume inch = Volume.Of(Inch, Inch, Inch),
            foot = Volume.Of(Foot, Foot, Foot);
        AsPrinted("16.3871", inch.CubicMillimetres / 1_000, Sources.NavyEquivalents);
        AsPrinted("0.0283168", foot.CubicMillimetres / 1_000_000_000, Sources.NavyEquivalents);
        AsPrinted("35.3147", Volume.Of(Metre, Metre, Metre).CubicFeet, Sources.NavyEquivalents);
        AsPrinted(
            "0.0610237",
            Volume.Of(Centimetre, Centimetre, Centimetre).CubicMillimetres / inch.CubicMillimetres,
            Sources.NavyEquivalents
        );
        // Sources.ForcesEquivalents
        AsPrinted("16.387", inch.CubicMillimetres / 1_000, Sources.ForcesEquivalents);
        AsPrinted("1728", foot.CubicMillimetres / inch.CubicMillimetres, Sources.ForcesEquivalents);
        AsPrinted("27", Volume.Of(Yard, Yard, Yard).CubicFeet, Sources.ForcesEquivalents);
    }

    [Fact]
    public void Weights_are_as_printed()
    {
        var pound = new Mass(Mass.GramsInPound);
        AsPrinted("0.453592", pound.Kilograms, Sources.NavyEquivalents);
        AsPrinted("2.20462", new Mass(1000).Pounds, Sources.NavyEquivalents);
        AsPrinted("453.59", pound.Grams, Sources.ForcesEquivalents);
        AsPrinted("28.3495", pound.Grams / 16, Sources.ForcesEquivalents);
    }

    // A table rounds to its last digit: half of it either way is all that may differ.
    private static void AsPrinted(string printed, decimal ours, string source)
    {
        decimal number = decimal.Parse(printed, System.Globalization.CultureInfo.InvariantCulture);
        int digits = printed.Contains('.', StringComparison.Ordinal)
            ? printed.Length - printed.IndexOf('.', StringComparison.Ordinal) - 1
            : 0;
        decimal half = 0.5m;
        for (var i = 0; i < digits; i++)
        {
            half /= 10;
        }

        Assert.True(Math.Abs(number - ours) <= half, $"{printed} is printed in {source}; ours is {ours}.");
    }
}
