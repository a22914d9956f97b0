using CushionService.Nesting.Audit;
using CushionService.Nesting.Outlines;
using CushionService.Nesting.Outlines.Placing;
using CushionService.Nesting.Search;
using CushionService.Nesting.Solving;

namespace CushionService.Nesting.Tests.Outlines;

/// <summary>Rows of equal discs of diameter d on a strip of width w (plane geometry). Rows of k and k − 1 discs in turn, the wider
/// ones spread over the width: gaps of s = (w − d) / (k − 1) between centres, each row √(d² − s²/4) above the last, or d/2 where
/// that is more. Rows of k with half a gap free at one edge and the other in turn: s = (w − d) / (k − 1/2). Both need s ≥ d. Square rows:
/// k = ⌊w / d⌋, d above the last.</summary>
public sealed class DiscRowFacts
{
    private const double Diameter = 400_000;
    private const int Corners = 64;

    // The polygon lies within this disc, so where the discs fit, the polygons fit.
    private static readonly double Outer = Diameter / Math.Cos(Math.PI / Corners);

    [Fact]
    public void A_layout_is_no_longer_than_the_best_rows_on_any_width()
    {
        for (var discs = 4; discs <= 40; discs += 4)
        {
            for (var tenth = 11; tenth <= 65; tenth += 5)
            {
                var problem = Problem(tenth * Diameter / 10, Shapes.Disc(Diameter, Corners) with { Quantity = discs });
                var layout = OutlineKernel.Search(problem, Nester.OnePass(problem), 200_000, CancellationToken.None);
                OutlineAudit.Check(problem, layout);

                // Places are whole units: that moves a row by less than two.
                Assert.InRange(layout.Length, 1, Math.Ceiling(Best(discs, Outer, problem.Width) + 2 * discs));
            }
        }
    }

    [Fact]
    public void Rows_alone_reach_the_closed_form()
    {
        var copies = new Copies(Problem(2.5 * Diameter, Shapes.Disc(Diameter, Corners) with { Quantity = 11 }), CancellationToken.None);
        var arrangement = new Arrangement(copies);
        new DiscRows(copies).Run(arrangement);

        // 2, 1, 2, 1, 2, 1 and 2 discs, 1.5 d apart: six steps up, for the inner disc at least and for the outer at most.
        Assert.InRange(arrangement.Length, Length(Diameter), Length(Outer) + 6 * 2);
        Assert.True(new ExactTest(copies, new StepBudget(long.MaxValue, CancellationToken.None)).IsApart(arrangement));

        static double Length(double d) => d + 6 * Math.Sqrt(d * d - 0.5625 * Diameter * Diameter);
    }

    [Fact]
    public void Only_equal_discs_that_may_lie_anywhere_are_laid_in_rows()
    {
        var disc = Shapes.Disc(Diameter, Corners) with { Quantity = 5 };
        var width = 3 * Diameter;
        Assert.True(CanLay(Problem(width, disc)));
        Assert.True(CanLay(Problem(width, disc, disc)));
        Assert.False(CanLay(Problem(width, disc, Shapes.Disc(Diameter / 2, Corners))));
        Assert.False(CanLay(Problem(width, disc, new NestingPiece { Width = 1_200_000, Length = 80_000 })));
        Assert.False(
            CanLay(
                Problem(
                    width,
                    new NestingPiece
                    {
                        Width = 400_000,
                        Length = 400_000,
                        Quantity = 5,
                    }
                )
            )
        );
        Assert.False(CanLay(Problem(width, Shapes.Disc(Diameter, 8) with { Quantity = 5 })));
        Assert.False(CanLay(Problem(width, disc) with { Flaws = [new GridRectangle(0, 0, 10, 10)] }));
    }

    private static StripProblem Problem(double width, params NestingPiece[] pieces) => new() { Width = (long)width, Pieces = [.. pieces] };

    private static bool CanLay(StripProblem problem) => DiscRows.CanLay(new Copies(problem, CancellationToken.None));

    private static double Best(int discs, double d, double width)
    {
        var inSquare = (int)(width / d);
        var best = d * Math.Ceiling((double)discs / inSquare);
        for (var k = 1; k <= inSquare; k++)
        {
            best = Math.Min(best, Stacked(discs, k, k - 1, d, (width - d) / (k - 1)));
            best = Math.Min(best, Stacked(discs, k, k, d, (width - d) / (k - 0.5)));
        }

        return best;
    }

    private static double Stacked(int discs, int odd, int even, double d, double gap)
    {
        if (even == 0 || (odd > 1 && gap < d))
        {
            return double.PositiveInfinity;
        }

        var rows = 0;
        for (var left = discs; left > 0; rows++)
        {
            left -= rows % 2 == 0 ? odd : even;
        }

        return d + (rows - 1) * Math.Max(d / 2, Math.Sqrt(Math.Max(0, d * d - gap * gap / 4)));
    }
}
