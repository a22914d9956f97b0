using System.Globalization;
using System.Net;
using System.Text.Json.Nodes;
using CushionService.Tests.Hosting;
using Grpc.Core;

namespace CushionService.Tests.BothDoors;

/// <summary>Orders with every field of the contract get the same answer, or the same refusal, through either door.
/// <c>CUSHION_PARITY_ORDERS=2000</c> makes a long run of it, from the order that <c>CUSHION_PARITY_FROM</c> numbers.</summary>
public sealed class EveryFieldTests(RunningService service) : IClassFixture<RunningService>
{
    private static readonly int Count = Setting("CUSHION_PARITY_ORDERS", 8),
        From = Setting("CUSHION_PARITY_FROM", 0);

    private static readonly string[] Languages = ["en", "de", "fr", "es"];

    [Fact]
    public async Task Orders_of_the_counter_are_answered_alike()
    {
        List<string> differences = [];
        (int asked, int answered) = (0, 0);
        for (int number = From; number < From + Count; number++)
        {
            if (CounterOrders.Of(number) is not var (call, order))
            {
                continue;
            }

            string language = Languages[number % Languages.Length];
            using HttpResponseMessage response = await service.PostInAsync(call, order.ToJsonString(), language);
            JsonObject rest = await response.JsonAsync();
            (StatusCode status, JsonObject grpc) = await SecondDoor.CallAsync(service, call, order, language);
            asked++;
            answered += status == StatusCode.OK ? 1 : 0;
            JsonNode? expected =
                status == StatusCode.OK ? Wire.Plain(rest) : new JsonObject { ["violations"] = Wire.Plain(rest["violations"]) };
            if ((response.StatusCode == HttpStatusCode.OK) != (status == StatusCode.OK) || !JsonNode.DeepEquals(expected, grpc))
            {
                differences.Add($"{number} {call}: {Difference(expected, grpc, "")}");
            }
        }

        Assert.True(differences.Count == 0, string.Join('\n', differences.Take(20).Prepend($"{differences.Count} of {asked} differ")));
        Assert.InRange(answered, asked / 2, asked);
    }

    private static int Setting(string name, int usual) =>
        Environment.GetEnvironmentVariable(name) is { } text ? int.Parse(text, CultureInfo.InvariantCulture) : usual;

    // The first place at which the answers are not the same.
    private static string Difference(JsonNode? rest, JsonNode? grpc, string place)
    {
        switch (rest, grpc)
        {
            case (JsonObject one, JsonObject other):
                string name = one.Select(member => member.Key)
                    .Concat(other.Select(member => member.Key))
                    .First(name => one.ContainsKey(name) != other.ContainsKey(name) || !JsonNode.DeepEquals(one[name], other[name]));
                return one.ContainsKey(name) && other.ContainsKey(name)
                    ? Difference(one[name], other[name], $"{place}/{name}")
                    : $"{place}/{name} is in one of them alone";
            case (JsonArray one, JsonArray other) when one.Count == other.Count:
                int at = Enumerable.Range(0, one.Count).First(i => !JsonNode.DeepEquals(one[i], other[i]));
                return Difference(one[at], other[at], $"{place}/{at}");
            default:
                return $"{place}: REST {rest?.ToJsonString() ?? "null"}, gRPC {grpc?.ToJsonString() ?? "null"}";
        }
    }
}
