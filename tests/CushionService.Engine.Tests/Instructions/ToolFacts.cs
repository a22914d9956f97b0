using CushionService.Engine.Instructions;
using CushionService.Engine.Measures;
using CushionService.Engine.Quoting;
using CushionService.Engine.Specifications;
using CushionService.Engine.Specifications.Fillings;
using CushionService.Engine.Specifications.Shapes;
using CushionService.Engine.Specifications.Trimmings;
using CushionService.Engine.Tests.Quoting;

namespace CushionService.Engine.Tests.Instructions;

/// <summary>The tools of a quote are those of its steps, and no others.</summary>
public sealed class ToolFacts
{
    private static readonly FillSpecification Foam = new(FillKind.Foam, "foam", null, Length.Zero, 0.9m);

    [Fact]
    public void A_foam_box_with_a_zipper_takes_a_zipper_foot_and_a_foam_knife()
    {
        // Sources.Practice
        Tool[] tools = Tools(Boxed(24, 22, 4, BackZipper, BoxingJoins.Back) with { Fill = Foam });

        Assert.Contains(Tool.ZipperFoot, tools);
        Assert.Contains(Tool.FoamKnife, tools);
        Assert.Contains(Tool.Iron, tools);
        Assert.DoesNotContain(Tool.CordingFoot, tools);
        Assert.DoesNotContain(Tool.ButtonholeFoot, tools);
        Assert.DoesNotContain(Tool.TuftingNeedle, tools);
    }

    [Fact]
    public void Coated_fabric_takes_clips_and_a_sharp_needle_and_no_iron()
    {
        // Sources.Practice: pins leave holes, and a coating melts.
        Tool[] tools =
        [
            .. Quote(Order(Boxed(24, 22, 4, BackZipper, BoxingJoins.Back), Fabric with { Coated = true })).Tools.Select(use => use.Tool),
        ];

        Assert.Contains(Tool.Clips, tools);
        Assert.Contains(Tool.SharpNeedle, tools);
        Assert.DoesNotContain(Tool.Pins, tools);
        Assert.DoesNotContain(Tool.Iron, tools);
        Assert.DoesNotContain(Tool.UniversalNeedle, tools);
    }

    [Fact]
    public void Pile_is_steamed_and_no_iron_touches_it()
    {
        // Sources.Practice: an iron flattens a pile.
        Quote quote = Quote(Order(Boxed(24, 22, 4, BackZipper, BoxingJoins.Back), Fabric with { Pile = true }));

        Assert.Contains(Tool.Steamer, quote.Tools.Select(use => use.Tool));
        Assert.DoesNotContain(Tool.Iron, quote.Tools.Select(use => use.Tool));
        Assert.DoesNotContain(quote.Steps, step => step.Text.ToString().Contains("press ", StringComparison.OrdinalIgnoreCase));
    }

    [Fact]
    public void A_hand_sewn_pillow_takes_no_zipper_foot()
    {
        Tool[] tools = Tools(
            KnifeEdge(18, 18, HandSewn) with
            {
                Fill = new FillSpecification(FillKind.Loose, "fibre", 20, Length.Zero, 0.9m),
            }
        );

        Assert.Contains(Tool.HandNeedle, tools);
        Assert.DoesNotContain(Tool.ZipperFoot, tools);
        Assert.DoesNotContain(Tool.FoamKnife, tools);
    }

    [Theory]
    [InlineData("Baste the welt to the right side of the top", true)]
    [InlineData("Sew the top to the boxing", true)]
    [InlineData("Wrap the strip round", false)]
    public void Steps_that_clip_take_shears(string step, bool clips)
    {
        Quote quote = Trade.Quote(
            Order(
                Boxed(24, 22, 4, BackZipper, BoxingJoins.Back) with
                {
                    Trim = new TrimSpecification { Edging = new WeltSpecification([EdgingPlace.Top], In(0.15625m), WeltCut.Bias) },
                }
            )
        );
        int number = quote.Steps.Index().Single(one => one.Item.Text.ToString().Contains(step, StringComparison.Ordinal)).Index + 1;

        Assert.Equal(clips, quote.Tools.Single(use => use.Tool == Tool.Shears).Steps.Contains(number));
    }

    [Fact]
    public void Every_tool_is_named_by_a_step_and_every_step_finds_its_tools()
    {
        HashSet<Tool> seen = [];
        for (int number = 0; number < 60; number++)
        {
            Drafting drafting = Drafting.Of(TrimmedOrders.Order(number));
            if (!drafting.Violations.IsEmpty)
            {
                continue;
            }

            var steps = SewingOrder.Of(drafting.Order, drafting.Patterns, drafting.Pieces);
            foreach (ToolUse use in ToolUse.Of(steps))
            {
                seen.Add(use.Tool);
                Assert.NotEmpty(use.Steps);
                Assert.All(use.Steps, step => Assert.Contains(ToolUse.Of([steps[step - 1]]), one => one.Tool == use.Tool));
            }
        }

        Assert.True(seen.Count > 12, string.Join(", ", seen));
    }

    private static Tool[] Tools(CushionSpecification cushion) => [.. Quote(Order(cushion)).Tools.Select(use => use.Tool)];
}
