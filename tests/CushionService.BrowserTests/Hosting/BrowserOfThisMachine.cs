using CushionService.LoadTests;
using Microsoft.Playwright;

namespace CushionService.BrowserTests.Hosting;

/// <summary>A browser that is installed, driven without a window, and the service as a process of its own. Without a browser every test
/// says that it skipped; where <c>CUSHION_BROWSER_REQUIRED</c> is set, as in the continuous run, it fails.</summary>
public sealed class BrowserOfThisMachine : IAsyncLifetime
{
    // Debian's name first. A browser elsewhere is named by CUSHION_BROWSER.
    private static readonly string?[] Places =
    [
        Environment.GetEnvironmentVariable("CUSHION_BROWSER"),
        "/usr/bin/chromium",
        "/usr/bin/chromium-browser",
        "/usr/bin/google-chrome",
    ];

    private static readonly string? Installed = Array.Find(Places, File.Exists);

    /// <summary>The origin of a shop's page that may call the service.</summary>
    public const string Shop = "http://shop.example";

    private LoopbackHost? _service;
    private IPlaywright? _playwright;
    private IBrowser? _browser;

    /// <summary>Where the service answers.</summary>
    public Uri Service => _service!.Rest;

    /// <summary>The same as a browser writes an origin.</summary>
    public string Origin => Service.GetLeftPart(UriPartial.Authority);

    public async Task InitializeAsync()
    {
        if (Installed is null)
        {
            return;
        }

        // One shop's page may call from elsewhere; and on a machine that is busy, calls wait rather than come again.
        Environment.SetEnvironmentVariable("Access__Origins__0", Shop);
        Environment.SetEnvironmentVariable("Admission__LongestWaitMs", "30000");
        _service = await LoopbackHost.StartAsync();
        _playwright = await Playwright.CreateAsync();
        // As long as a page itself may take: on a busy machine five seconds, the usual, are not always enough.
        Assertions.SetDefaultExpectTimeout(30_000);
        _browser = await _playwright.Chromium.LaunchAsync(
            new()
            {
                ExecutablePath = Installed,
                // A shop's page may call the loopback address here, for want of a service elsewhere.
                Args =
                [
                    "--disable-features=LocalNetworkAccessChecks",
                    "--no-sandbox",
                    "--disable-gpu",
                    "--disable-quic",
                    "--no-first-run",
                    "--disable-background-networking",
                    "--disable-component-update",
                    "--disable-sync",
                ],
            }
        );
    }

    /// <summary>A page of a new session.</summary>
    /// <param name="path">What it shows: a path of the service.</param>
    /// <param name="width">How wide it is, in CSS pixels.</param>
    public async Task<ShownPage> OpenAsync(string path = "/", int width = 1280)
    {
        ShownPage shown = await OpenEmptyAsync(width);
        await shown.Page.GotoAsync(path);
        return shown;
    }

    /// <summary>An empty page of a new session.</summary>
    public async Task<ShownPage> OpenEmptyAsync(int width = 1280)
    {
        if (Installed is null && Environment.GetEnvironmentVariable("CUSHION_BROWSER_REQUIRED") is { Length: > 0 })
        {
            throw new InvalidOperationException(
                $"A browser is required here, and none is installed at {string.Join(", ", Places.Where(place => place is not null))}."
            );
        }

        Skip.If(Installed is null, "No browser is installed.");
        IBrowserContext context = await _browser!.NewContextAsync(
            new()
            {
                BaseURL = Service.ToString(),
                ViewportSize = new() { Width = width, Height = 900 },
                Locale = "en-US",
            }
        );
        return new(await context.NewPageAsync());
    }

    public async Task DisposeAsync()
    {
        if (_browser is not null)
        {
            await _browser.DisposeAsync();
        }

        _playwright?.Dispose();
        _service?.Dispose();
    }
}
