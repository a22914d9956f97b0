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
    [SkippableFact]
    public async Task A_shop_s_page_shows_it_in_its_own_words_and_colours()
    {
        await using ShownPage shown = await browser.OpenEmptyAsync();
        await EmbedAsync(shown, widget => widget.GetProperty("integrity").GetString()!);
        await shown.StateAsync("answered");

        await Expect(shown.Page.GetByLabel("Breite", new() { Exact = true })).ToHaveValueAsync("40");
        ILocator basket = shown.Page.GetByRole(AriaRole.Button, new() { Name = "In den Warenkorb" });
        await Expect(basket).ToHaveCSSAsync("background-color", "rgb(90, 45, 109)");
        await Expect(shown.Status).ToHaveTextAsync("0,6 m of linen");
    }

    [SkippableFact]
    public async Task A_module_that_is_not_the_one_that_was_promised_is_not_run()
    {
        await using ShownPage shown = await browser.OpenEmptyAsync();
        shown.MayFail = true;
        await EmbedAsync(shown, _ => "sha384-" + Convert.ToBase64String(new byte[48]));

        Assert.False(await shown.Page.EvaluateAsync<bool>("customElements.get('cushion-estimate') !== undefined"));
    }

    [SkippableFact]
    public async Task It_is_smaller_than_thirty_kilobytes_and_kept_for_good()
    {
        await using ShownPage shown = await browser.OpenEmptyAsync();
        JsonElement widget = await WidgetAsync();
        IAPIResponse module = await shown.Page.APIRequest.GetAsync(widget.GetProperty("path").GetString()!);

        Assert.InRange((await module.BodyAsync()).Length, 10_000, 30_000);
        Assert.Contains("immutable", module.Headers["cache-control"], StringComparison.Ordinal);
        Assert.Equal(404, (await shown.Page.APIRequest.GetAsync("/widget/0.0.0-00000000/cushion-estimate.js")).Status);
    }

    private async Task<JsonElement> WidgetAsync()
    {
        using HttpClient http = new() { BaseAddress = browser.Service };
        return await http.GetFromJsonAsync<JsonElement>("/widget");
    }

    private async Task EmbedAsync(ShownPage shown, Func<JsonElement, string> integrity)
    {
        JsonElement widget = await WidgetAsync();
        string service = browser.Service.GetLeftPart(UriPartial.Authority);
        await shown.Page.RouteAsync(
            $"{BrowserOfThisMachine.Shop}/shop.css",
            route => route.FulfillAsync(new() { ContentType = "text/css", Body = "cushion-estimate { --cushion-accent: #5a2d6d; }" })
        );
        await shown.Page.RouteAsync(
            $"{BrowserOfThisMachine.Shop}/",
            route =>
                route.FulfillAsync(
                    new()
                    {
                        ContentType = "text/html; charset=utf-8",
                        Headers = new Dictionary<string, string>
                        {
                            ["Content-Security-Policy"] =
                                $"default-src 'none'; style-src 'self'; script-src {service}; connect-src {service}",
                        },
                        Body = $$"""
                        <!DOCTYPE html><html lang="de"><title>Shop</title><link rel="stylesheet" href="/shop.css">
                        <script type="module" src="{{service}}{{widget.GetProperty("path").GetString()}}" integrity="{{integrity(
                            widget
                        )}}" crossorigin="anonymous"></script>
                        <cushion-estimate><script type="application/json">
                        { "strings": { "basket": "In den Warenkorb", "/cushions/*/outline/width": "Breite" },
                          "order": { "units": "cm", "cushions": [{ "construction": "knife-edge", "outline": { "kind": "rectangle",
                            "width": 40, "depth": 40 } }],
                            "fabrics": [{ "id": "linen", "width": 140, "sold": { "unit": "m", "step": 0.1, "minimum": 0.6 } }] } }
                        </script></cushion-estimate></html>
                        """,
                    }
                )
        );
        await shown.Page.GotoAsync($"{BrowserOfThisMachine.Shop}/");
    }
}
