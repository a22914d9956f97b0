using CushionService.BrowserTests.Hosting;
using Deque.AxeCore.Commons;
using Deque.AxeCore.Playwright;

namespace CushionService.BrowserTests;

/// <summary>Judged by axe, by the rules of WCAG 2.2, levels A and AA.</summary>
[Collection(BrowserGroup.Name)]
public sealed class AccessibilityTests(BrowserOfThisMachine browser)
{
    private static readonly AxeRunOptions Rules = new()
    {
        RunOnly = new RunOnlyOptions { Type = "tag", Values = ["wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22aa"] },
    };

    [SkippableTheory]
    [InlineData(320)]
    [InlineData(768)]
    [InlineData(1280)]
    public async Task The_front_page_breaks_no_rule_with_an_answer_and_with_a_refusal(int width)
    {
        await using ShownPage shown = await browser.OpenAsync(width: width);
        await shown.StateAsync("answered");
        await shown.Page.Locator("#order-answer svg").First.WaitForAsync();
        Assert.Empty(await ViolationsAsync(shown));
        await shown.Page.Locator("cushion-estimate summary").First.ClickAsync();
        await shown.Field("/cushions/*/thickness").FillAsync("99");
        await shown.StateAsync("refused");
        Assert.Empty(await ViolationsAsync(shown));
    }

    [SkippableFact]
    public async Task The_cut_sheet_breaks_no_rule()
    {
        await using ShownPage shown = await browser.OpenAsync();
        await CutSheetTests.ShowAsync(shown, "reading-nook");
        Assert.Empty(await ViolationsAsync(shown));
    }

    private static async Task<IEnumerable<string>> ViolationsAsync(ShownPage shown)
    {
        AxeResult result = await shown.Page.RunAxe(Rules);
        Assert.NotEmpty(result.Passes);
        return result.Violations.SelectMany(violation => violation.Nodes.Select(node => $"{violation.Id}: {node.Html}"));
    }
}
