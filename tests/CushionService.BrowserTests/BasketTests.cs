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
        JsonElement line = detail.GetProperty("lines")[0];
        Assert.Equal(
            ("linen", "Plain linen", 1.5, "yd", "18.90", "28.35"),
            (
                line.GetProperty("sku").GetString(),
                line.GetProperty("label").GetString(),
                line.GetProperty("quantity").GetDouble(),
                line.GetProperty("unit").GetString(),
                line.GetProperty("unitPrice").GetString(),
                line.GetProperty("amount").GetString()
            )
        );
        Assert.Equal("44 × 18 × 3 in, box", line.GetProperty("size").GetString());
        Assert.NotEmpty(detail.GetProperty("id").GetString()!);
        await Expect(shown.Note).ToHaveTextAsync("Added to the basket.");
        await Expect(shown.Page.Locator("#basket li")).ToContainTextAsync("Plain linen 1.5 yd: 28.35");
    }

    [SkippableTheory]
    [InlineData("event.detail.respondWith(Promise.resolve())", "Added to the basket.")]
    [InlineData("event.detail.respondWith(new Promise((_, no) => setTimeout(no, 50)))", "It was not added. Please try again.")]
    [InlineData("event.detail.respondWith(false)", "It was not added. Please try again.")]
    [InlineData("0", "Passed on to the shop.")]
    public async Task Added_is_said_only_when_the_shop_says_so(string answer, string said)
    {
        await using ShownPage shown = await browser.OpenShopAsync(ShopPages.Element());
        await shown.StateAsync("answered");
        await shown.Page.EvaluateAsync($"document.addEventListener('add-to-basket', event => {{ {answer}; }})");
        await shown.Page.GetByRole(AriaRole.Button, new() { Name = "Add to basket" }).ClickAsync();

        await Expect(shown.Note).ToHaveTextAsync(said);
    }

    [SkippableFact]
    public async Task A_double_click_is_one_order()
    {
        await using ShownPage shown = await browser.OpenAsync();
        await shown.StateAsync("answered");
        await shown.Page.GetByRole(AriaRole.Button, new() { Name = "Add to basket" }).DblClickAsync();
        await shown.Page.WaitForTimeoutAsync(700);

        await Expect(shown.Page.Locator("#basket li")).ToHaveCountAsync(1);
    }

    [SkippableFact]
    public async Task A_form_of_the_page_sends_the_order_and_its_lines()
    {
        await using ShownPage shown = await browser.OpenShopAsync($"<form>{ShopPages.Element("name=\"seat\"")}</form>");
        await shown.EstimateAsync(() => shown.Field("/cushions/*/outline/width").FillAsync("40"));
        string[] sent = await shown.Page.EvaluateAsync<string[]>(
            "() => [...new FormData(document.querySelector('form'))].map(([name, text]) => `${name} ${text}`)"
        );

        Assert.StartsWith("seat {", sent[0], StringComparison.Ordinal);
        Assert.StartsWith("seat-lines [{\"sku\":\"linen\"", sent[1], StringComparison.Ordinal);
        await shown.Field("/cushions/*/outline/width").FillAsync("");
        await shown.StateAsync("needed");
        Assert.False(await shown.Page.EvaluateAsync<bool>("() => document.querySelector('form').checkValidity()"));
    }

    [SkippableFact]
    public async Task The_keyboard_alone_is_enough()
    {
        await using ShownPage shown = await browser.OpenAsync();
        await shown.StateAsync("answered");
        await shown.Page.Locator("cushion-estimate button.add").FocusAsync();
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
        Assert.Equal(
            [
                "/units",
                "/cushions/*/outline/width",
                "/cushions/*/outline/depth",
                "/cushions/*/thickness",
                "/cushions/*/fabrics/top",
                "/cushions/*/quantity",
            ],
            visited.Where(name => name.StartsWith('/'))
        );

        Task<string> FocusedAsync() =>
            shown.Page.EvaluateAsync<string>(
                "() => { const at = document.activeElement.shadowRoot?.activeElement; return at?.name || at?.getAttribute('part') || "
                    + "at?.tagName || ''; }"
            );
    }
}
