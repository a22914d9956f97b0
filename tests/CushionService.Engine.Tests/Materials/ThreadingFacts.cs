using CushionService.Engine.Materials;
using CushionService.Engine.Measures;
using CushionService.Engine.Quoting;
using CushionService.Engine.Specifications;
using CushionService.Engine.Specifications.Practices;
using CushionService.Engine.Specifications.Shapes;

namespace CushionService.Engine.Tests.Materials;

public sealed class ThreadingFacts
{
    [Theory]
    [InlineData(StitchType.Lockstitch, 0.01, 10, 0, 2.2, Sources.StitchGeometry)]
    [InlineData(StitchType.Chainstitch, 0.005, 9, 0, 3.09, Sources.StitchGeometry)]
    [InlineData(StitchType.Lockstitch, 0.08, 8, 0, 3.28, Sources.StitchGeometry)]
    [InlineData(StitchType.Overedge, 0.08, 10, 0.2, 14.2, Sources.StitchGeometry)]
    [InlineData(StitchType.DoubleChainstitch, 0.1, 10, 0, 6, Sources.StitchGeometry)]
    [InlineData(StitchType.SafetyStitch, 0.08, 10, 0.2, 5.6 + 14.2, Sources.StitchClasses)]
    public void Thread_in_a_unit_of_seam(StitchType stitch, double thickness, int stitches, double bight, double thread, string source) =>
        Assert.Equal((decimal)thread, Threading.Consumption(stitch, (decimal)thickness, stitches, (decimal)bight));

    [Theory]
    [InlineData(StitchType.Lockstitch, "0.08", "1/8", null, 3.28, Sources.StitchGeometry)]
    [InlineData(StitchType.Overedge, "0.08", "1/10", "0.2", 14.2, Sources.StitchGeometry)]
    public void A_workroom_s_thread_follows_from_its_stitch(
        StitchType type,
        string thickness,
        string stitch,
        string? bight,
        double ratio,
        string source
    )
    {
        Length Read(string? text) =>
            text is not null && LengthText.TryParse(text, LengthUnit.Inch, out Length length) ? length : Length.Zero;
        WorkroomPractice workroom = WorkroomPractice.Imperial with
        {
            Stitch = new StitchSpecification(type, Read(stitch), Read(thickness), Read(bight)),
        };

        Assert.Equal(ratio, (double)Threading.Ratio(workroom), 1e-9);
        Assert.Equal(4, Threading.Ratio(workroom with { ThreadRatio = 4 }));
        Assert.Equal(2.5m, Threading.Ratio(WorkroomPractice.Imperial));
    }

    [Fact]
    public void A_stitch_type_without_a_formula_is_refused() =>
        Assert.Throws<ArgumentOutOfRangeException>(() => Threading.Consumption((StitchType)602, 0.01m, 10));

    [Theory]
    [InlineData("100 cm", "5.4", 0, "540", Sources.MeasuredThread)]
    [InlineData("100 cm", "5.4", 15, "621", Sources.MeasuredThread)]
    [InlineData("100 cm", "5.4333333333333333", 0, "543.33", Sources.MeasuredThread)]
    [InlineData("100 cm", "5.4333333333333333", 15, "624.83", Sources.MeasuredThread)]
    [InlineData("42 in", "5.6666666666666667", 0, "604.52", Sources.EstimatedThread)]
    [InlineData("42 in", "5.6666666666666667", 15, "695.20", Sources.EstimatedThread)]
    [InlineData("254 in", "2.5", 0, "1612.90", Sources.MeasuredThread)]
    [InlineData("254 in", "2.5", 15, "1854.84", Sources.MeasuredThread)]
    public void Thread_is_stitching_by_its_ratio_and_the_waste(
        string stitching,
        string ratio,
        int wastePercent,
        string centimetres,
        string source
    )
    {
        Assert.True(LengthText.TryParse(stitching, LengthUnit.Inch, out Length length));

        Length thread = Threading.Thread(length, decimal.Parse(ratio), wastePercent / 100m);
        Assert.Equal(decimal.Parse(centimetres), decimal.Round(thread.In(LengthUnit.Centimetre), 2, MidpointRounding.AwayFromZero));
    }

    [Theory]
    [InlineData("42 in", "5.6666666666666667", 0, "6.6111", Sources.EstimatedThread)]
    [InlineData("42 in", "5.6666666666666667", 15, "7.6028", Sources.EstimatedThread)]
    [InlineData("254 in", "1", 0, "7.0556", Sources.Derived)]
    [InlineData("254 in", "2.5", 0, "17.6389", Sources.MeasuredThread)]
    [InlineData("254 in", "2.5", 15, "20.2847", Sources.MeasuredThread)]
    public void Thread_in_yards(string stitching, string ratio, int wastePercent, string yards, string source)
    {
        Assert.True(LengthText.TryParse(stitching, LengthUnit.Inch, out Length length));

        Assert.Equal(
            decimal.Parse(yards),
            decimal.Round(Threading.Thread(length, decimal.Parse(ratio), wastePercent / 100m).In(LengthUnit.Yard), 4)
        );
    }

    [Fact]
    public void A_zippered_box_of_24_22_4_has_254_inches_of_seam()
    {
        // Sources.Derived: both faces 2 × 92, two joins of 5, the zipper's two tapes 2 × 30.
        CushionSpecification box = Boxed(24, 22, 4, BackZipper, BoxingJoins.Back);

        Assert.Equal(In(254), Threading.Stitching(box, Drafting.Of(Order(box, Fabric with { Width = In(72) })).Patterns[0]));
    }

    [Fact]
    public void A_join_more_in_the_boxing_adds_its_own_seam()
    {
        CushionSpecification box = Boxed(24, 22, 4, BackZipper, BoxingJoins.Back);

        Assert.Equal(In(254 + 5), Threading.Stitching(box, Drafting.Of(Order(box)).Patterns[0]));
    }

    [Fact]
    public void A_boxed_X_an_inch_square_is_6_82843_inches()
    {
        // Sources.Mathematics
        Assert.Equal(6.82843, (double)Threading.BoxedX(In(1), In(1)).In(LengthUnit.Inch), 1e-5);
        Assert.Equal(2 * (3 + 4) + 2 * 5, (double)Threading.BoxedX(In(3), In(4)).In(LengthUnit.Inch), 1e-6);
    }

    [Fact]
    public void Gathered_ends_take_a_doubled_thread_round_each()
    {
        // Sources.Practice: a roll of 24 in, 8 in across, sewn shut along its gathered length and drawn up at both ends, each π × 8 round.
        CushionSpecification roll = Instructions.BolsterStepFacts.Roll with
        {
            Closure = HandSewn,
            Ends = new BolsterEnds(BolsterEndKind.Gathered, Length.Zero, In(1)),
        };
        Length sewn = Threading.Stitching(roll, Drafting.Of(Order(roll)).Patterns[0]);

        Assert.Equal(24 + 8 + (2 * 2 * Math.PI * 8), (double)sewn.In(LengthUnit.Inch), 0.01);
    }

    [Fact]
    public void Hems_and_a_handle_are_sewn_too()
    {
        // Two faces 2 × 84, four corners (two of 3 + 1, two that overlap as high), hems 2 × 22, tape of 21 along both edges of both halves,
        // both ends of an overlap of 1 1/4 basted, the strap's edges 2 × 10 1/2 and two boxed Xs.
        CushionSpecification box = Boxed(22, 20, 3, HookAndLoop(0.5m, 1.25m));
        Length plain = Threading.Stitching(box, Drafting.Of(Order(box)).Patterns[0]);
        CushionSpecification handled = box with { Handle = Strap };

        Assert.Equal(In(168 + (4 * 4) + 44 + (4 * 21) + 2.5m), plain);
        Assert.Equal(
            plain + In(21) + 2 * Threading.BoxedX(In(1.25m), In(1.25m)),
            Threading.Stitching(handled, Drafting.Of(Order(handled)).Patterns[0])
        );
    }
}
