using System.Collections.Immutable;
using CushionService.Engine.Layouts;
using CushionService.Engine.Measures;
using CushionService.Engine.Quoting;
using CushionService.Engine.Specifications;
using CushionService.Engine.Specifications.Fabrics;
using CushionService.Engine.Specifications.Fillings;
using CushionService.Engine.Specifications.Outlines;
using CushionService.Engine.Specifications.Stocks;
using CushionService.Nesting;
using CushionService.Nesting.Solving;

namespace CushionService.Engine.Tests.Quoting;

/// <summary>All that is laid for one answer shares the steps of one effort.</summary>
public sealed class AnswerBudgetFacts
{
    // Both kernels count their steps; these are what the largest search of outlines takes, with the layout of its boxes, and what it
    // finishes that it has begun.
    private static readonly Dictionary<Effort, long> Most = new() { [Effort.Quick] = 10_000_000, [Effort.Standard] = 130_000_000 };

    [Theory]
    [InlineData(1, Effort.Quick)]
    [InlineData(3, Effort.Quick)]
    [InlineData(8, Effort.Quick)]
    [InlineData(3, Effort.Standard)]
    public void Deciding_an_open_grain_takes_half_of_a_layout_at_most_whatever_the_cushions(int lines, Effort effort)
    {
        Drafting drafting = Drafting.Of(Rounds(lines, 24 / lines) with { Effort = effort });
        long laid = QuotePipeline.LayOut(drafting, CancellationToken.None).Sum(yardage => yardage.Layout.Steps);

        Assert.InRange(laid, 1, Most[effort]);
        Assert.InRange(drafting.GrainSteps, 1, Most[effort] / 2);
    }

    [Fact]
    public void A_small_order_is_searched_as_if_nothing_else_were_laid()
    {
        Drafting box = Drafting.Of(Order(Boxed(24, 22, 4, HandSewn)));

        Assert.Equal(1, new AnswerSteps(box).Fabric);
        // Twenty quotes of a comparison together cost less than one largest search.
        Assert.Equal(1, new AnswerSteps(box, sharedBy: 20).Fabric);
    }

    [Fact]
    public void Quotes_that_share_an_effort_take_a_share_each()
    {
        const int quotes = 12;
        Drafting drafting = Drafting.Of(Rounds(1, 24) with { Fabrics = [Fabric] });
        long alone = QuotePipeline.Of(drafting, CancellationToken.None).Yardages.Sum(yardage => yardage.Layout.Steps),
            shared = QuotePipeline.Of(drafting, CancellationToken.None, quotes).Yardages.Sum(yardage => yardage.Layout.Steps);

        Assert.True(alone > Most[Effort.Quick] / 2);
        Assert.InRange(quotes * shared, 1, Most[Effort.Quick]);
    }

    [Theory]
    [InlineData(Effort.Quick)]
    [InlineData(Effort.Standard)]
    public void Whatever_is_laid_beside_the_fabric_takes_an_eighth_of_an_effort_or_what_the_fabric_leaves(Effort effort)
    {
        OrderSpecification rounds = Rounds(5, 12) with { Fabrics = [Fabric], Effort = effort, Stocks = Rolls(5) };
        Drafting drafting = Drafting.Of(
            rounds with
            {
                Cushions =
                [
                    .. rounds.Cushions.Zip(
                        rounds.Stocks,
                        (round, roll) =>
                            round with
                            {
                                Fill = new FillSpecification(FillKind.Foam, "foam", null, Length.Zero, 1)
                                {
                                    Wrap = new WrapSpecification(roll.Id, WrapSides.ThreeSides, 1),
                                },
                            }
                    ),
                ],
            }
        );
        SideSearch beside = new AnswerSteps(drafting).Beside(CancellationToken.None);
        long all = SearchCost.Most(effort),
            fabric = AnswerSteps.CostOf(drafting.Pieces, Fabric.Id, effort),
            roll = SearchCost.Of(effort, 1000, outlines: false);

        // One layout that says what straight welt saves, and two of each roll.
        Assert.InRange(fabric + (11 * beside.Most), 1, all + (all / 8));
        Assert.InRange(roll / beside.SharedBy(1000, outlines: false), 1, beside.Most);
    }

    [Fact]
    public void What_is_stocked_and_not_used_takes_nothing_from_what_is_laid()
    {
        OrderSpecification order = Rounds(1, 60) with { Fabrics = [Fabric], Stocks = Rolls(5) };

        Assert.Equal(Beside(order with { Stocks = [] }), Beside(order));

        static long Beside(OrderSpecification order) => new AnswerSteps(Drafting.Of(order)).Beside(CancellationToken.None).Most;
    }

    [Fact]
    public void Deciding_a_grain_stops_when_the_caller_does()
    {
        using var source = new CancellationTokenSource();
        source.Cancel();

        Assert.Throws<OperationCanceledException>(() => Drafting.Of(Rounds(3, 4), cancellation: source.Token));
    }

    private static ImmutableArray<StockSpecification> Rolls(int count) =>
        [
            .. Enumerable
                .Range(0, count)
                .Select(number => new StockSpecification
                {
                    Id = $"roll-{number}",
                    Kind = MaterialKind.Batting,
                    Width = In(48),
                }),
        ];

    // Round boxes: two discs and a boxing strip each.
    private static OrderSpecification Rounds(int lines, int quantity) =>
        Order(Boxed(16, 16, 3, HandSewn), Fabric with { Grain = Grain.Either }) with
        {
            Effort = Effort.Quick,
            Cushions =
            [
                .. Enumerable
                    .Range(0, lines)
                    .Select(line =>
                        Boxed(16, 16, 3, HandSewn) with
                        {
                            Id = $"round-{line}",
                            Quantity = quantity,
                            Outline = new CircleOutline(In(14 + line)),
                        }
                    ),
            ],
        };
}
