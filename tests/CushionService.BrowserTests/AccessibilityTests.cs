using CushionService.BrowserTests.Hosting;
using Deque.AxeCore.Commons;
using Deque.AxeCore.Playwright;
using Microsoft.Playwright;

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
        Assert.Empty(await ViolationsAsync(shown));
        await shown.UnfoldAsync("How so?");
        await shown.UnfoldAsync("Compare fabrics");
        await shown.UnfoldAsync("I have some fabric");
        await shown.UnfoldAsync("Share and print");
        await shown.Page.Locator("cushion-estimate .line summary").ClickAsync();
        await shown.Page.Locator("cushion-estimate .kind summary").First.ClickAsync();
        await shown.Page.Locator("cushion-estimate .offers button").First.WaitForAsync();
        Assert.Empty(await ViolationsAsync(shown));
        await shown.Field("/cushions/*/thickness").FillAsync("99");
        await shown.StateAsync("refused");
        Assert.Empty(await ViolationsAsync(shown));
    }

    [SkippableFact]
    public async Task The_cut_sheet_breaks_no_rule()
    {
        await using ShownPage shown = await browser.OpenAsync("/orders");
        await CutSheetTests.ShowAsync(shown, "reading-nook");
        Assert.Empty(await ViolationsAsync(shown));
    }

    [SkippableTheory]
    [InlineData("/orders", "de", ColorScheme.Light)]
    [InlineData("/shops", "fr", ColorScheme.Dark)]
    [InlineData("/v1/estimate", "es", ColorScheme.Dark)]
    [InlineData("/", "de", ColorScheme.Dark)]
    public async Task Every_page_breaks_no_rule_in_its_language_and_scheme(string path, string language, ColorScheme scheme)
    {
        await using ShownPage shown = await browser.OpenEmptyAsync(390);
        await shown.Page.EmulateMediaAsync(new() { ColorScheme = scheme });
        await shown.Page.GotoAsync($"{path}?language={language}");
        await shown.Page.WaitForLoadStateAsync(LoadState.NetworkIdle);

        Assert.Equal(language, await shown.Page.EvaluateAsync<string>("document.documentElement.lang"));
        Assert.Empty(await ViolationsAsync(shown));
        Assert.Equal(390, await shown.Page.EvaluateAsync<int>("document.documentElement.scrollWidth"));
    }

    [SkippableTheory]
    [InlineData(1280, ColorScheme.Light)]
    [InlineData(390, ColorScheme.Dark)]
    public async Task The_page_of_the_calls_breaks_no_rule_with_a_call_sent(int width, ColorScheme scheme)
    {
        await using ShownPage shown = await browser.OpenEmptyAsync(width);
        await shown.Page.EmulateMediaAsync(new() { ColorScheme = scheme });
        await shown.Page.GotoAsync("/docs/");
        await shown.Page.Locator("[id^=operations-Yardage] .opblock-summary-control").ClickAsync();
        await shown.Page.Locator(".try-out__btn").ClickAsync();
        await shown.Page.Locator(".btn.execute").ClickAsync();
        await shown.Page.Locator(".live-responses-table").First.WaitForAsync();

        Assert.Empty(await ViolationsAsync(shown));
        Assert.Equal(width, await shown.Page.EvaluateAsync<int>("document.documentElement.scrollWidth"));
    }

    private static async Task<IEnumerable<string>> ViolationsAsync(ShownPage shown)
    {
        AxeResult result = await shown.Page.RunAxe(Rules);
        Assert.NotEmpty(result.Passes);
        return result.Violations.SelectMany(violation => violation.Nodes.Select(node => $"{violation.Id}: {node.Html}"));
    }
}
