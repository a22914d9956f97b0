using CushionService.Nesting.Rectangles;
using CushionService.Nesting.Solving;

namespace CushionService.Nesting.Tests.Rectangles;

/// <summary>Proofs keep within the steps of their search: a linear program over many extents on a fine grid would take a hundred times as
/// many.</summary>
public sealed class ProofBudgetFacts
{
    // What is begun is finished: a round of each linear program, and the pairs of dual feasible functions that are always tried.
    private const long Finished = 180_000;

    // As many trials as share the steps of one quick search: then a proof has few.
    private const int Trials = 40;

    [Theory]
    [InlineData(Rotations.None)]
    [InlineData(Rotations.QuarterTurns)]
    public void Many_extents_on_a_fine_grid(Rotations rotations)
    {
        const int kinds = 8;
        // Extents without a common divisor, as the boxes within outlines have them.
        var problem = new StripProblem
        {
            Width = 4001,
            Pieces =
            [
                .. Enumerable
                    .Range(0, kinds)
                    .Select(kind => new NestingPiece
                    {
                        Width = 401 + (97 * kind),
                        Length = 353 + (89 * kind * 7 % 1100),
                        Quantity = 2,
                        Rotations = rotations,
                    }),
            ],
        };
        var steps = RectangleSteps.For(Effort.Quick, 2 * kinds) / Trials;
        var layout = Nester.Nest(problem, Effort.Quick, Trials, CancellationToken.None);

        Assert.InRange(layout.Steps, 1, steps + Finished);
    }

    [Fact]
    public void Searches_that_share_an_effort_cost_no_more_than_one_largest()
    {
        foreach (var effort in new[] { Effort.Quick, Effort.Standard, Effort.Thorough })
        {
            var cost = 40 * SearchCost.Of(effort, 1_000, outlines: true);
            Assert.InRange(cost / SearchCost.SharedBy(cost, SearchCost.Most(effort)), 1, SearchCost.Most(effort));
            Assert.Equal(1, SearchCost.SharedBy(SearchCost.Of(effort, 2_000, outlines: true), SearchCost.Most(effort)));
        }
    }
}
