using CushionService.Engine.Scenes;

namespace CushionService.Engine.Tests.Scenes;

/// <summary>Polygons cut along lines.</summary>
public sealed class PlanePartsFacts
{
    // A U of 30 by 20 with a notch of 10 by 12 in the middle of its back.
    private static readonly PlanePoint[] Notched =
    [
        new(0, 0),
        new(30, 0),
        new(30, 20),
        new(20, 20),
        new(20, 8),
        new(10, 8),
        new(10, 20),
        new(0, 20),
    ];

    [Theory]
    [InlineData(2, 6, 120.0)]
    [InlineData(10, 14, 40.0, 40.0)]
    [InlineData(6, 10, 100.0)]
    [InlineData(-5, 50, 480.0)]
    [InlineData(21, 30)]
    public void A_band_of_a_U_has_the_parts_that_lie_on_its_arms(double from, double to, params double[] areas)
    {
        double[] parts = [.. PlaneParts.Between(Notched, new PlanePoint(0, 1), from, to).Select(PlanePolygon.Area)];

        Assert.Equal(areas, parts.Select(area => Math.Round(area, 6)));
    }
}
