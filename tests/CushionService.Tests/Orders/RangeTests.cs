using CushionService.Contract.Answers;

namespace CushionService.Tests.Orders;

/// <summary>Every range of the contract, at its ends and just beyond them. Lengths are inches.</summary>
public sealed class RangeTests
{
    [Theory]
    [InlineData("/cushions/0/outline/width", 2, 240)]
    [InlineData("/cushions/0/outline/depth", 2, 240)]
    [InlineData("/cushions/0/thickness", 0.25, 24)]
    [InlineData("/cushions/0/seamAllowance", 0.125, 2)]
    [InlineData("/cushions/2/closure/return", 0, 12)]
    [InlineData("/cushions/2/closure/turnUnder", 0.25, 2)]
    [InlineData("/cushions/0/closure/fold", 0.125, 3)]
    [InlineData("/cushions/0/closure/overlap", 0.25, 12)]
    [InlineData("/cushions/0/closure/tapeWidth", 0.25, 4)]
    [InlineData("/cushions/0/handle/width", 0.5, 4)]
    [InlineData("/cushions/0/handle/length", 2, 60)]
    [InlineData("/cushions/0/handle/span", 2, 60)]
    [InlineData("/cushions/0/fill/oversize", 0, 1)]
    [InlineData("/pieces/0/width", 0.125, 240)]
    [InlineData("/pieces/0/length", 0.125, 2000)]
    [InlineData("/fabrics/0/width", 4, 240)]
    [InlineData("/fabrics/0/selvedge", 0, 4)]
    [InlineData("/fabrics/0/squaring", 0, 36)]
    [InlineData("/fabrics/0/repeat/length", 0.25, 72)]
    [InlineData("/fabrics/0/repeat/width", 0.25, 120)]
    [InlineData("/workroom/seamAllowance", 0.125, 2)]
    [InlineData("/workroom/cuttingStep", 0.015625, 1)]
    [InlineData("/workroom/zipperTurnUnder", 0.25, 2)]
    [InlineData("/workroom/zipperReturn", 0, 12)]
    [InlineData("/workroom/squaring", 0, 36)]
    public void A_length_is_within_its_range(string pointer, double minimum, double maximum) => IsBounded(pointer, minimum, maximum, 0.001);

    [Theory]
    [InlineData("/cushions/0/fill/density", 2, 500)]
    [InlineData("/cushions/1/fill/plumpness", 0.8, 1.2)]
    [InlineData("/fabrics/0/shrinkage/length", 0, 0.3)]
    [InlineData("/fabrics/0/shrinkage/width", 0, 0.3)]
    [InlineData("/workroom/threadRatio", 1, 30)]
    [InlineData("/workroom/threadWaste", 0, 1)]
    public void A_number_is_within_its_range(string pointer, double minimum, double maximum) => IsBounded(pointer, minimum, maximum, 0.001);

    [Theory]
    [InlineData("/cushions/0/quantity", 1, 1000)]
    [InlineData("/pieces/0/quantity", 1, 5000)]
    public void A_count_is_within_its_range(string pointer, int minimum, int maximum) => IsBounded(pointer, minimum, maximum, 1);

    [Theory]
    [InlineData("/fabrics/0/sold/step", "0.0099", "110.01", 0.01, 110)]
    [InlineData("/fabrics/0/sold/step", "0.0099", "100000", 0.01, 110)]
    [InlineData("/fabrics/1/sold/step", "0.0099", "100.01", 0.01, 100)]
    [InlineData("/fabrics/1/sold/minimum", "-0.01", "390000", 0, 100)]
    [InlineData("/fabrics/1/sold/minimum", "-0.01", "100.01", 0, 100)]
    public void A_sale_step_is_given_in_its_unit_of_sale(string pointer, string below, string above, double minimum, double maximum)
    {
        foreach (string value in new[] { below, above })
        {
            ViolationAnswer violation = SampleOrder
                .Validate($$"""{ "{{pointer}}": {{value}} }""")
                .Violations.Single(found => found.Pointer == pointer);

            Assert.Equal("out-of-range", violation.Code);
            Assert.Equal(minimum, violation.Minimum!.Value, 1e-6);
            Assert.Equal(maximum, violation.Maximum!.Value, 1e-6);
        }
    }

    [Fact]
    public void A_range_is_a_round_figure_in_the_unit_of_the_order()
    {
        ViolationAnswer violation = SampleOrder
            .Validate("""{ "/units": "cm", "/cushions/0/thickness": 100 }""")
            .Violations.Single(found => found.Pointer == "/cushions/0/thickness");

        Assert.Equal((0.6, 61), (violation.Minimum, violation.Maximum));
        Assert.Equal("Thickness must be between 0.6 cm and 61 cm.", violation.Detail);
    }

    private static void IsBounded(string pointer, double minimum, double maximum, double beyond)
    {
        string broken = FormattableString.Invariant($"{pointer} out-of-range {minimum}..{maximum}");

        Assert.Contains(broken, Found(minimum - beyond));
        Assert.Contains(broken, Found(maximum + beyond));
        Assert.DoesNotContain(broken, Found(minimum));
        Assert.DoesNotContain(broken, Found(maximum));

        IEnumerable<string> Found(double value)
        {
            ValidationAnswer answer = SampleOrder.Validate(FormattableString.Invariant($$"""{ "{{pointer}}": {{(decimal)value}} }"""));
            return answer.Violations.Select(SampleOrder.Written);
        }
    }
}
