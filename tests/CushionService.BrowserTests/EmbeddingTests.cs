using System.Net.Http.Json;
using System.Text.Json;
using CushionService.BrowserTests.Hosting;
using Microsoft.Playwright;
using static Microsoft.Playwright.Assertions;

namespace CushionService.BrowserTests;

/// <summary>The element in a page of another origin, under a policy that allows the service and nothing inline.</summary>
[Collection(BrowserGroup.Name)]
public sealed class EmbeddingTests(BrowserOfThisMachine browser)
{
    private const int SixteenKilobytes = 16 * 1024;

    [SkippableFact]
    public async Task A_shop_s_page_shows_it_in_its_own_words_and_colours()
    {
        const string Metric = """
            { "strings": { "basket": "Kaufen" }, "order": { "units": "cm", "cushions": [{ "construction": "knife-edge",
              "outline": { "kind": "rectangle", "width": 40, "depth": 40 } }],
              "fabrics": [{ "id": "linen", "width": 140, "sold": { "unit": "m", "step": 0.1, "minimum": 0.6 } }] } }
            """;
        await using ShownPage shown = await browser.OpenShopAsync(ShopPages.Element(json: Metric), language: "de");
        await shown.StateAsync("answered");

        await Expect(shown.Page.GetByLabel("Breite", new() { Exact = true })).ToHaveValueAsync("40");
        ILocator basket = shown.Page.GetByRole(AriaRole.Button, new() { Name = "Kaufen" });
        await Expect(basket).ToHaveCSSAsync("background-color", "rgb(90, 45, 109)");
        await Expect(shown.Told.Locator(".much")).ToHaveTextAsync("0,6 m");
        await Expect(shown.Told.Locator(".also")).ToHaveTextAsync("0,66 yd");
    }

    [SkippableFact]
    public async Task The_finished_cushion_is_shown_where_a_policy_forbids_what_is_inline()
    {
        await using ShownPage shown = await browser.OpenShopAsync(
            ShopPages.Element(),
            style: "cushion-estimate { --cushion-fabric-1: rgb(10, 120, 60); --cushion-line: rgb(250, 250, 250); }"
        );

        await SeeFinishedAsync(shown);

        await Expect(Drawn(shown, "[fill^='#'][style*='--cushion-fabric-1']")).ToHaveCSSAsync("fill", "rgb(10, 120, 60)");
        // The form's lines may be light; those of the picture are on white.
        await Expect(Drawn(shown, "[stroke][style*='--cushion-line']")).ToHaveCSSAsync("stroke", "rgb(43, 43, 43)");
    }

    [SkippableFact]
    public async Task The_finished_cushion_is_shown_on_the_service_s_own_page()
    {
        await using ShownPage shown = await browser.OpenAsync();

        await SeeFinishedAsync(shown);
    }

    // What the browser says on the console is a fault of the page when it is left.
    private static async Task SeeFinishedAsync(ShownPage shown)
    {
        await shown.StateAsync("answered");
        await shown.UnfoldAsync("See it finished");
        await Expect(Drawn(shown, "[style]")).ToBeVisibleAsync();
        Assert.DoesNotContain(shown.Console, said => said.Contains("Content Security Policy", StringComparison.Ordinal));
    }

    private static ILocator Drawn(ShownPage shown, string which) => shown.Page.Locator($"cushion-estimate .look svg {which}").First;

    [SkippableFact]
    public async Task A_module_that_is_not_the_one_that_was_promised_is_not_run()
    {
        await using ShownPage shown = await browser.OpenEmptyAsync();
        shown.MayFail = true;
        await browser.ShowShopAsync(shown, ShopPages.Element(), integrity: "sha384-" + Convert.ToBase64String(new byte[48]));

        Assert.False(await shown.Page.EvaluateAsync<bool>("customElements.get('cushion-estimate') !== undefined"));
    }

    [SkippableFact]
    public async Task A_build_keeps_its_integrity_and_the_stable_address_is_soon_asked_for_again()
    {
        await using ShownPage shown = await browser.OpenEmptyAsync();
        JsonElement widget = await WidgetAsync();
        await browser.ShowShopAsync(
            shown,
            ShopPages.Element(),
            module: widget.GetProperty("path").GetString()!,
            integrity: widget.GetProperty("integrity").GetString()!
        );
        await shown.StateAsync("answered");
        IAPIResponse build = await shown.Page.APIRequest.GetAsync($"{browser.Origin}{widget.GetProperty("path").GetString()}");
        IAPIResponse stable = await shown.Page.APIRequest.GetAsync($"{browser.Origin}/widget/v1/cushion-estimate.js");
        IAPIResponse former = await shown.Page.APIRequest.GetAsync($"{browser.Origin}/widget/0.0.0-00000000/cushion-estimate.js");

        Assert.Contains("immutable", build.Headers["cache-control"], StringComparison.Ordinal);
        Assert.Contains("max-age=300", stable.Headers["cache-control"], StringComparison.Ordinal);
        Assert.Equal(await build.TextAsync(), await stable.TextAsync());
        Assert.Equal(await stable.TextAsync(), await former.TextAsync());
    }

    [SkippableFact]
    public async Task The_first_answer_takes_few_bytes()
    {
        using HttpClient http = new() { BaseAddress = browser.Service };
        http.DefaultRequestHeaders.Add("Accept-Encoding", "br");
        long module = (await http.GetByteArrayAsync("/widget/v1/cushion-estimate.js")).LongLength;
        await using ShownPage shown = await browser.OpenEmptyAsync();
        IResponse answered = await shown.Page.RunAndWaitForResponseAsync(
            () => browser.ShowShopAsync(shown, ShopPages.Element()),
            response => response.Url.Contains("/v1/quotes", StringComparison.Ordinal) && response.Status == 200
        );
        await answered.FinishedAsync();
        long answer = (await answered.Request.SizesAsync()).ResponseBodySize;

        Assert.InRange(module, 8_000, SixteenKilobytes);
        Assert.InRange(module + answer, module + 200, 25 * 1024);
        Assert.Equal(0, shown.Asked("/v1/catalogue"));
    }

    private async Task<JsonElement> WidgetAsync()
    {
        using HttpClient http = new() { BaseAddress = browser.Service };
        return await http.GetFromJsonAsync<JsonElement>("/widget");
    }
}
