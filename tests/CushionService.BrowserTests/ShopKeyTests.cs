using System.Text.Json;
using CushionService.BrowserTests.Hosting;
using CushionService.Desk;
using CushionService.LoadTests;
using static Microsoft.Playwright.Assertions;

namespace CushionService.BrowserTests;

/// <summary>Pages of a shop whose service wants keys.</summary>
[Collection(BrowserGroup.Name)]
public sealed class ShopKeyTests(BrowserOfThisMachine browser) : IAsyncLifetime
{
    private const string Key = "pk_reading-nook-0147";

    // The page names its fabric by the book's item; its own price is a lie.
    private static readonly string Bench = ShopPages
        .Bench.Replace("\"label\": \"Plain linen\"", "\"label\": \"Canvas\", \"item\": \"canvas-54\"", StringComparison.Ordinal)
        .Replace("18.90", "0.01", StringComparison.Ordinal);

    private LoopbackHost? _service;

    public async Task InitializeAsync() =>
        _service = await LoopbackHost.StartAsync(
            ("Access__Publishable__0__Name", "the nook"),
            ("Access__Publishable__0__Key", Key),
            ("Access__Publishable__0__Origins__0", BrowserOfThisMachine.Shop),
            ("Access__Publishable__0__PriceBook", "nook"),
            ("Access__Publishable__0__Rate", "1000"),
            ("Access__Publishable__0__Burst", "1000"),
            ("PriceBooks__Folder", Path.Combine(Path.GetDirectoryName(typeof(OrderDesk).Assembly.Location)!, "Demo", "PriceBooks"))
        );

    [SkippableFact]
    public async Task A_publishable_key_brings_the_shop_s_own_prices_whatever_the_page_says()
    {
        await using ShownPage shown = await ShowAsync($"publishable-key=\"{Key}\"");
        await shown.StateAsync("answered");
        JsonElement heard = await shown.EstimateAsync(() => shown.Field("/cushions/*/outline/width").FillAsync("40"));
        JsonElement line = heard.GetProperty("lines")[0];

        Assert.Equal(("canvas-54", "14.20"), (line.GetProperty("sku").GetString(), line.GetProperty("unitPrice").GetString()));
        Assert.False(heard.GetProperty("answer").GetProperty("cost").TryGetProperty("labour", out _));
        await shown.UnfoldAsync("Compare fabrics");
        await Expect(shown.Page.Locator("cushion-estimate .offers button")).ToHaveCountAsync(2);
    }

    [SkippableFact]
    public async Task Without_a_key_the_lengths_are_shown_without_prices()
    {
        await using ShownPage shown = await ShowAsync("");
        await shown.StateAsync("answered");

        await Expect(shown.Told.Locator(".much")).ToHaveTextAsync("1 1/2 yd");
        await Expect(shown.Told.Locator(".total")).ToHaveCountAsync(0);
        Assert.Contains(shown.Console, text => text.Contains("publishable-key", StringComparison.Ordinal));
    }

    [SkippableFact]
    public async Task A_key_that_is_not_known_is_said()
    {
        await using ShownPage shown = await ShowAsync("publishable-key=\"pk_of-nobody-at-all\"");
        shown.MayFail = true;
        await shown.StateAsync("fault");
        await Expect(shown.Problem).ToContainTextAsync("Please ask the shop");
        Assert.Contains(shown.Console, text => text.Contains("answered 401", StringComparison.Ordinal));
    }

    public Task DisposeAsync()
    {
        _service?.Dispose();
        return Task.CompletedTask;
    }

    private async Task<ShownPage> ShowAsync(string attributes)
    {
        ShownPage shown = await browser.OpenEmptyAsync();
        await browser.ShowShopAsync(shown, ShopPages.Element(attributes, Bench), service: _service!.Rest.GetLeftPart(UriPartial.Authority));
        return shown;
    }
}
