using CushionService.Tests.Hosting;

namespace CushionService.Tests.Pages;

/// <summary>The table of the trade's words in four languages.</summary>
public sealed class TradeWordsTests
{
    private static readonly string[][] Rows =
    [
        .. Repository
            .Read("src/CushionService/docs/trade-words.md")
            .Split('\n')
            .Where(line => line.StartsWith("| ", StringComparison.Ordinal))
            .Skip(1)
            .Select(line => line.Trim('|', ' ').Split(" | ")),
    ];

    [Fact]
    public void It_has_six_score_terms_in_every_language_each_with_its_source()
    {
        Assert.True(Rows.Length >= 120, $"There are {Rows.Length}.");
        Assert.All(Rows, row => Assert.Equal(5, row.Length));
        Assert.All(Rows.SelectMany(row => row), cell => Assert.NotEqual("", cell.Trim()));
        Assert.Equal(Rows.Length, Rows.Select(row => row[0]).Distinct().Count());
    }
}
