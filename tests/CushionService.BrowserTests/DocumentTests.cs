using CushionService.BrowserTests.Hosting;
using Deque.AxeCore.Commons;
using Deque.AxeCore.Playwright;
using Microsoft.Playwright;

namespace CushionService.BrowserTests;

/// <summary>Every document to print, as a browser shows it: judged by axe, by the rules of WCAG 2.2, levels A and AA, on a phone and on a
/// desk.</summary>
[Collection(BrowserGroup.Name)]
public sealed class DocumentTests(BrowserOfThisMachine browser)
{
    private static readonly AxeRunOptions Rules = new()
    {
        RunOnly = new RunOnlyOptions { Type = "tag", Values = ["wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22aa"] },
    };

    [SkippableTheory]
    [InlineData("quotes", "reading-nook")]
    [InlineData("quotes?detail=full", "reading-nook")]
    [InlineData("quotes?detail=project", "reading-nook")]
    [InlineData("quotes?detail=project", "every-construction")]
    [InlineData("pieces", "every-outline")]
    [InlineData("labels", "terrace")]
    public async Task It_breaks_no_rule_and_no_line_runs_out_of_a_phone(string call, string order)
    {
        await using ShownPage shown = await browser.OpenEmptyAsync();
        await ShowAsync(shown, call, order);
        foreach (int width in (int[])[360, 1280])
        {
            await shown.Page.SetViewportSizeAsync(width, 800);
            AxeResult result = await shown.Page.RunAxe(Rules);
            Assert.NotEmpty(result.Passes);
            Assert.Empty(result.Violations.SelectMany(violation => violation.Nodes.Select(node => $"{violation.Id}: {node.Html}")));
        }

        // Patterns and labels are as large as their paper.
        if (call.StartsWith("quotes", StringComparison.Ordinal))
        {
            await shown.Page.SetViewportSizeAsync(360, 800);
            Assert.True(await shown.Page.EvaluateAsync<bool>("() => document.documentElement.scrollWidth <= 361"));
        }
    }

    // Fetched as a program does, and shown in a page of its own.
    private async Task ShowAsync(ShownPage shown, string call, string order)
    {
        string json = await File.ReadAllTextAsync(Path.Combine(AppContext.BaseDirectory, "Demo", $"{order}.json"));
        string address = new Uri(browser.Service, $"/v1/{call}").AbsoluteUri;
        IAPIResponse response = await shown.Page.Context.APIRequest.PostAsync(
            address,
            new()
            {
                DataString = json,
                Headers = new Dictionary<string, string> { ["Content-Type"] = "application/json", ["Accept"] = "text/html" },
            }
        );
        Assert.True(response.Ok, await response.TextAsync());
        // The document's own policy forbids scripts, and axe is one.
        string html = (await response.TextAsync()).Replace(
            "http-equiv=\"Content-Security-Policy\"",
            "name=\"policy\"",
            StringComparison.Ordinal
        );
        await shown.Page.SetContentAsync(html);
    }
}
