using System.Text;
using System.Text.RegularExpressions;
using CushionService.BrowserTests.Hosting;
using Microsoft.Playwright;

namespace CushionService.BrowserTests;

[Collection(BrowserGroup.Name)]
public sealed partial class CutSheetTests(BrowserOfThisMachine browser)
{
    // Letter for inches and A4 for metric orders, in points of 1/72 in (ISO 216; ANSI/ASME Y14.1).
    [SkippableTheory]
    [InlineData("pillow", 612, 792)]
    [InlineData("reading-nook", 612, 792)]
    [InlineData("terrace", 595, 842)]
    public async Task It_prints_on_its_own_paper_and_nothing_is_cut_off(string order, double width, double height)
    {
        await using ShownPage shown = await browser.OpenAsync("/orders");
        await ShowAsync(shown, order);
        await shown.Page.EmulateMediaAsync(new() { Media = Media.Print });
        int printable = (int)Math.Floor((width - 2 * 12 / 25.4 * 72) / 72 * 96) + 1;
        await shown.Page.SetViewportSizeAsync(printable, 900);
        string[] wide = await shown.Page.EvaluateAsync<string[]>(
            "room => [...document.querySelectorAll('body *:not(svg *)')].filter(each => each.getBoundingClientRect().right > room + "
                + "1).map(each => each.outerHTML.slice(0, 120))",
            printable
        );
        byte[] pdf = await shown.Page.PdfAsync(new() { PreferCSSPageSize = true });
        string text = Encoding.Latin1.GetString(pdf);

        Assert.Empty(wide);
        Assert.StartsWith("%PDF-", text, StringComparison.Ordinal);
        MatchCollection sheets = MediaBox().Matches(text);
        Assert.True(sheets.Count >= 2);
        Assert.All(
            sheets,
            sheet =>
                Assert.Equal(
                    (width, height),
                    (Math.Round(double.Parse(sheet.Groups[1].Value)), Math.Round(double.Parse(sheet.Groups[2].Value)))
                )
        );
        if (Environment.GetEnvironmentVariable("CUSHION_SCREENS") is { Length: > 0 } folder)
        {
            await File.WriteAllBytesAsync(Path.Combine(folder, $"{order}.pdf"), pdf);
        }
    }

    [SkippableFact]
    public async Task The_sheet_of_what_was_typed_is_a_link_away()
    {
        await using ShownPage shown = await browser.OpenAsync();
        await shown.StateAsync("answered");
        await shown.EstimateAsync(() => shown.Field("/cushions/*/outline/width").FillAsync("31"));
        IPage sheet = await shown.Page.Context.RunAndWaitForPageAsync(() => shown.Page.ClickAsync("#estimate-sheet"));
        await sheet.Locator(".pieces").First.WaitForAsync();

        string pieces = (await sheet.Locator(".pieces").First.InnerTextAsync()).Replace('\u00A0', ' ');
        Assert.Contains("32 × 19", pieces, StringComparison.Ordinal);
    }

    // The browser's own language is English.
    [SkippableFact]
    public async Task The_sheet_of_an_order_is_in_the_language_of_the_page_that_leads_to_it()
    {
        await using ShownPage shown = await browser.OpenAsync("/orders?language=de");
        await ShowAsync(shown, "pillow");

        Assert.StartsWith("Auftragszettel", await shown.Page.TitleAsync(), StringComparison.Ordinal);
        Assert.Equal("de", await shown.Page.GetAttributeAsync("html", "lang"));
        Assert.Contains("Naht", await shown.Page.Locator("body").InnerTextAsync(), StringComparison.Ordinal);
    }

    [SkippableFact]
    public async Task The_order_that_was_chosen_last_stays_though_an_earlier_one_comes_later()
    {
        await using ShownPage shown = await browser.OpenEmptyAsync();
        TaskCompletionSource later = new();
        await shown.Page.RouteAsync(
            "**/demo/reading-nook.json",
            async route =>
            {
                await later.Task;
                await route.ContinueAsync();
            }
        );
        await shown.Page.GotoAsync("/orders");
        await shown.Page.SelectOptionAsync("#order", "terrace");
        await shown.Page.Locator("#order-answer svg").First.WaitForAsync();
        await shown.Page.RunAndWaitForResponseAsync(
            () =>
            {
                later.SetResult();
                return Task.CompletedTask;
            },
            "**/demo/reading-nook.json"
        );
        await shown.Page.WaitForTimeoutAsync(200);

        Assert.Contains("terrace", await shown.Page.GetAttributeAsync("#order-sheet", "href"), StringComparison.Ordinal);
        Assert.Equal(0, await shown.Page.GetByText("Printed cotton, leaves growing upwards").CountAsync());
    }

    /// <summary>Opens the cut sheet of a demonstration order.</summary>
    internal static async Task ShowAsync(ShownPage shown, string order)
    {
        await shown.Page.SelectOptionAsync("#order", order);
        await shown.Page.Locator($"#order-sheet[href*=\"{order}\"]").WaitForAsync();
        string sheet = (await shown.Page.GetAttributeAsync("#order-sheet", "href"))!;
        await shown.Page.GotoAsync(sheet);
        await shown.Page.Locator(".pieces").First.WaitForAsync();
    }

    [GeneratedRegex(@"/MediaBox \[0 0 ([\d.]+) ([\d.]+)\]")]
    private static partial Regex MediaBox();
}
