using CushionService.Engine.Layouts;
using CushionService.Engine.Quoting;
using CushionService.Engine.Specifications;
using CushionService.Engine.Specifications.Fabrics;
using CushionService.Engine.Specifications.Outlines;
using CushionService.Engine.Specifications.Shapes;
using CushionService.Nesting;

namespace CushionService.Engine.Tests.Layouts;

/// <summary>Everyday orders on printed fabric keep the steps of their effort, whatever their repeat.</summary>
public sealed class PrintBudgetFacts
{
    // What the kernels of rectangles and of outlines take for a copy and for all copies, and what a proof within an outline search may add.
    private static readonly Dictionary<Effort, (long Each, long Most)> Steps = new()
    {
        [Effort.Quick] = (760_000, 11_000_000),
        [Effort.Standard] = (5_500_000, 130_000_000),
    };

    public static TheoryData<Construction, double, Effort> Orders
    {
        get
        {
            var orders = new TheoryData<Construction, double, Effort>();
            foreach (
                Construction construction in new[]
                {
                    Construction.Boxed,
                    Construction.Pouf,
                    Construction.Mitred,
                    Construction.GatheredCorner,
                    Construction.KnifeEdge,
                    Construction.Waterfall,
                }
            )
            {
                foreach (double repeat in new[] { 27, 13.5, 9, 0.25 })
                {
                    orders.Add(construction, repeat, Effort.Quick);
                    orders.Add(construction, repeat, Effort.Standard);
                }
            }

            return orders;
        }
    }

    [Theory]
    [MemberData(nameof(Orders))]
    public void No_effort_exceeds_its_steps(Construction construction, double repeat, Effort effort)
    {
        bool isRound = construction is Construction.Boxed or Construction.Pouf;
        CushionSpecification cushion = Boxed(16, 16, 3, HandSewn) with
        {
            Construction = construction,
            Quantity = 4,
            Outline = isRound ? new CircleOutline(In(16)) : new RectangleOutline(In(16), In(16)),
            Thickness = construction == Construction.KnifeEdge ? default : In(3),
        };
        RepeatSpecification square = new(In((decimal)repeat), In((decimal)repeat), DropKind.Straight);
        OrderSpecification order = Order(cushion, Fabric with { Repeat = square }) with { Effort = effort };

        FabricLayout layout = QuotePipeline.LayOut(Drafting.Of(order), CancellationToken.None)[0].Layout;
        (long each, long most) = Steps[effort];

        Assert.InRange(layout.Steps, 1, Math.Min(each * layout.Placements.Length, most));
    }

    // A start saves less than a repeat of several hundred (common practice, no source), and each start lays all pieces again.
    [Fact]
    public void A_layout_of_hundreds_of_repeats_is_not_laid_again_from_other_starts()
    {
        CushionSpecification cushion = Boxed(15, 18, 4, HandSewn) with { Quantity = 300 };
        RepeatSpecification print = new(In(9), In(17), DropKind.Half);
        OrderSpecification order = Order(cushion, Fabric with { Repeat = print }) with { Effort = Effort.Quick };

        FabricLayout layout = QuotePipeline.LayOut(Drafting.Of(order), CancellationToken.None)[0].Layout;

        Assert.InRange(layout.Steps, 1, 9_500_000);
    }

    // A search of a thousand copies takes its passes, however small its share: fewer spans of positions are laid, and none is searched
    // again when the steps are spent.
    [Theory]
    [InlineData(60, 60, 118, 150)]
    [InlineData(27, 27, 54, 250)]
    [InlineData(7.625, 21.75, 54, 150)]
    public void A_thousand_pieces_on_a_repeat_keep_the_steps_of_a_page_that_waits(double along, double across, double usable, int quantity)
    {
        CushionSpecification cushion = Boxed(15, 18, 4, HandSewn) with { Quantity = quantity, Outline = new CircleOutline(In(15)) };
        RepeatSpecification print = new(In((decimal)along), In((decimal)across), DropKind.Half);
        FabricSpecification fabric = Fabric with { Width = In((decimal)usable), Repeat = print };
        OrderSpecification order = Order(cushion, fabric) with { Effort = Effort.Quick };

        FabricLayout layout = QuotePipeline.LayOut(Drafting.Of(order), CancellationToken.None)[0].Layout;

        Assert.InRange(layout.Placements.Length, 500, 2_000);
        Assert.InRange(layout.Steps, 1, 10_000_000);
    }
}
