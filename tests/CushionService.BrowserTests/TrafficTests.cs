using CushionService.BrowserTests.Hosting;
using Microsoft.Playwright;
using Xunit.Abstractions;
using static Microsoft.Playwright.Assertions;

namespace CushionService.BrowserTests;

[Collection(BrowserGroup.Name)]
public sealed class TrafficTests(BrowserOfThisMachine browser, ITestOutputHelper output)
{
    private const string Width = "/cushions/*/outline/width";

    [SkippableFact]
    public async Task A_pause_asks_once_and_keys_in_quick_succession_do_not_ask()
    {
        await using ShownPage shown = await browser.OpenAsync();
        await shown.StateAsync("answered");
        List<double> waits = [];
        for (int size = 20; size < 41; size++)
        {
            int asked = shown.Asked("/v1/quotes");
            await shown.Page.EvaluateAsync(FromTheLastKey);
            await shown.EstimateAsync(() => shown.Page.EvaluateAsync(TypeQuickly, new { name = Width, text = $"{size} 1/2" }));
            waits.Add(await shown.Page.EvaluateAsync<double>("() => window.waited"));
            await shown.Page.WaitForTimeoutAsync(100);
            Assert.Equal(asked + 1, shown.Asked("/v1/quotes"));
        }

        waits.Sort();
        output.WriteLine(
            $"From the last key to the answer shown, {waits.Count} pauses: median {waits[waits.Count / 2]:F0} ms, "
                + $"longest {waits[^1]:F0} ms."
        );
    }

    [SkippableFact]
    public async Task What_was_answered_before_is_not_asked_again()
    {
        await using ShownPage shown = await browser.OpenAsync();
        await shown.StateAsync("answered");
        await shown.EstimateAsync(() => shown.Field(Width).FillAsync("20"));
        int asked = shown.Asked("/v1/quotes");
        await shown.EstimateAsync(() => shown.Field(Width).FillAsync("44"));

        Assert.Equal(asked, shown.Asked("/v1/quotes"));
    }

    [SkippableFact]
    public async Task An_outage_is_said_and_what_was_entered_is_kept()
    {
        await using ShownPage shown = await browser.OpenAsync();
        shown.MayFail = true;
        await shown.StateAsync("answered");
        await shown.Page.RouteAsync("**/v1/quotes*", route => route.AbortAsync());
        await shown.Field(Width).FillAsync("21");
        await shown.StateAsync("outage");
        await Expect(shown.Field(Width)).ToHaveValueAsync("21");
        await shown.Page.UnrouteAsync("**/v1/quotes*");
        await shown.EstimateAsync(() => shown.Page.GetByRole(AriaRole.Button, new() { Name = "Try again" }).ClickAsync());

        await shown.StateAsync("answered");
    }

    [SkippableFact]
    public async Task A_service_that_is_busy_is_asked_again_when_it_says()
    {
        await using ShownPage shown = await browser.OpenAsync();
        shown.MayFail = true;
        await shown.StateAsync("answered");
        await shown.Page.RouteAsync(
            "**/v1/quotes*",
            route =>
                route.FulfillAsync(
                    new()
                    {
                        Status = 503,
                        Headers = new Dictionary<string, string> { ["Retry-After"] = "1" },
                    }
                ),
            new() { Times = 1 }
        );
        await shown.EstimateAsync(() => shown.Field(Width).FillAsync("22"));

        await shown.StateAsync("answered");
    }

    // Every input event moves the mark; the element tells of its answer when it has shown it.
    private const string FromTheLastKey = """
        () => {
          let key = 0;
          document.querySelector("cushion-estimate").shadowRoot.addEventListener("input", () => { key = performance.now(); });
          document.addEventListener("estimate", () => { window.waited = performance.now() - key; }, { once: true });
        }
        """;

    // Twenty milliseconds between keys: faster than anybody types, slower than a paste.
    private const string TypeQuickly = """
        async ({ name, text }) => {
          const field = document.querySelector("cushion-estimate").shadowRoot.querySelector(`[name="${name}"]`);
          for (let length = 1; length <= text.length; length += 1) {
            field.value = text.slice(0, length);
            field.dispatchEvent(new Event("input", { bubbles: true }));
            await new Promise(next => setTimeout(next, 20));
          }
        }
        """;
}
