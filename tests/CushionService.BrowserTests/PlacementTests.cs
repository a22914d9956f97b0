using CushionService.BrowserTests.Hosting;
using Microsoft.Playwright;
using static Microsoft.Playwright.Assertions;

namespace CushionService.BrowserTests;

/// <summary>Wherever a page puts the element, it is whole.</summary>
[Collection(BrowserGroup.Name)]
public sealed class PlacementTests(BrowserOfThisMachine browser)
{
    [SkippableTheory]
    [InlineData("dialog", "<dialog open>ELEMENT</dialog>", "")]
    [InlineData("flex row", "<main><p>Beside it</p>ELEMENT</main>", "main { display: flex; }")]
    [InlineData("grid", "<main><p>Beside it</p>ELEMENT</main>", "main { display: grid; grid-template-columns: auto auto; }")]
    [InlineData("float", "<main>ELEMENT</main>", "cushion-estimate { float: left; }")]
    [InlineData("inline block", "<main>ELEMENT</main>", "cushion-estimate { display: inline-block; }")]
    [InlineData(
        "hostile",
        "<main>ELEMENT</main>",
        "* { all: unset; font-size: 4px !important; display: inline !important; line-height: 0 !important; }"
            + " main { display: block !important; }"
    )]
    public async Task It_is_never_shrunk_to_nothing(string place, string body, string style)
    {
        foreach (int width in new[] { 1280, 390 })
        {
            await using ShownPage shown = await browser.OpenShopAsync(
                body.Replace("ELEMENT", ShopPages.Element(), StringComparison.Ordinal),
                style: style,
                width: width
            );
            await shown.StateAsync("answered");
            double wide = await shown.Page.EvaluateAsync<double>(
                "() => document.querySelector('cushion-estimate').shadowRoot.querySelector('.estimate').getBoundingClientRect().width"
            );
            double text = await shown.Told.Locator(".much").EvaluateAsync<double>("each => parseFloat(getComputedStyle(each).fontSize)");

            Assert.True(wide >= 256, $"{place} at {width}: {wide} px wide.");
            Assert.True(text >= 40, $"{place} at {width}: {text} px.");
            Assert.True(
                await shown.Page.EvaluateAsync<int>("document.documentElement.scrollWidth") <= width,
                $"{place} at {width}: wider than the window."
            );
        }
    }

    [SkippableFact]
    public async Task It_keeps_what_was_typed_when_the_page_moves_it_or_sets_its_properties()
    {
        await using ShownPage shown = await browser.OpenShopAsync($"<main></main>{ShopPages.Element()}");
        await shown.EstimateAsync(() => shown.Field("/cushions/*/outline/width").FillAsync("30 1/2"));
        await shown.Page.EvaluateAsync("document.querySelector('main').append(document.querySelector('cushion-estimate'))");
        await Expect(shown.Field("/cushions/*/outline/width")).ToHaveValueAsync("30 1/2");
        await shown.EstimateAsync(() =>
            shown.Page.EvaluateAsync(
                "const it = document.querySelector('cushion-estimate'); const order = structuredClone(it.order); "
                    + "order.fabrics[0].label = 'Blue linen'; it.order = order"
            )
        );
        await Expect(shown.Field("/cushions/*/outline/width")).ToHaveValueAsync("30 1/2");
        await Expect(shown.Told).ToContainTextAsync("Blue linen");
        await shown.EstimateAsync(() => shown.Page.EvaluateAsync("document.querySelector('cushion-estimate').language = 'fr'"));
        await Expect(shown.Field("/cushions/*/outline/width")).ToHaveValueAsync("30 1/2");
        await Expect(shown.Told).ToContainTextAsync("Il vous faut");
    }

    [SkippableFact]
    public async Task Several_on_one_page_have_answers_of_their_own_and_a_link_restores_each()
    {
        string body = ShopPages.Element("id=\"seat\"") + ShopPages.Element("id=\"back\"");
        await using ShownPage shown = await browser.OpenShopAsync(body);
        await Expect(shown.Page.Locator("cushion-estimate[data-state=answered]")).ToHaveCountAsync(2);
        await shown.Page.Locator("#back [name=\"/cushions/*/outline/width\"]").FillAsync("20 1/4");
        await Expect(shown.Page.Locator("#seat .much")).ToHaveTextAsync("1 1/2 yd");
        string state = await shown.Page.EvaluateAsync<string>(
            "() => new Promise(heard => document.addEventListener('estimate', event => heard(event.detail.state), { once: true }))"
        );
        Assert.InRange(state.Length, 20, 500);
        await using ShownPage again = await browser.OpenEmptyAsync();
        await browser.ShowShopAsync(again, body);
        await again.Page.GotoAsync(state);
        await again.Page.ReloadAsync();

        await Expect(again.Page.Locator("#back [name=\"/cushions/*/outline/width\"]")).ToHaveValueAsync("20 1/4");
        await Expect(again.Page.Locator("#seat [name=\"/cushions/*/outline/width\"]")).ToHaveValueAsync("44");
    }

    [SkippableFact]
    public async Task It_works_in_a_frame_of_another_page_and_is_as_wide_as_the_frame()
    {
        await using ShownPage shown = await browser.OpenShopAsync(ShopPages.Element());
        await shown.Page.RouteAsync(
            "http://journal.example/",
            route =>
                route.FulfillAsync(
                    new()
                    {
                        ContentType = "text/html; charset=utf-8",
                        Body =
                            "<!DOCTYPE html><title>Journal</title>"
                            + $"<iframe title=Shop width=340 height=900 src=\"{BrowserOfThisMachine.Shop}/\">",
                    }
                )
        );
        await shown.Page.GotoAsync("http://journal.example/");
        IFrameLocator frame = shown.Page.FrameLocator("iframe");
        await Expect(frame.Locator("cushion-estimate")).ToHaveAttributeAsync("data-state", "answered");
        await frame.Locator("[name=\"/cushions/*/outline/width\"]").FillAsync("20 1/4");

        await Expect(frame.Locator("cushion-estimate .much")).Not.ToHaveTextAsync("1 1/2 yd");
        Assert.True(await frame.Locator("html").EvaluateAsync<int>("each => each.scrollWidth") <= 340);
    }

    [SkippableTheory]
    [InlineData(390)]
    [InlineData(1280)]
    public async Task Nothing_moves_while_it_loads_and_the_button_is_in_sight(int width)
    {
        await using ShownPage shown = await browser.OpenEmptyAsync(width);
        await shown.Page.AddInitScriptAsync(
            """
            window.shift = 0;
            window.moved = [];
            const named = node => node instanceof Element ? `${node.tagName}.${node.className}` : node?.nodeName;
            const box = at => `${at.x},${at.y} ${at.width}x${at.height}`;
            new PerformanceObserver(list => list.getEntries().filter(each => !each.hadRecentInput).forEach(each => {
              window.shift += each.value;
              window.moved.push(`${each.value.toFixed(3)}: ` + each.sources
                .map(({ node, previousRect, currentRect }) => `${named(node)} ${box(previousRect)} -> ${box(currentRect)}`).join('; '));
            })).observe({ type: 'layout-shift', buffered: true });
            """
        );
        // As the guide says.
        await browser.ShowShopAsync(
            shown,
            ShopPages.Element() + "<p>What follows</p>",
            style: "cushion-estimate:not(:defined) { display: block; min-height: 40rem; }"
        );
        await shown.StateAsync("answered");
        await shown.Page.WaitForTimeoutAsync(300);
        (double shift, double bottom) = (
            await shown.Page.EvaluateAsync<double>("window.shift"),
            await shown.Page.Locator("cushion-estimate [part=basket]").EvaluateAsync<double>("each => each.getBoundingClientRect().bottom")
        );

        Assert.True(shift <= 0.05, string.Join('\n', await shown.Page.EvaluateAsync<string[]>("window.moved")));
        Assert.InRange(bottom, 0, 900);
    }
}
