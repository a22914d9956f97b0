using System.Diagnostics;
using System.Net;
using System.Text;
using System.Text.Json;

namespace CushionService.LoadTests;

/// <summary>Sends quotes at a constant rate while the price book that they name is replaced, and checks that none fails and none mixes two
/// versions.</summary>
internal static class PriceBookRun
{
    private const int Rate = 500;
    private const int WarmUp = 500;
    private static readonly TimeSpan BetweenVersions = TimeSpan.FromSeconds(1);

    /// <summary>Settings with which the service takes every call, however many wait.</summary>
    public static (string Name, string Value)[] Unlimited { get; } =
    [
        ("Access__Anonymous__Rate", "1000000"),
        ("Access__Anonymous__Burst", "1000000"),
        ("Admission__LongestWaitMs", "60000"),
        ("Admission__Queue", "100000"),
        ("Admission__DeadlineSeconds", "300"),
    ];

    public static async Task RunAsync(LoopbackHost host, ReplacedBook book, int seconds)
    {
        using HttpClient client = new() { BaseAddress = host.Rest, Timeout = TimeSpan.FromMinutes(5) };
        for (int call = 0; call < WarmUp; call++)
        {
            await VersionAsync(client);
        }

        Stopwatch watch = Stopwatch.StartNew();
        List<Task<string>> calls = [];
        TimeSpan next = BetweenVersions;
        while (watch.Elapsed < TimeSpan.FromSeconds(seconds))
        {
            for (int due = (int)(watch.Elapsed.TotalSeconds * Rate); calls.Count < due; )
            {
                calls.Add(VersionAsync(client));
            }

            if (watch.Elapsed > next)
            {
                book.Replace();
                next += BetweenVersions;
            }

            await Task.Delay(1);
        }

        double sent = calls.Count / watch.Elapsed.TotalSeconds;
        string[] versions = await Task.WhenAll(calls);
        string[] seen = [.. versions.Distinct()];
        Console.WriteLine(
            $"{versions.Length} quotes at {sent:0} a second, answered after {watch.Elapsed.TotalSeconds:0.0} s; none failed, none "
                + $"mixed two versions; versions seen: {string.Join(' ', seen)}"
        );
        if (seen.Length < 2)
        {
            throw new InvalidOperationException("The book was never reloaded; a run of 20 seconds sees some versions.");
        }
    }

    private static async Task<string> VersionAsync(HttpClient client)
    {
        using StringContent order = new(ReplacedBook.Order, Encoding.UTF8, "application/json");
        using HttpResponseMessage response = await client.PostAsync(new Uri("/v1/quotes", UriKind.Relative), order);
        string text = await response.Content.ReadAsStringAsync();
        if (response.StatusCode != HttpStatusCode.OK)
        {
            throw new InvalidOperationException($"{response.StatusCode}: {text}");
        }

        using JsonDocument answer = JsonDocument.Parse(text);
        JsonElement cost = answer.RootElement.GetProperty("cost");
        string version = cost.GetProperty("priceBook").GetProperty("version").GetString()!;
        return ReplacedBook.IsWhole(
            version,
            cost.GetProperty("lines").EnumerateArray().Select(line => line.GetProperty("unitPrice").GetString()!)
        )
            ? version
            : throw new InvalidOperationException($"Mixed prices: {cost}");
    }
}
