using CushionService.BrowserTests.Hosting;
using static Microsoft.Playwright.Assertions;

namespace CushionService.BrowserTests;

/// <summary>The element in the pages of four frameworks, from their own modules: the order is a property, set again at every turn with an
/// equal object, and events are heard. The fixtures need the packages of <c>tests/CushionService.BrowserTests/Frameworks</c>.</summary>
[Collection(BrowserGroup.Name)]
public sealed class FrameworkTests(BrowserOfThisMachine browser)
{
    [SkippableTheory]
    [InlineData("angular", true)]
    [InlineData("react")]
    [InlineData("svelte")]
    [InlineData("vue")]
    public async Task A_framework_sets_the_order_and_hears_the_estimate(string framework, bool compiles = false)
    {
        string path = Path.Combine(AppContext.BaseDirectory, "Frameworks", "dist", framework + ".js");
        Skip.IfNot(File.Exists(path), $"The fixture of {framework} is not built: run npm ci && npm run build in Frameworks.");
        await using ShownPage shown = await browser.OpenShopAsync(
            "<main id=\"root\"></main>",
            scripts: $"const bench = {ShopPages.Bench}.order;\n{await File.ReadAllTextAsync(path)}",
            // Angular's page compiles its component as it opens; a built one does not.
            mayCompile: compiles
        );
        await shown.StateAsync("answered");
        await Expect(shown.Page.Locator("#heard")).ToHaveTextAsync("1.5 yd");
        await shown.Field("/cushions/*/outline/width").FillAsync("20 1/2");
        await Expect(shown.Page.Locator("#heard")).Not.ToHaveTextAsync("1.5 yd");
        await shown.Page.ClickAsync("#turn");
        await shown.Page.WaitForTimeoutAsync(200);

        await Expect(shown.Field("/cushions/*/outline/width")).ToHaveValueAsync("20 1/2");
        await Expect(shown.Page.Locator("#turns")).ToHaveTextAsync("1");
    }
}
