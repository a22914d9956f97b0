using CushionService.Engine.Measures;
using CushionService.Engine.Specifications.Fabrics;
using CushionService.Engine.Specifications.Practices;

namespace CushionService.Engine.Tests.Specifications;

public sealed class FabricSpecificationFacts
{
    [Theory]
    [InlineData(54, 0, 0, "54", Sources.Practice)]
    [InlineData(54, 0.5, 0, "53", Sources.Practice)]
    [InlineData(54, 0.5, 2, "51.94", Sources.Mathematics)]
    [InlineData(45, 0.75, 10, "39.15", Sources.Mathematics)]
    public void Usable_width_is_without_selvedges_and_after_the_wash(
        double width,
        double selvedge,
        int shrinkage,
        string usable,
        string source
    )
    {
        FabricSpecification fabric = Fabric with
        {
            Width = In((decimal)width),
            Selvedge = In((decimal)selvedge),
            WidthShrinkage = Percent(shrinkage),
        };

        Assert.Equal(decimal.Parse(usable), fabric.UsableWidth.In(LengthUnit.Inch));
    }

    [Fact]
    public void Usable_width_is_never_rounded_up()
    {
        FabricSpecification fabric = Fabric with { Width = Length.FromNanometres(100_000_001), WidthShrinkage = Fraction.Of(1, 3) };

        Assert.Equal(66_666_667, fabric.UsableWidth.Nanometres);
        Assert.Equal(66_666_666, (fabric with { Width = Length.FromNanometres(100_000_000) }).UsableWidth.Nanometres);
    }

    [Theory]
    [InlineData(14, 3)]
    [InlineData(14.125, 4)]
    [InlineData(18, 4)]
    [InlineData(18.125, 5)]
    [InlineData(30, 5)]
    public void An_envelope_laps_the_more_the_wider_it_is(double across, int overlap)
    {
        // Sources.Practice
        Assert.Equal(In(overlap), WorkroomPractice.Imperial.Closures.Envelope.Overlap(In((decimal)across)));
    }
}
