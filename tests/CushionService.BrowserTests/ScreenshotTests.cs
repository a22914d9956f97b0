using CushionService.BrowserTests.Hosting;

namespace CushionService.BrowserTests;

[Collection(BrowserGroup.Name)]
public sealed class ScreenshotTests(BrowserOfThisMachine browser)
{
    [SkippableTheory]
    [InlineData(320, "reading-nook")]
    [InlineData(768, "reading-nook")]
    [InlineData(1280, "reading-nook")]
    [InlineData(320, "pillow")]
    [InlineData(768, "pillow")]
    [InlineData(1280, "pillow")]
    [InlineData(320, "terrace")]
    [InlineData(768, "terrace")]
    [InlineData(1280, "terrace")]
    public async Task No_page_is_wider_than_its_window(int width, string order)
    {
        await using ShownPage shown = await browser.OpenAsync("/orders", width);
        await shown.Page.SelectOptionAsync("#order", order);
        await shown.Page.Locator("#order-answer svg").First.WaitForAsync();

        Assert.Equal(width, await shown.Page.EvaluateAsync<int>("document.documentElement.scrollWidth"));
        if (Environment.GetEnvironmentVariable("CUSHION_SCREENS") is { Length: > 0 } folder)
        {
            await shown.Page.ScreenshotAsync(new() { Path = Path.Combine(folder, $"{order}-{width}.png"), FullPage = true });
        }
    }
}
