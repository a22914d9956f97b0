using System.Collections.Concurrent;
using Microsoft.Playwright;

namespace CushionService.BrowserTests.Hosting;

/// <summary>A page, with what it asked of the service and what went wrong in it. When it is left, nothing may have gone wrong.</summary>
public sealed class ShownPage : IAsyncDisposable
{
    private readonly ConcurrentQueue<string> _faults = new();
    private readonly ConcurrentQueue<IRequest> _requests = new();

    public ShownPage(IPage page)
    {
        Page = page;
        page.PageError += (_, fault) => _faults.Enqueue(fault);
        page.Console += (_, message) =>
        {
            // A refused order is an answer; the browser calls it an error.
            if (message.Type == "error" && !message.Text.Contains("the server responded with a status of 4", StringComparison.Ordinal))
            {
                _faults.Enqueue(message.Text);
            }
        };
        page.Request += (_, request) => _requests.Enqueue(request);
    }

    public IPage Page { get; }

    /// <summary>Whether faults are part of the test.</summary>
    public bool MayFail { get; set; }

    /// <summary>How often a call was asked so far.</summary>
    public int Asked(string call) => _requests.Count(request => new Uri(request.Url).AbsolutePath == call);

    public ILocator Field(string pointer) => Page.Locator($"cushion-estimate [name=\"{pointer}\"]");

    public ILocator Status => Page.Locator("cushion-estimate [role=status]");

    /// <summary>Waits until the element shows a state, and no answer is under way.</summary>
    public Task StateAsync(string state) => Assertions.Expect(Page.Locator("cushion-estimate")).ToHaveAttributeAsync("data-state", state);

    /// <summary>Does something, and waits for the answer that it brings.</summary>
    public async Task<System.Text.Json.JsonElement> EstimateAsync(Func<Task> act)
    {
        Task<System.Text.Json.JsonElement> next = Page.EvaluateAsync<System.Text.Json.JsonElement>(
            "() => new Promise(heard => document.addEventListener('estimate', event => heard(event.detail), { once: true }))");
        await act();
        return await next;
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
