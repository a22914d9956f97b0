using System.Net;
using System.Text.Json.Nodes;
using CushionService.PriceBooks;
using CushionService.Tests.Hosting;
using Microsoft.AspNetCore.Mvc.Testing;
using Microsoft.Extensions.DependencyInjection;

namespace CushionService.Tests.PriceBooks;

/// <summary>A price book is replaced while orders are quoted by it.</summary>
public sealed class PriceBookReloadTests
{
    private const int Callers = 4;
    private const int OrdersOfCaller = 125;

    private const string Order = """
        {
          "units": "in", "effort": "quick", "priceBook": "nook",
          "pieces": [{ "id": "runner", "fabric": "canvas", "quantity": 1, "width": 20, "length": 30 }, { "id": "lining",
            "fabric": "calico", "quantity": 1, "width": 20, "length": 30 }],
          "fabrics": [{ "id": "canvas", "width": 54 }, { "id": "calico", "width": 54 }]
        }
        """;

    [Fact]
    public async Task No_call_fails_and_no_answer_mixes_two_versions()
    {
        using BookFolder books = new(("nook", Version(1)));
        using RunningService service = books.Serve();
        using CancellationTokenSource over = new();
        Task<int> replacing = Task.Run(() => Replace(books, over.Token));
        HashSet<string>[] seen;
        int replaced;
        try
        {
            seen = await Task.WhenAll(Enumerable.Range(0, Callers).Select(_ => Task.Run(() => CallAsync(service))));
        }
        finally
        {
            await over.CancelAsync();
            replaced = await replacing;
        }

        Assert.True(replaced > 1, "The book was never replaced.");
        Assert.True(seen.SelectMany(versions => versions).Distinct().Count() > 1, "Every answer had the same version.");
    }

    [Fact]
    public async Task The_service_reloads_the_folder_that_its_configuration_names()
    {
        using BookFolder books = new(("nook", Version(1)));
        await using WebApplicationFactory<Program> host = new WebApplicationFactory<Program>().WithWebHostBuilder(builder =>
            builder.UseSetting("PriceBooks:Folder", books.Location)
        );
        IPriceBooks store = host.Services.GetRequiredService<IPriceBooks>();
        Assert.Equal("1", store.Find("nook")!.Version);

        books.Write("nook", Version(2));
        // The folder is looked at every few seconds; a minute is patience, not a measurement.
        for (int wait = 0; wait < 600 && store.Find("nook")!.Version == "1"; wait++)
        {
            await Task.Delay(100);
        }

        Assert.Equal("2", store.Find("nook")!.Version);
    }

    [Fact]
    public async Task A_book_that_there_is_no_memory_for_is_reported_and_the_others_stay()
    {
        using BookFolder books = new(("nook", Version(1)));
        await using ServiceProcess service = await ServiceProcess.StartAsync(
            // 96 MiB, in hexadecimal as the runtime wants it.
            ("DOTNET_GCHeapHardLimit", "6000000"),
            ("PriceBooks__Folder", books.Location)
        );
        string large = string.Join(
            ',',
            Enumerable.Range(0, 600_000).Select(item => $"{{\"item\":\"i{item:000000}\",\"amount\":\"1\",\"per\":\"yd\"}}")
        );
        books.Write("large", $"{{\"currency\":\"USD\",\"prices\":[{large}]}}");
        for (int wait = 0; wait < 900 && !service.Lines.Any(IsReported); wait++)
        {
            await Task.Delay(100);
        }

        Assert.Contains(service.Lines, IsReported);
        using HttpClient http = new() { BaseAddress = service.Rest };
        Assert.Contains(
            "price_books{otel_scope_name=\"CushionService\",state=\"refused\"} 1",
            await http.GetStringAsync(new Uri("/metrics", UriKind.Relative)),
            StringComparison.Ordinal
        );

        static bool IsReported(string line) => line.Contains("There is no memory for a book", StringComparison.Ordinal);
    }

    [Fact]
    public void A_start_with_a_broken_book_fails_and_says_where()
    {
        using BookFolder books = new(("nook", "{\n\"currency\": 1 }"));
        using WebApplicationFactory<Program> host = new WebApplicationFactory<Program>().WithWebHostBuilder(builder =>
            builder.UseSetting("PriceBooks:Folder", books.Location)
        );

        Assert.Contains(
            "nook.json, line 2: /currency wrong-type",
            Assert.ThrowsAny<Exception>(() => host.Services).ToString(),
            StringComparison.Ordinal
        );
    }

    // Both prices of a version end in its number.
    private static string Version(int number) =>
        $$"""
            { "version": "{{number}}", "currency": "USD", "prices": [
              { "item": "canvas", "amount": "10.{{number:00}}", "per": "yd", "step": 1 }, { "item": "calico",
                "amount": "5.{{number:00}}", "per": "yd", "step": 1 }] }
            """;

    private static int Replace(BookFolder books, CancellationToken over)
    {
        int times = 0;
        while (!over.IsCancellationRequested)
        {
            int number = times++ % 99 + 1;
            books.Write("nook", number % 3 == 0 ? "{ broken" : Version(number));
            Assert.Equal(number % 3 == 0, books.Store.Reload().Count > 0);
        }

        return times;
    }

    private static async Task<HashSet<string>> CallAsync(RunningService service)
    {
        HashSet<string> seen = [];
        for (int call = 0; call < OrdersOfCaller; call++)
        {
            using HttpResponseMessage response = await service.PostAsync("quotes", Order);
            JsonObject answer = await response.JsonAsync();
            Assert.True(response.StatusCode == HttpStatusCode.OK, answer.ToString());
            JsonNode cost = answer["cost"]!;
            string version = cost["priceBook"]!["version"]!.GetValue<string>();
            string coins = int.Parse(version).ToString("00");
            Assert.Equal(
                [$"canvas 10.{coins}", $"calico 5.{coins}"],
                cost["lines"]!.AsArray().Select(line => $"{line!["item"]} {line["unitPrice"]}")
            );
            seen.Add(version);
        }

        return seen;
    }
}
