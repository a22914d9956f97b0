using CushionService.Engine.Measures;
using CushionService.Intake;

namespace CushionService.Tests.Intake;

/// <summary>Limits that are said in inches are round figures in a metric order, and never narrower.</summary>
public sealed class MetricLimitsTests
{
    [Theory]
    [InlineData(0.001, 0.02, 0.03)]
    [InlineData(0.03125, 0.7, 0.8)]
    [InlineData(0.25, 6, 7)]
    [InlineData(1.5, 38, 39)]
    [InlineData(3, 75, 80)]
    [InlineData(24, 600, 610)]
    [InlineData(240, 6090, 6100)]
    [InlineData(0, 0, 0)]
    [InlineData(-240, -6100, -6090)]
    public void A_limit_goes_outward_to_a_round_figure(double inches, double minimum, double maximum)
    {
        Length limit = Length.FromInches((decimal)inches);

        Assert.Equal(Length.FromMillimetres((decimal)minimum), MetricLimits.Down(limit));
        Assert.Equal(Length.FromMillimetres((decimal)maximum), MetricLimits.Up(limit));
        Assert.True(MetricLimits.Down(limit) <= limit && limit <= MetricLimits.Up(limit));
    }
}
