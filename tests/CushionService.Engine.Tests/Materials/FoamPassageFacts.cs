using CushionService.Engine.Materials;
using CushionService.Engine.Measures;
using CushionService.Engine.Quoting;
using CushionService.Engine.Specifications;
using CushionService.Engine.Specifications.Closures;
using CushionService.Engine.Specifications.Fillings;
using CushionService.Engine.Specifications.Outlines;
using CushionService.Engine.Specifications.Shapes;
using CushionService.Engine.Specifications.Stocks;
using static CushionService.Engine.Tests.Instructions.StepOrder;

namespace CushionService.Engine.Tests.Materials;

/// <summary>How foam goes into its cover (common practice, no source).</summary>
public sealed class FoamPassageFacts
{
    private static readonly FillSpecification Foam = new(FillKind.Foam, "foam", null, Length.Zero, 0.9m);

    [Theory]
    // 22/2 + 4 folded.
    [InlineData(24, 22, 4, true, 15)]
    // A third of 18 is 6: 18/2 + 6 folded, and beyond it 18 + 6.25/2 pressed to half.
    [InlineData(18, 18, 6, true, 15)]
    [InlineData(18, 18, 6.25, false, 21.125)]
    [InlineData(60, 20, 14, false, 27)]
    public void Foam_folds_where_it_is_three_times_as_wide_as_thick(double width, double depth, double thickness, bool folds, double needed)
    {
        CushionSpecification seat = Boxed((decimal)width, (decimal)depth, (decimal)thickness, HandSewn) with { Fill = Foam };

        Assert.Equal(folds, FoamPassage.Folds(seat, []));
        Assert.Equal(In((decimal)needed), FoamPassage.Needed(seat, []));
    }

    [Theory]
    [InlineData(70, true)]
    [InlineData(71, false)]
    public void Firm_foam_does_not_fold(double pounds, bool folds)
    {
        CushionSpecification seat = Boxed(24, 22, 4, HandSewn) with { Fill = Foam };
        StockSpecification stock = new()
        {
            Id = "foam",
            Kind = MaterialKind.Foam,
            Firmness = Force.FromPounds((decimal)pounds),
        };

        Assert.Equal(folds, FoamPassage.Folds(seat, [stock]));
    }

    [Fact]
    public void A_drum_of_foam_is_pressed_in_and_its_zipper_warned_of()
    {
        CushionSpecification pouf = Boxed(1, 1, 14, new ZipperClosure(Side.Bottom, Length.Zero, In(0.75m))) with
        {
            Construction = Construction.Pouf,
            Outline = new CircleOutline(In(20)),
            Fill = Foam,
        };

        InOrder(pouf, "Cut the foam", "Press the foam together, feed it in through the opening, and work it into the edge");
        // 20 in less a guard at each end against 20 + 14/2.
        Assert.Contains(
            "The closure opens 19 in; the foam, which does not fold, needs 27 in.",
            Drafting.Of(Order(pouf)).Warnings.Single(warning => warning.Code == "opening-too-small").Detail.ToString(),
            StringComparison.Ordinal
        );
    }

    [Fact]
    public void Half_a_roll_is_worked_into_its_corners()
    {
        CushionSpecification half = Boxed(1, 1, 1, HandSewn) with
        {
            Construction = Construction.Bolster,
            Outline = new HalfRoundOutline(In(16)),
            Thickness = Length.Zero,
            Length = In(30),
            Fill = Foam,
        };

        InOrder(
            half,
            "Clip the end of the body along the curve every 1/2 in",
            "at each corner stop with the needle down and clip the body to it",
            "work it into the corners"
        );
    }
}
