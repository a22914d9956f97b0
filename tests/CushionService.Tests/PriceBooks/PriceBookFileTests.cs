using System.Net;
using System.Text;
using System.Text.Json.Nodes;
using CushionService.PriceBooks;
using CushionService.Tests.Hosting;

namespace CushionService.Tests.PriceBooks;

/// <summary>What a shop meets that writes price books: encodings, an editor's schema, a check before they are used, and what the
/// platform sees of a refused one.</summary>
public sealed class PriceBookFileTests
{
    public static TheoryData<byte[], string?> Encodings =>
        new()
        {
            { [0xEF, 0xBB, 0xBF, .. Encoding.UTF8.GetBytes(BookFolder.Nook)], null },
            {
                Encoding.Unicode.GetPreamble().Concat(Encoding.Unicode.GetBytes(BookFolder.Nook)).ToArray(),
                "nook.json, line 1: This is not text in UTF-8."
            },
            { Encoding.BigEndianUnicode.GetBytes(BookFolder.Nook), "nook.json, line 1: This is not text in UTF-8." },
            { Encoding.Latin1.GetBytes("{\n\"version\": \"für den Herbst\" }"), "nook.json, line 2: This is not text in UTF-8." },
        };

    [Theory]
    [MemberData(nameof(Encodings))]
    public void A_file_is_read_in_UTF_8_with_a_mark_or_without(byte[] file, string? error)
    {
        using BookFolder books = new();
        File.WriteAllBytes(Path.Combine(books.Location, "nook.json"), file);

        Assert.Equal(error is null ? [] : [error], books.Store.Reload().Select(one => one.ToString()));
        Assert.Equal(error is null, books.Store.Find("nook") is not null);
    }

    [Fact]
    public void A_file_that_is_much_too_large_is_not_read()
    {
        using BookFolder books = new();
        using (FileStream file = File.Create(Path.Combine(books.Location, "large.json")))
        {
            file.SetLength(100 << 20);
        }

        long before = GC.GetTotalAllocatedBytes();
        Assert.Equal(["large.json, line 1: A price book may have 32 MiB at most."], books.Store.Reload().Select(error => error.ToString()));
        Assert.InRange(GC.GetTotalAllocatedBytes() - before, 0, 8 << 20);
    }

    [Fact]
    public void One_file_that_cannot_be_read_keeps_no_other_back()
    {
        using BookFolder books = new(("nook", BookFolder.Nook));
        Directory.CreateSymbolicLink(Path.Combine(books.Location, "gone.json"), Path.Combine(books.Location, "nowhere"));
        books.Write("nook", BookFolder.Nook.Replace("\"1\"", "\"2\"", StringComparison.Ordinal));

        Assert.Equal(["gone.json"], books.Store.Reload().Select(error => error.File));
        Assert.Equal("2", books.Store.Find("nook")!.Version);
    }

    [Fact]
    public void A_shop_checks_its_books_before_they_are_used()
    {
        using BookFolder books = new(("nook", BookFolder.Nook));
        using StringWriter sound = new(),
            broken = new(),
            none = new();

        Assert.Equal(0, PriceBookCheck.Run(books.Location, sound));
        books.Write("spring", "{\n \"currency\": 1, \"prices\": [] }");
        Assert.Equal(1, PriceBookCheck.Run(books.Location, broken));
        Assert.Equal(1, PriceBookCheck.Run(Path.Combine(books.Location, "nowhere"), none));

        Assert.Equal("1 price book without faults." + Environment.NewLine, sound.ToString());
        Assert.StartsWith("spring.json:2: /currency wrong-type", broken.ToString(), StringComparison.Ordinal);
        Assert.Contains("The folder cannot be read", none.ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public async Task The_schema_knows_every_field_and_a_book_may_name_it()
    {
        using RunningService service = new();
        using HttpResponseMessage response = await service.Http.GetAsync(new Uri("/schemas/price-book.json", UriKind.Relative));
        JsonObject schema = await response.JsonAsync();
        JsonNode price = schema["properties"]!["prices"]!["items"]!;

        Assert.Equal("application/schema+json", response.Content.Headers.ContentType!.MediaType);
        Assert.Equal(["currency", "prices"], schema["required"]!.AsArray().Select(name => name!.GetValue<string>()).Order());
        Assert.False(schema["additionalProperties"]!.GetValue<bool>());
        Assert.Contains("yd", price["properties"]!["per"]!["enum"]!.AsArray().Select(word => word?.GetValue<string>()));
        Assert.Equal(20, price["properties"]!["breaks"]!["maxItems"]!.GetValue<double>());
        Assert.DoesNotContain("\\z", schema.ToJsonString(), StringComparison.Ordinal);
        Assert.NotEmpty(price["properties"]!["step"]!["description"]!.GetValue<string>());
        JsonObject demo = JsonNode.Parse(Repository.Read("src", "CushionService", "Demo", "PriceBooks", "nook.json"))!.AsObject();
        Assert.All(demo, member => Assert.True(schema["properties"]!.AsObject().ContainsKey(member.Key), member.Key));

        demo["$schema"] = "https://shop.example/schemas/price-book.json";
        using BookFolder books = new(("nook", demo.ToJsonString()));
        Assert.Empty(books.Faults);
    }

    [Fact]
    public async Task A_refused_book_is_seen_in_health_and_metrics()
    {
        using BookFolder books = new(("nook", BookFolder.Nook), ("other", BookFolder.Nook));
        using RunningService service = new(_ => { }, false, ("PriceBooks:Folder", books.Location));
        Assert.Equal("Healthy", (await HealthAsync(service))["status"]!.GetValue<string>());

        books.Write("nook", "{\n\"currency\": 1 }");
        PriceBookStore store = (PriceBookStore)service.Services.GetService(typeof(PriceBookStore))!;
        store.Reload();
        JsonObject health = await HealthAsync(service);
        string metrics = await service.Http.GetStringAsync(new Uri("/metrics", UriKind.Relative));

        Assert.Equal("Degraded", health["status"]!.GetValue<string>());
        Assert.Contains("nook.json, line 2", health.ToJsonString(), StringComparison.Ordinal);
        Assert.True(metrics.Contains("price_books", StringComparison.Ordinal), metrics);
        // Other services of the same process report theirs under the same name.
        Assert.Matches("cushionservice_price_books\\{[^}]*state=\"old\"", metrics);
    }

    private static async Task<JsonObject> HealthAsync(RunningService service)
    {
        using HttpResponseMessage response = await service.Http.GetAsync(new Uri("/health/ready", UriKind.Relative));
        Assert.Equal(HttpStatusCode.OK, response.StatusCode);
        return await response.JsonAsync();
    }
}
