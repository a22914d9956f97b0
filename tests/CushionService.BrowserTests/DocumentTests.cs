using System.Text.Json.Nodes;
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
    [InlineData("quotes", "every-construction")]
    [InlineData("quotes?detail=full", "trimmings")]
    [InlineData("quotes?detail=project", "floor-cushion-metric")]
    [InlineData("pieces", "every-construction")]
    [InlineData("labels", "every-construction")]
    public async Task It_breaks_no_rule_and_no_line_runs_out_of_a_phone(string call, string order)
    {
        await using ShownPage shown = await browser.OpenEmptyAsync();
        await ShowAsync(shown, call, await OrderAsync(order));
        await JudgeAsync(shown, call);
    }

    // A name of sixty characters without a space, and one that is read from right to left.
    [SkippableTheory]
    [InlineData("quotes")]
    [InlineData("quotes?detail=full")]
    [InlineData("quotes?detail=project")]
    [InlineData("labels")]
    [InlineData("pieces")]
    public async Task Long_names_and_names_from_right_to_left_stay_in_their_room(string call)
    {
        JsonNode order = JsonNode.Parse(await OrderAsync("reading-nook"))!;
        foreach (JsonNode? cushion in order["cushions"]!.AsArray())
        {
            cushion!["label"] = new string('W', 60);
        }

        foreach (JsonNode? fabric in order["fabrics"]!.AsArray())
        {
            fabric!["label"] = "בד פשתן כחול לריפוד (2)";
        }

        await using ShownPage shown = await browser.OpenEmptyAsync();
        await ShowAsync(shown, call, order.ToJsonString());
        await JudgeAsync(shown, call);
    }

    private static async Task JudgeAsync(ShownPage shown, string call)
    {
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

    private static Task<string> OrderAsync(string demo) =>
        File.ReadAllTextAsync(Path.Combine(AppContext.BaseDirectory, "Demo", $"{demo}.json"));

    // Fetched as a program does, and shown in a page of its own.
    private async Task ShowAsync(ShownPage shown, string call, string json)
    {
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
