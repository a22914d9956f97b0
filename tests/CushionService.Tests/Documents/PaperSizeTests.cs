using CushionService.Documents;

namespace CushionService.Tests.Documents;

/// <summary>Sheets of paper against their standards.</summary>
public sealed class PaperSizeTests
{
    /// <summary>A sheet of the A series is 1/2ⁿ of a square metre, its sides in the proportion 1 : √2, to the millimetre (ISO 216); letter
    /// is 6 mm wider than A4 and 18 mm shorter, and tabloid two of letter (ANSI A and B).</summary>
    [Theory]
    [InlineData("a4", 4)]
    [InlineData("a3", 3)]
    public void Sheets_of_the_A_series_follow_their_standard(string name, int halvings)
    {
        Paper paper = Paper.Named(name)!;
        double Side(double power) => Math.Floor((1000 * Math.Pow(2, power - (halvings / 2.0))) + 0.2);

        Assert.Equal((Side(-0.25), Side(0.25)), (paper.Width, paper.Height));
    }

    [Fact]
    public void Letter_and_tabloid_follow_theirs()
    {
        Assert.Equal(6, Paper.Letter.Width - Paper.A4.Width, 0.5);
        Assert.Equal(18, Paper.A4.Height - Paper.Letter.Height, 0.5);
        Assert.Equal((Paper.Letter.Height, 2 * Paper.Letter.Width), (Paper.Tabloid.Width, Paper.Tabloid.Height));
    }
}
