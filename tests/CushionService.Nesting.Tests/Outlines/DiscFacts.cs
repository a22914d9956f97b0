using CushionService.Nesting.Audit;
using CushionService.Nesting.Outlines;
using CushionService.Nesting.Solving;

namespace CushionService.Nesting.Tests.Outlines;

/// <summary>Equal discs of diameter d on a strip of width w, where plane geometry gives the least length exactly. Let
/// a = min(w − d, 2d) be the room between centres across the strip; the length is d plus the least extent of the centres
/// along it, every two of which are at least d apart. Two: they lie at opposite edges, √(d² − a²) apart along, or side by side when a ≥ d.
/// Three, a ≥ d: two at the edges, level, the third between them touching both: √(d² − a²/4).
/// Three, a ≤ d √3/2: a zigzag, 2 √(d² − a²), or d when the outer two touch.
/// Three, between: an equilateral triangle turned until it fills the room: d cos(30° − acos(a/d)).</summary>
public sealed class DiscFacts
{
    private const double Diameter = 400_000;
    private const int Corners = 64;

    [Fact]
    public void Two_and_three_discs_reach_the_geometric_optimum_on_every_width()
    {
        for (var discs = 2; discs <= 3; discs++)
        {
            for (var twentieth = 20; twentieth <= 60; twentieth += 5)
            {
                var disc = Shapes.Disc(Diameter, Corners) with { Quantity = discs };
                var problem = new StripProblem { Width = (long)(Diameter * twentieth / 20), Pieces = [disc] };
                var layout = OutlineKernel.Search(problem, Nester.OnePass(problem), 600_000, CancellationToken.None);
                OutlineAudit.Check(problem, layout);

                // The polygon lies between its inner disc (d) and its outer disc (d / cos(π / n)): the optimum for the outer
                // disc on this width is a layout of the polygons too.
                var outer = Diameter / Math.Cos(Math.PI / Corners);
                Assert.InRange(
                    layout.Length,
                    Math.Floor(Optimum(discs, Diameter, problem.Width)),
                    Math.Ceiling(1.0005 * Math.Max(Optimum(discs, outer, Math.Max(outer, problem.Width)), outer))
                );
            }
        }
    }

    [Theory]
    [InlineData(2, 1, 2)]
    [InlineData(2, 2, 1)]
    [InlineData(3, 1, 3)]
    [InlineData(3, 2, 1.8660254)]
    [InlineData(3, 3, 1)]
    public void The_derivation_holds_at_its_limits(int discs, double width, double length) =>
        Assert.Equal(length, Optimum(discs, 1, width), 6);

    private static double Optimum(int discs, double d, double width)
    {
        var room = Math.Min(width - d, discs == 2 ? d : 2 * d);
        return d
            + (
                discs == 2 ? Math.Sqrt(d * d - room * room)
                : room >= d ? Math.Sqrt(d * d - room * room / 4)
                : room <= d * Math.Sqrt(3) / 2 ? Math.Max(d, 2 * Math.Sqrt(d * d - room * room))
                : d * Math.Cos(Math.PI / 6 - Math.Acos(room / d))
            );
    }
}
