using System.Text;
using System.Text.Json;
using System.Text.Json.Nodes;
using CushionService.Grpc.V1;
using CushionService.Json;
using CushionService.Tests.Hosting;

namespace CushionService.Tests.Rest;

/// <summary>What is sent in a few bytes is not answered with thousands of findings, and no record is made for each entry of a list that is
/// far too long.</summary>
public sealed class LongListTests(RunningService service) : IClassFixture<RunningService>
{
    private const int Many = 20_000;

    [Theory]
    [InlineData("bays", "{}", 50)]
    [InlineData("cushions", "{}", 200)]
    [InlineData("prices", "{}", 500)]
    [InlineData("lines", "{\"label\":7}", 100)]
    public async Task Of_a_list_that_is_too_long_one_entry_too_many_is_read(string list, string entry, int most)
    {
        string body = $$"""{"units":"in","{{list}}":[{{string.Join(',', Enumerable.Repeat(entry, Many))}}]}""";
        JsonObject problem = await RefusedAsync("quotes", body);

        string[] found = problem.Violations();
        Assert.DoesNotContain(found, place => place.StartsWith($"/{list}/{most + 1}", StringComparison.Ordinal));
        if (!entry.Contains('7', StringComparison.Ordinal))
        {
            Assert.Contains($"/{list} out-of-range", found);
        }
    }

    [Fact]
    public async Task The_same_is_true_of_messages()
    {
        Order order = new() { Units = Units.In };
        order.Bays.Add(Enumerable.Range(0, Many).Select(_ => new Bay()));
        ValidateResponse answer = await service.Calls.ValidateAsync(new() { Order = order });

        Assert.Contains(answer.Violations, found => found is { Pointer: "/bays", Code: "out-of-range" });
        Assert.DoesNotContain(answer.Violations, found => found.Pointer.StartsWith("/bays/51", StringComparison.Ordinal));
    }

    [Fact]
    public async Task The_first_twenty_unknown_fields_are_told_which_fields_there_are()
    {
        string fields = string.Join(',', Enumerable.Range(0, 500).Select(i => $"\"f{i}\":0"));
        JsonObject problem = await RefusedAsync("quotes", $$"""{"units":"in","cushions":[{{{fields}}}]}""");

        string[] details =
        [
            .. problem["violations"]!
                .AsArray()
                .Where(found => (string?)found!["code"] == "unknown-field")
                .Select(found => (string)found!["detail"]!),
        ];
        Assert.Equal(500, details.Length);
        Assert.Equal(20, details.Count(detail => detail.Contains("construction", StringComparison.Ordinal)));
    }

    [Theory]
    [InlineData("edgingAt")]
    [InlineData("handleSides")]
    public async Task An_estimate_has_at_most_twenty_faults(string list)
    {
        using HttpResponseMessage response = await service.Http.GetAsync(
            new Uri($"/v1/estimate?units=in&{list}={new string(',', 1000)}", UriKind.Relative)
        );
        Assert.InRange((await response.ProblemAsync())["violations"]!.AsArray().Count, 1, 20);
    }

    [Theory]
    [InlineData(500, false)]
    [InlineData(501, true)]
    public void Lists_are_counted_wherever_they_are(int entries, bool expected)
    {
        string list = $"[{string.Join(',', Enumerable.Repeat("{\"a\":[1,2]}", entries))}]";
        Assert.Equal(expected, LongLists.AreIn(Encoding.UTF8.GetBytes($"{{\"x\":{{\"y\":[[],{list}]}}}}")));
        Assert.Equal(expected, LongLists.AreIn(Encoding.UTF8.GetBytes($$"""{"x":{{list}}, no JSON""")));
    }

    [Fact]
    public void Five_hundred_pieces_or_prices_are_the_most()
    {
        Assert.Equal(500, LongLists.Most);
        Assert.False(LongLists.AreIn(JsonSerializer.SerializeToUtf8Bytes(new string('[', 9000))));
    }

    private async Task<JsonObject> RefusedAsync(string call, string body)
    {
        using HttpResponseMessage response = await service.PostAsync(call, Encoding.UTF8.GetBytes(body));
        return await response.ProblemAsync();
    }
}
