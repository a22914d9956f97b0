using System.Numerics;
using CushionService.Engine.Measures;

namespace CushionService.Engine.Tests.Measures;

public sealed class LengthTextFacts
{
    [Theory]
    [InlineData("15", LengthUnit.Inch, 381_000_000)]
    [InlineData("15.5", LengthUnit.Inch, 393_700_000)]
    [InlineData("15 1/2", LengthUnit.Inch, 393_700_000)]
    [InlineData("15-1/2", LengthUnit.Inch, 393_700_000)]
    [InlineData("15-1/2 in", LengthUnit.Millimetre, 393_700_000)]
    [InlineData("  15 1/2in ", LengthUnit.Millimetre, 393_700_000)]
    [InlineData("12″", LengthUnit.Centimetre, 304_800_000)]
    [InlineData("12\"", LengthUnit.Centimetre, 304_800_000)]
    [InlineData("1 inch", LengthUnit.Centimetre, 25_400_000)]
    [InlineData("2 inches", LengthUnit.Centimetre, 50_800_000)]
    [InlineData("38.5 cm", LengthUnit.Inch, 385_000_000)]
    [InlineData("385mm", LengthUnit.Inch, 385_000_000)]
    [InlineData("0.385 m", LengthUnit.Inch, 385_000_000)]
    [InlineData("1 1/4 yd", LengthUnit.Inch, 1_143_000_000)]
    [InlineData("1/3yd", LengthUnit.Inch, 304_800_000)]
    [InlineData("2 yards", LengthUnit.Inch, 1_828_800_000)]
    [InlineData("1/2", LengthUnit.Yard, 457_200_000)]
    [InlineData("5/4", LengthUnit.Inch, 31_750_000)]
    [InlineData(".5", LengthUnit.Inch, 12_700_000)]
    [InlineData("5.", LengthUnit.Inch, 127_000_000)]
    [InlineData("1.5e1", LengthUnit.Inch, 381_000_000)]
    [InlineData("-1 1/2", LengthUnit.Inch, -38_100_000)]
    [InlineData("-1/2", LengthUnit.Inch, -12_700_000)]
    [InlineData("0", LengthUnit.Inch, 0)]
    [InlineData("1,5", LengthUnit.Inch, 38_100_000)]
    [InlineData("44,5 cm", LengthUnit.Inch, 445_000_000)]
    [InlineData("0,125", LengthUnit.Inch, 3_175_000)]
    [InlineData("1234,567", LengthUnit.Millimetre, 1_234_567_000)]
    [InlineData("3'8\"", LengthUnit.Millimetre, 1_117_600_000)]
    [InlineData("3′ 8 1/2″", LengthUnit.Millimetre, 1_130_300_000)]
    [InlineData("3'-8 in", LengthUnit.Millimetre, 1_117_600_000)]
    [InlineData("3’8½”", LengthUnit.Inch, 1_130_300_000)]
    [InlineData("3'", LengthUnit.Centimetre, 914_400_000)]
    [InlineData("44½", LengthUnit.Inch, 1_130_300_000)]
    [InlineData("44 ½ in", LengthUnit.Centimetre, 1_130_300_000)]
    [InlineData("⅞", LengthUnit.Inch, 22_225_000)]
    [InlineData("1⁄2", LengthUnit.Inch, 12_700_000)]
    [InlineData("４４．５", LengthUnit.Inch, 1_130_300_000)]
    [InlineData("４４，５ｃｍ", LengthUnit.Inch, 445_000_000)]
    [InlineData("44\u00a0cm", LengthUnit.Inch, 440_000_000)]
    [InlineData("15\u202f1/2\u00a0in", LengthUnit.Centimetre, 393_700_000)]
    [InlineData("−1/2", LengthUnit.Inch, -12_700_000)]
    public void Lengths_are_read_as_people_write_them(string text, LengthUnit unit, long nanometres)
    {
        Assert.True(LengthText.TryParse(text, unit, out Length length));
        Assert.Equal(nanometres, length.Nanometres);
    }

    [Fact]
    public void A_fraction_is_exact_to_the_nearest_nanometre()
    {
        var random = new Random(3);
        for (var i = 0; i < 10_000; i++)
        {
            (int whole, int numerator, int denominator) = (
                random.Next(200),
                random.Next(1, 1_000),
                random.Next(1, 1 << random.Next(1, 20))
            );
            var unit = (LengthUnit)random.Next(5);
            BigInteger nanometres = Length.NanometresIn(unit),
                parts = ((((BigInteger)whole * denominator) + numerator) * nanometres * 2) + denominator;

            bool read = LengthText.TryParse($"{whole} {numerator}/{denominator}", unit, out Length length);

            BigInteger expected = parts / (2 * (BigInteger)denominator);
            Assert.Equal(expected <= Length.MaxValue.Nanometres, read);
            Assert.Equal(read ? expected : 0, length.Nanometres);
        }
    }

    [Theory]
    [InlineData("")]
    [InlineData("   ")]
    [InlineData("in")]
    [InlineData("half")]
    [InlineData("NaN")]
    [InlineData("Infinity")]
    [InlineData("1/0")]
    [InlineData("1/-2")]
    [InlineData("1//2")]
    [InlineData("1/2/3")]
    [InlineData("1 2")]
    [InlineData("1.5 1/2")]
    [InlineData("--1/2")]
    [InlineData("1'000")]
    [InlineData("1,234")]
    [InlineData("12,345.6")]
    [InlineData("1.234,5")]
    [InlineData("1,2,3")]
    [InlineData("1 234")]
    [InlineData("1\u202f234,5")]
    [InlineData("3'12\"")]
    [InlineData("3'8cm")]
    [InlineData("-3'8\"")]
    [InlineData("4½½")]
    [InlineData("½4")]
    [InlineData("44é")]
    [InlineData(",")]
    [InlineData("0x10")]
    [InlineData("1 ft")]
    [InlineData("1 IN")]
    [InlineData("1 in in")]
    [InlineData("in 1")]
    [InlineData("١٢")]
    [InlineData("1e30")]
    [InlineData("10001 m")]
    [InlineData("-10001 m")]
    [InlineData("2147483648/1")]
    [InlineData("1/2147483648")]
    [InlineData("10000 1/2 m")]
    [InlineData("0000000000000000000000000000000000000000001")]
    public void What_is_not_a_length_is_refused(string text)
    {
        Assert.False(LengthText.TryParse(text, LengthUnit.Metre, out _));
    }

    [Theory]
    [InlineData("15.5", LengthUnit.Inch, "15 1/2 in")]
    [InlineData("0.015625", LengthUnit.Inch, "1/64 in")]
    [InlineData("-0.75", LengthUnit.Inch, "-3/4 in")]
    [InlineData("-1.75", LengthUnit.Inch, "-1 3/4 in")]
    [InlineData("0", LengthUnit.Inch, "0 in")]
    [InlineData("12", LengthUnit.Inch, "12 in")]
    [InlineData("1/3", LengthUnit.Inch, "about 11/32 in")]
    [InlineData("50.26548", LengthUnit.Inch, "about 50 1/4 in")]
    [InlineData("-50.26548", LengthUnit.Inch, "about -50 1/4 in")]
    [InlineData("5/32", LengthUnit.Inch, "5/32 in")]
    [InlineData("1/200", LengthUnit.Inch, "0 in")]
    [InlineData("12.00002", LengthUnit.Inch, "12 in")]
    [InlineData("1 1/3", LengthUnit.Yard, "1 1/3 yd")]
    [InlineData("1 1/8", LengthUnit.Yard, "1 1/8 yd")]
    [InlineData("0.2", LengthUnit.Yard, "0.2 yd")]
    [InlineData("38.5", LengthUnit.Centimetre, "38.5 cm")]
    [InlineData("38.55", LengthUnit.Centimetre, "38.55 cm")]
    [InlineData("125.66371", LengthUnit.Centimetre, "about 125.7 cm")]
    [InlineData("0.95247", LengthUnit.Centimetre, "about 0.95 cm")]
    [InlineData("1/3", LengthUnit.Metre, "about 0.33 m")]
    [InlineData("20.2847", LengthUnit.Yard, "about 20.28 yd")]
    [InlineData("1256.6371", LengthUnit.Millimetre, "about 1257 mm")]
    public void Lengths_are_printed_as_the_marks_that_measures_show(string text, LengthUnit unit, string printed)
    {
        Assert.True(LengthText.TryParse(text, unit, out Length length));
        Assert.Equal(printed, LengthText.Format(length, unit));
    }

    [Theory]
    [InlineData(LengthUnit.Inch, 64)]
    [InlineData(LengthUnit.Yard, 64)]
    [InlineData(LengthUnit.Yard, 3)]
    [InlineData(LengthUnit.Centimetre, 100)]
    [InlineData(LengthUnit.Millimetre, 10)]
    [InlineData(LengthUnit.Metre, 10_000)]
    public void What_is_printed_reads_back_as_the_same_length(LengthUnit unit, int parts)
    {
        var random = new Random(1959);
        for (var i = 0; i < 2000; i++)
        {
            var length = Length.FromNanometres(random.Next(-5000 * parts, 5000 * parts) * (Length.NanometresIn(unit) / parts));
            string text = LengthText.Format(length, unit);

            Assert.True(LengthText.TryParse(text, LengthUnit.Millimetre, out Length read), text);
            Assert.Equal(length, read);
        }
    }

    [Fact]
    public void No_text_is_too_odd_to_be_refused_in_peace()
    {
        const string Signs = "0123456789 ./-+eEinmcyd\"″½\0é";
        var random = new Random(1959);
        for (var i = 0; i < 20_000; i++)
        {
            string text = new([.. Enumerable.Range(0, random.Next(45)).Select(_ => Signs[random.Next(Signs.Length)])]);
            if (LengthText.TryParse(text, LengthUnit.Inch, out Length length))
            {
                Assert.InRange(length.Nanometres, -Length.MaxValue.Nanometres, Length.MaxValue.Nanometres);
            }
        }
    }
}
