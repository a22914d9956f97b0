using CushionService.BrowserTests.Hosting;
using Microsoft.Playwright;
using static Microsoft.Playwright.Assertions;

namespace CushionService.BrowserTests;

/// <summary>The pages around the element.</summary>
[Collection(BrowserGroup.Name)]
public sealed class PageTests(BrowserOfThisMachine browser)
{
    [SkippableFact]
    public async Task A_page_without_scripts_works_out_the_fabric()
    {
        await using ShownPage shown = await browser.OpenEmptyAsync();
        await shown.Page.RouteAsync("**/*.js", route => route.AbortAsync());
        await shown.Page.GotoAsync("/v1/estimate?language=en");
        foreach ((string name, string text) in new[] { ("Width", "44"), ("Depth", "18"), ("Height", "3"), ("Width of the fabric", "54") })
        {
            await shown.Page.GetByLabel(name, new() { Exact = true }).FillAsync(text);
        }

        await shown.Page.GetByRole(AriaRole.Button, new() { Name = "Work it out" }).ClickAsync();
        await Expect(shown.Page.GetByRole(AriaRole.Status)).ToHaveTextAsync("You need 1 1/2 yd");
        await shown.Page.GetByLabel("Width", new() { Exact = true }).FillAsync("wide");
        await shown.Page.GetByRole(AriaRole.Button, new() { Name = "Work it out" }).ClickAsync();
        await Expect(shown.Page.GetByRole(AriaRole.Alert)).ToContainTextAsync("Width must be a length");
        await Expect(shown.Page.GetByLabel("Width", new() { Exact = true })).ToHaveAttributeAsync("aria-invalid", "true");
    }

    [SkippableFact]
    public async Task A_longer_search_shows_each_step_and_can_be_stopped()
    {
        await using ShownPage shown = await browser.OpenAsync("/orders?language=en");
        await shown.Page.Locator("#order-answer svg").First.WaitForAsync();
        await shown.Page.ClickAsync("#better");
        await Expect(shown.Page.Locator("#order-steps li").First).ToContainTextAsync("quick:");
        if (await shown.Page.Locator("#stop").IsVisibleAsync())
        {
            await shown.Page.Locator("#stop").EvaluateAsync("each => each.click()");
        }

        await Expect(shown.Page.Locator("#better")).ToBeEnabledAsync();
        await Expect(shown.Page.Locator("#stop")).ToBeHiddenAsync();
    }
}
