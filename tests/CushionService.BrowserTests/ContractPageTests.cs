using CushionService.BrowserTests.Hosting;
using static Microsoft.Playwright.Assertions;

namespace CushionService.BrowserTests;

/// <summary>The page to try the calls is of our own dress and shows the contract of this service.</summary>
[Collection(BrowserGroup.Name)]
public sealed class ContractPageTests(BrowserOfThisMachine browser)
{
    [SkippableFact]
    public async Task The_page_of_the_calls_lists_them_and_shows_no_maker()
    {
        await using ShownPage shown = await browser.OpenAsync("/docs");

        await Expect(shown.Page.GetByText("/v1/yardage")).ToBeVisibleAsync(new() { Timeout = 30_000 });
        await Expect(shown.Page.Locator("header, .errors-wrapper")).ToHaveCountAsync(0);
        string words = await shown.Page.Locator("body").InnerTextAsync();
        Assert.DoesNotContain("swagger", words, StringComparison.OrdinalIgnoreCase);
    }
}
