using CushionService.BrowserTests.Hosting;
using Microsoft.Playwright;
using Xunit.Abstractions;
using static Microsoft.Playwright.Assertions;

namespace CushionService.BrowserTests;

/// <summary>Five tasks as a shopper does them for the first time, on a telephone: taps and texts are counted, and nobody is
/// stranded.</summary>
[Collection(BrowserGroup.Name)]
public sealed class FirstUseTests(BrowserOfThisMachine browser, ITestOutputHelper output)
{
    private const string Width = "/cushions/*/outline/width",
        Diameter = "/cushions/*/outline/diameter";

    private int _taps;

    [SkippableFact]
    public async Task A_bench_of_72_inches_that_is_wider_than_the_fabric()
    {
        await using ShownPage shown = await BeginAsync();
        await TypeAsync(shown, Width, "6 ft");
        await shown.StateAsync("refused");
        // One sentence for both faces, with the name of the fabric in it.
        ILocator fault = shown.Page.Locator("cushion-estimate p.fault").Filter(new() { HasText = "is too narrow for one piece of" });
        await Expect(fault).ToHaveCountAsync(1);
        await Expect(fault).Not.ToContainTextAsync("{");
        ILocator way = shown.Page.Locator("cushion-estimate .ways button").First;
        await Expect(way).ToContainTextAsync("yd");
        string offered = await way.Locator("small").InnerTextAsync();
        await TapAsync(way);
        await shown.StateAsync("answered");
        Assert.StartsWith(await shown.Told.Locator(".much").InnerTextAsync(), offered, StringComparison.Ordinal);
        await DoneAsync(shown, 3);
    }

    [SkippableFact]
    public async Task A_round_seat()
    {
        await using ShownPage shown = await BeginAsync();
        await TapAsync(shown.Page.Locator("cushion-estimate details.kind").Nth(1).Locator("summary"));
        await TapAsync(shown.Page.Locator("cushion-estimate .tiles input[value=circle]"));
        await TypeAsync(shown, Diameter, "16");
        await shown.StateAsync("answered");
        await DoneAsync(shown, 4);
    }

    [SkippableFact]
    public async Task Two_pillows_and_a_bench_in_one_plan()
    {
        await using ShownPage shown = await BeginAsync();
        await TapAsync(shown.Page.Locator("cushion-estimate button.add"));
        await TapAsync(shown.Page.Locator("cushion-estimate details.kind").First.Locator("summary"));
        await TapAsync(shown.Page.Locator("cushion-estimate .tiles input[value=knife-edge]"));
        await TypeAsync(shown, Width, "18");
        await shown.EstimateAsync(() => TypeAsync(shown, "/cushions/*/quantity", "2"));
        await shown.StateAsync("answered");
        await DoneAsync(shown, 6);
    }

    [SkippableTheory]
    [InlineData("2", "Yes, it is enough.")]
    [InlineData("1 yd", "No, it is not enough: 1 1/2 yd are needed.")]
    public async Task Is_what_I_have_enough(string length, string answer)
    {
        await using ShownPage shown = await BeginAsync();
        await TapAsync(shown.Page.Locator("cushion-estimate summary").Filter(new() { HasText = "I have some fabric" }));
        _taps++;
        await shown.Page.Locator("cushion-estimate #have-length").FillAsync(length);
        await TapAsync(shown.Page.Locator("cushion-estimate button").Filter(new() { HasText = "Is it enough?" }));
        await Expect(shown.Page.Locator("cushion-estimate #have-said")).ToContainTextAsync(answer);
        await DoneAsync(shown, 3);
    }

    [SkippableFact]
    public async Task A_cheaper_fabric()
    {
        await using ShownPage shown = await BeginAsync();
        double before = await TotalAsync(shown);
        await TapAsync(shown.Page.Locator("cushion-estimate summary").Filter(new() { HasText = "Compare fabrics" }));
        ILocator cheapest = shown.Page.Locator("cushion-estimate .offers button").First;
        await Expect(cheapest).ToContainTextAsync("cheapest");
        await shown.EstimateAsync(() => TapAsync(cheapest));
        Assert.True(await TotalAsync(shown) < before);
        await DoneAsync(shown, 2);
    }

    private async Task<ShownPage> BeginAsync()
    {
        ShownPage shown = await browser.OpenShopAsync(ShopPages.Element(), width: 390);
        await shown.StateAsync("answered");
        await shown.Page.Locator("cushion-estimate .more details").Nth(2).WaitForAsync();
        return shown;
    }

    private async Task TapAsync(ILocator at)
    {
        _taps++;
        await at.ClickAsync();
    }

    private async Task TypeAsync(ShownPage shown, string pointer, string text)
    {
        _taps++;
        await shown.Field(pointer).FillAsync(text);
    }

    private static Task<double> TotalAsync(ShownPage shown) =>
        shown.Told.Locator(".total").EvaluateAsync<double>("each => Number(each.textContent.replace(/[^\\d.]/g, ''))");

    // The basket is the end of each task.
    private async Task DoneAsync(ShownPage shown, int most)
    {
        await Expect(shown.Page.Locator("cushion-estimate [part=basket]")).ToBeEnabledAsync();
        output.WriteLine($"{_taps} taps and texts.");
        Assert.InRange(_taps, 1, most);
    }
}
