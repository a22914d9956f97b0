using System.Collections.Concurrent;
using System.Text.Json;
using Microsoft.Playwright;

namespace CushionService.BrowserTests.Hosting;

/// <summary>A page, with what it asked of the service and what went wrong in it. When it is left, nothing may have gone wrong.</summary>
public sealed class ShownPage : IAsyncDisposable
{
    private static readonly TimeSpan Patience = TimeSpan.FromSeconds(30);

    private readonly ConcurrentQueue<string> _faults = new();
    private readonly ConcurrentQueue<IRequest> _requests = new();
    private readonly ConcurrentQueue<string> _said = new();

    public ShownPage(IPage page)
    {
        Page = page;
        page.PageError += (_, fault) => _faults.Enqueue(fault);
        page.Console += (_, message) =>
        {
            // A refused order is an answer, and so is a service's word to come again; the browser calls both errors.
            _said.Enqueue(message.Text);
            if (message.Type == "error" && !message.Text.Contains("the server responded with a status of", StringComparison.Ordinal))
            {
                _faults.Enqueue(message.Text);
            }
        };
        page.Request += (_, request) => _requests.Enqueue(request);
    }

    public IPage Page { get; }

    /// <summary>What the console has.</summary>
    public IEnumerable<string> Console => _said;

    /// <summary>Whether faults are part of the test.</summary>
    public bool MayFail { get; set; }

    /// <summary>How often a call was asked so far.</summary>
    public int Asked(string call) => _requests.Count(request => new Uri(request.Url).AbsolutePath == call);

    public ILocator Field(string pointer) => Page.Locator($"cushion-estimate [name=\"{pointer}\"]");

    /// <summary>The fabric to buy, and what it costs.</summary>
    public ILocator Told => Page.Locator("cushion-estimate [part=status]");

    /// <summary>What is wrong, and the ways out.</summary>
    public ILocator Problem => Page.Locator("cushion-estimate [part=problem]");

    /// <summary>The sentence under the button.</summary>
    public ILocator Note => Page.Locator("cushion-estimate .note");

    /// <summary>Chooses among drawings or switches, as a pointer does: opens them where they are folded.</summary>
    public async Task ChooseAsync(string pointer, string value)
    {
        string choices = $"[name=\"{pointer}\"][value=\"{value}\"]";
        ILocator choice = Page.Locator($"cushion-estimate {choices}");
        if (!await choice.IsVisibleAsync())
        {
            await Page.Locator("cushion-estimate details.kind")
                .Filter(new() { Has = Page.Locator(choices) })
                .Locator("summary")
                .ClickAsync();
        }

        await choice.ClickAsync();
    }

    /// <summary>Opens what is folded under a summary.</summary>
    public Task UnfoldAsync(string summary) =>
        Page.Locator("cushion-estimate summary").Filter(new() { HasText = summary }).First.ClickAsync();

    /// <summary>Waits until the element shows a state, and no answer is under way.</summary>
    public Task StateAsync(string state) => Assertions.Expect(Page.Locator("cushion-estimate")).ToHaveAttributeAsync("data-state", state);

    /// <summary>Does something, and waits for the answer that it brings.</summary>
    public async Task<JsonElement> EstimateAsync(Func<Task> act)
    {
        Task<JsonElement> next = HearAsync("estimate");
        await act();
        return await next.WaitAsync(Patience);
    }

    /// <summary>What the element tells the page by its next event of a name.</summary>
    public async Task<JsonElement> HearAsync(string name)
    {
        string detail = await Page.EvaluateAsync<string>(
            "name => new Promise(heard => document.addEventListener(name, event => heard(JSON.stringify(event.detail)), { once: true }))",
            name
        );
        return JsonDocument.Parse(detail).RootElement;
    }

    public async ValueTask DisposeAsync()
    {
        await Page.Context.CloseAsync();
        if (!MayFail)
        {
            Assert.Empty(_faults);
        }
    }
}
