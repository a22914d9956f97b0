using CushionService.BrowserTests.Hosting;
using Microsoft.Playwright;
using static Microsoft.Playwright.Assertions;

namespace CushionService.BrowserTests;

/// <summary>Whatever fails, the shopper reads a sentence, the shop finds the cause on the console, and there is a way back.</summary>
[Collection(BrowserGroup.Name)]
public sealed class FaultTests(BrowserOfThisMachine browser)
{
    private const string Width = "/cushions/*/outline/width";

    [SkippableTheory]
    [InlineData("", "No order")]
    [InlineData("{ \"order\": ", "no JSON")]
    [InlineData("{ \"order\": { \"units\": \"in\" } }", "needs \"fabrics\"")]
    public async Task An_order_that_is_missing_or_broken_is_said(string json, string cause)
    {
        await using ShownPage shown = await browser.OpenShopAsync(
            $"<cushion-estimate><p>Ask us on the phone.</p><script type=\"application/json\">{json}</script></cushion-estimate>".Replace(
                "<script type=\"application/json\"></script>",
                "",
                StringComparison.Ordinal
            )
        );
        shown.MayFail = true;
        await shown.StateAsync("fault");

        await Expect(shown.Page.Locator("cushion-estimate [role=status]")).ToContainTextAsync("not set up on this page");
        await Expect(shown.Page.GetByText("Ask us on the phone.")).ToBeVisibleAsync();
        Assert.Contains(shown.Console, text => text.Contains(cause, StringComparison.Ordinal));
        // The way back of a shop: the order, set later.
        await shown.Page.EvaluateAsync($"document.querySelector('cushion-estimate').order = ({ShopPages.Bench}).order");
        await shown.StateAsync("answered");
    }

    [SkippableTheory]
    [InlineData(401, "fault", "Please ask the shop")]
    [InlineData(403, "fault", "Please ask the shop")]
    [InlineData(404, "fault", "Please ask the shop")]
    [InlineData(429, "outage", "Too many are asking")]
    [InlineData(503, "outage", "Too many are asking")]
    [InlineData(500, "outage", "cannot be reached")]
    public async Task A_status_has_a_sentence_a_cause_and_a_way_back(int status, string state, string said)
    {
        await using ShownPage shown = await browser.OpenAsync();
        shown.MayFail = true;
        await shown.StateAsync("answered");
        await shown.Page.RouteAsync(
            url => url.Contains("/v1/quotes", StringComparison.Ordinal) || url.Contains("/v1/yardage", StringComparison.Ordinal),
            route => route.FulfillAsync(new() { Status = status, Body = "{\"title\":\"As asked\"}" })
        );
        await shown.Field(Width).FillAsync("21");
        await shown.StateAsync(state);

        await Expect(shown.Problem).ToContainTextAsync(said);
        await Expect(shown.Field(Width)).ToHaveValueAsync("21");
        Assert.Contains(shown.Console, text => text.Contains($"answered {status}", StringComparison.Ordinal));
        await shown.Page.UnrouteAllAsync();
        await shown.EstimateAsync(() => shown.Page.GetByRole(AriaRole.Button, new() { Name = "Try again" }).ClickAsync());
        await shown.StateAsync("answered");
    }

    [SkippableFact]
    public async Task A_service_that_hangs_is_given_ten_seconds()
    {
        await using ShownPage shown = await browser.OpenAsync();
        shown.MayFail = true;
        await shown.StateAsync("answered");
        await shown.Page.RouteAsync(url => url.Contains("/v1/quotes", StringComparison.Ordinal), _ => Task.CompletedTask);
        await shown.Field(Width).FillAsync("21");
        await Expect(shown.Problem).ToContainTextAsync("takes too long", new() { Timeout = 15_000 });
    }

    [SkippableFact]
    public async Task Offline_is_said()
    {
        await using ShownPage shown = await browser.OpenAsync();
        shown.MayFail = true;
        await shown.StateAsync("answered");
        await shown.Page.Context.SetOfflineAsync(true);
        await shown.Field(Width).FillAsync("21");
        await Expect(shown.Problem).ToContainTextAsync("offline");
    }

    [SkippableFact]
    public async Task An_origin_that_may_not_call_is_told_from_a_service_that_is_down()
    {
        await using ShownPage shown = await browser.OpenEmptyAsync();
        shown.MayFail = true;
        await browser.ShowShopAsync(shown, ShopPages.Element(), shop: "http://stranger.example");
        await shown.StateAsync("fault");
        Assert.Contains(shown.Console, text => text.Contains("Access:Origins", StringComparison.Ordinal));

        await using ShownPage down = await browser.OpenEmptyAsync();
        down.MayFail = true;
        await browser.ShowShopAsync(down, ShopPages.Element("service=\"http://127.0.0.1:9\""));
        await down.StateAsync("outage");
        Assert.Contains(down.Console, text => text.Contains("cannot be reached", StringComparison.Ordinal));
    }
}
