using System.Text.Json;
using CushionService.BrowserTests.Hosting;
using Microsoft.Playwright;
using static Microsoft.Playwright.Assertions;

namespace CushionService.BrowserTests;

[Collection(BrowserGroup.Name)]
public sealed class BasketTests(BrowserOfThisMachine browser)
{
    [SkippableFact]
    public async Task Adding_to_the_basket_tells_the_page_the_order_and_all_its_materials()
    {
        await using ShownPage shown = await browser.OpenAsync();
        await shown.StateAsync("answered");
        Task<JsonElement> told = shown.HearAsync("add-to-basket");
        await shown.Page.GetByRole(AriaRole.Button, new() { Name = "Add to basket" }).ClickAsync();
        JsonElement detail = await told;

        Assert.Equal("linen", detail.GetProperty("order").GetProperty("fabrics")[0].GetProperty("id").GetString());
        string[] items =
        [
            .. detail
                .GetProperty("answer")
                .GetProperty("materials")
                .EnumerateArray()
                .Select(material => material.GetProperty("item").GetString()!),
        ];
        Assert.Equal(["linen", "foam", "zipper", "slider", "thread"], items);
        await Expect(shown.Status).ToHaveTextAsync("Added to the basket.");
        await Expect(shown.Page.Locator("#basket li")).ToContainTextAsync("linen 1.5 yd");
    }

    [SkippableFact]
    public async Task The_keyboard_alone_is_enough()
    {
        await using ShownPage shown = await browser.OpenAsync();
        await shown.StateAsync("answered");
        await shown.Field("/units").FocusAsync();
        List<string> visited = [];
        while (visited.Count < 40 && await FocusedAsync() is var name && name != "basket")
        {
            visited.Add(name);
            if (name.EndsWith("/outline/width", StringComparison.Ordinal))
            {
                await shown.EstimateAsync(async () =>
                {
                    await shown.Page.Keyboard.PressAsync("Control+a");
                    await shown.Page.Keyboard.TypeAsync("20");
                });
            }

            await shown.Page.Keyboard.PressAsync("Tab");
        }

        await shown.Page.Keyboard.PressAsync("Enter");

        await Expect(shown.Page.Locator("#basket li")).ToHaveCountAsync(1);
        string[] fields = await shown
            .Page.Locator("cushion-estimate")
            .EvaluateAsync<string[]>("all => [...all.shadowRoot.querySelectorAll('[name]')].map(each => each.name)");
        Assert.Equal(fields, visited.Take(fields.Length));

        Task<string> FocusedAsync() =>
            shown.Page.EvaluateAsync<string>(
                "() => { const at = document.activeElement.shadowRoot?.activeElement; return at?.name || at?.getAttribute('part') || "
                    + "at?.tagName || ''; }"
            );
    }
}
