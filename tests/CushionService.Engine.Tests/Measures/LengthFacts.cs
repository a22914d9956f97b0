using CushionService.Engine.Measures;

namespace CushionService.Engine.Tests.Measures;

public sealed class LengthFacts
{
    [Theory]
    [InlineData("1 yd", 914_400_000, Sources.InternationalYard)]
    [InlineData("1/8 yd", 114_300_000, Sources.InternationalYard)]
    [InlineData("1/8 yd", 4.5 * 25_400_000, Sources.DefinedUnitFractions)]
    [InlineData("1 1/8 yd", 1_028_700_000, Sources.InternationalYard)]
    [InlineData("5/8 yd", 571_500_000, Sources.InternationalYard)]
    [InlineData("1 in", 25_400_000, Sources.InternationalYard)]
    [InlineData("36 in", 914_400_000, Sources.InternationalYard)]
    [InlineData("1/64 in", 396_875, Sources.LinearMeasures)]
    [InlineData("1/32 in", 793_750, Sources.LinearMeasures)]
    [InlineData("1/3 yd", 304_800_000, Sources.LinearMeasures)]
    [InlineData("2/3 yd", 609_600_000, Sources.LinearMeasures)]
    [InlineData("0.1 m", 100_000_000, Sources.LinearMeasures)]
    [InlineData("1 cm", 10_000_000, Sources.LinearMeasures)]
    public void What_measures_show_is_a_whole_number_of_nanometres(string text, double nanometres, string source)
    {
        Assert.True(LengthText.TryParse(text, LengthUnit.Inch, out Length length));
        Assert.Equal(nanometres, length.Nanometres);
    }

    [Theory]
    [InlineData(LengthUnit.Metre, LengthUnit.Yard, "1.0936132983", Sources.InternationalYard)]
    [InlineData(LengthUnit.Metre, LengthUnit.Inch, "39.3700787402", Sources.InternationalYard)]
    [InlineData(LengthUnit.Yard, LengthUnit.Metre, "0.9144", Sources.InternationalYard)]
    [InlineData(LengthUnit.Inch, LengthUnit.Centimetre, "2.54", Sources.InternationalYard)]
    public void One_of_a_unit_in_another(LengthUnit of, LengthUnit unit, string expected, string source) =>
        Assert.Equal(decimal.Parse(expected), decimal.Round(Length.From(1, of).In(unit), 10));

    [Theory]
    [InlineData(36, "91.44")]
    [InlineData(45, "114.3")]
    [InlineData(48, "121.92")]
    [InlineData(54, "137.16")]
    [InlineData(60, "152.4")]
    [InlineData(118, "299.72")]
    public void Usual_widths_of_fabric_in_centimetres(int inches, string centimetres) =>
        Assert.Equal(decimal.Parse(centimetres), In(inches).In(LengthUnit.Centimetre));

    [Theory]
    [InlineData(96, 27, 108, Sources.Mathematics)]
    [InlineData(118, 13, 130, Sources.Mathematics)]
    [InlineData(116, 25, 125, Sources.Mathematics)]
    [InlineData(90, 27, 108, Sources.Mathematics)]
    [InlineData(108, 27, 108, Sources.Mathematics)]
    [InlineData(0, 27, 0, Sources.Mathematics)]
    [InlineData(-30, 27, -27, Sources.Mathematics)]
    public void Rounding_up_takes_the_next_whole_multiple(int length, int step, int expected, string source) =>
        Assert.Equal(In(expected), In(length).RoundUpTo(In(step)));

    [Theory]
    [InlineData(0)]
    [InlineData(-1)]
    public void A_step_without_length_is_refused(int step) => Assert.Throws<ArgumentOutOfRangeException>(() => In(1).RoundUpTo(In(step)));

    [Fact]
    public void Half_of_an_odd_length_is_rounded_up_and_the_two_halves_make_the_whole()
    {
        var odd = Length.FromNanometres(7);

        Assert.Equal(Length.FromNanometres(4), odd.HalfUp());
        Assert.Equal(odd, odd.HalfUp() + (odd - odd.HalfUp()));
        Assert.Equal(Length.FromNanometres(-3), (-odd).HalfUp());
    }

    [Fact]
    public void A_number_is_rounded_to_the_nearest_nanometre_halves_away_from_zero()
    {
        Assert.Equal(2, Length.FromMillimetres(0.0000015m).Nanometres);
        Assert.Equal(-2, Length.FromMillimetres(-0.0000015m).Nanometres);
        Assert.Equal(1, Length.FromMillimetres(0.0000014m).Nanometres);
    }

    [Fact]
    public void A_sum_beyond_what_nanometres_hold_is_a_fault_and_never_wraps_round()
    {
        var longest = Length.FromNanometres(long.MaxValue);

        Assert.Throws<OverflowException>(() => longest + Length.FromNanometres(1));
        Assert.Throws<OverflowException>(() => -longest - Length.FromNanometres(2));
        Assert.Throws<OverflowException>(() => 2 * longest);
    }

    [Fact]
    public void Lengths_compare_by_their_size()
    {
        Assert.True(In(1) > Mm(25) && In(1) < Mm(26) && In(1) >= Mm(25.4m) && In(1) <= Mm(25.4m));
        Assert.Equal([Mm(25), In(1), Mm(26)], new[] { Mm(26), Mm(25), In(1) }.Order());
        Assert.Equal(Mm(25), Length.Min(In(1), Mm(25)));
        Assert.Equal(In(1), Length.Max(In(1), Mm(25)));
    }
}
