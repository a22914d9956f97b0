using CushionService.Engine.Measures;

namespace CushionService.Engine.Tests.Measures;

/// <summary>Our conversions against the UnitsNet library.</summary>
public sealed class ReferenceConversionFacts
{
    private static readonly (LengthUnit Ours, UnitsNet.Units.LengthUnit Theirs)[] Units =
    [
        (LengthUnit.Inch, UnitsNet.Units.LengthUnit.Inch),
        (LengthUnit.Centimetre, UnitsNet.Units.LengthUnit.Centimeter),
        (LengthUnit.Millimetre, UnitsNet.Units.LengthUnit.Millimeter),
        (LengthUnit.Yard, UnitsNet.Units.LengthUnit.Yard),
        (LengthUnit.Metre, UnitsNet.Units.LengthUnit.Meter),
    ];

    [Fact]
    public void Lengths_agree_with_the_reference_between_any_two_units()
    {
        var random = new Random(44);
        foreach ((LengthUnit from, UnitsNet.Units.LengthUnit theirFrom) in Units)
        {
            foreach ((LengthUnit to, UnitsNet.Units.LengthUnit theirTo) in Units)
            {
                for (var i = 0; i < 100; i++)
                {
                    decimal number = random.Next(1, 1_000_000) / 64m;
                    double expected = new UnitsNet.Length((double)number, theirFrom).As(theirTo);

                    Assert.Equal(1, (double)Length.From(number, from).In(to) / expected, 1e-6);
                }
            }
        }
    }

    [Fact]
    public void Areas_agree_with_the_reference()
    {
        UnitsNet.Area theirs = UnitsNet.Length.FromInches(54) * UnitsNet.Length.FromYards(2.625);
        Area ours = Area.Of(In(54), Length.From(2.625m, LengthUnit.Yard));

        Assert.Equal(theirs.SquareInches, ours.In(LengthUnit.Inch), 1e-6);
        Assert.Equal(theirs.SquareYards, ours.In(LengthUnit.Yard), 1e-9);
        Assert.Equal(theirs.SquareCentimeters, ours.In(LengthUnit.Centimetre), 1e-6);
    }

    [Theory]
    [InlineData(24, 22, 4, 1.8)]
    [InlineData(44, 18, 3, 2.5)]
    [InlineData(0.25, 2, 2, 0.5)]
    public void Volumes_and_what_they_weigh_agree_with_the_reference(
        double width,
        double depth,
        double thickness,
        double poundsPerCubicFoot
    )
    {
        UnitsNet.Volume theirs = UnitsNet.Volume.FromCubicInches(width * depth * thickness);
        UnitsNet.Density density = UnitsNet.Density.FromPoundsPerCubicFoot(poundsPerCubicFoot);
        var ours = Volume.Of(In((decimal)width), In((decimal)depth), In((decimal)thickness));
        Mass mass = ours.At((decimal)density.KilogramsPerCubicMeter);

        Assert.Equal(theirs.CubicFeet, (double)ours.CubicFeet, 1e-9);
        Assert.Equal((theirs * density).Pounds, (double)mass.Pounds, 1e-6);
        Assert.Equal((theirs * density).Kilograms, (double)mass.Kilograms, 1e-6);
    }
}
