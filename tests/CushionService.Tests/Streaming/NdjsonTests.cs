using System.Net;
using System.Net.Http.Headers;
using System.Text;
using System.Text.Json.Nodes;
using CushionService.Tests.Hosting;
using CushionService.Tests.Orders;

namespace CushionService.Tests.Streaming;

/// <summary>One order a line in, one answer a line out.</summary>
public sealed class NdjsonTests(RunningService service) : IClassFixture<RunningService>
{
    internal const string Runner =
        """{"units":"in","effort":"quick","pieces":[{"id":"runner","width":12,"length":40}]"""
        + ""","fabrics":[{"id":"main","width":54,"sold":{"unit":"yd","step":"1/8"}}]}""";

    [Fact]
    public async Task Every_line_is_answered_in_its_place_as_a_call_of_its_own_would_be()
    {
        string[] orders =
        [
            .. Enumerable
                .Range(0, 60)
                .Select(number => (number % 3 == 0 ? OrderGenerator.Careless(number) : OrderGenerator.Sound(number)).ToJsonString()),
        ];
        string[] answers = await StreamAsync(string.Join('\n', orders));

        Assert.Equal(orders.Length, answers.Length);
        int refused = 0;
        for (int i = 0; i < orders.Length; i++)
        {
            using HttpResponseMessage single = await service.PostAsync("quotes", orders[i]);
            string expected = await single.Content.ReadAsStringAsync();
            if (single.StatusCode == HttpStatusCode.OK)
            {
                Assert.Equal(expected, answers[i]);
                continue;
            }

            refused++;
            JsonObject problem = JsonNode.Parse(answers[i])!.AsObject();
            Assert.Equal(i + 1, problem["line"]!.GetValue<int>());
            Assert.Equal(JsonNode.Parse(expected)!.AsObject().Violations(), problem.Violations());
            Assert.Equal((int)single.StatusCode, problem["status"]!.GetValue<int>());
        }

        Assert.InRange(refused, 1, orders.Length / 2);
    }

    [Fact]
    public async Task Five_hundred_orders_keep_their_order_with_one_in_a_hundred_bad()
    {
        string[] orders =
        [
            .. Enumerable
                .Range(1, 500)
                .Select(number => number % 100 == 50 ? "{\"units\":" : Runner.Insert(1, $"\"reference\":\"{number}\",")),
        ];
        string[] answers = await StreamAsync(string.Join("\r\n", orders) + "\r\n");

        Assert.Equal(500, answers.Length);
        for (int number = 1; number <= 500; number++)
        {
            JsonObject answer = JsonNode.Parse(answers[number - 1])!.AsObject();
            if (number % 100 == 50)
            {
                Assert.Equal((400, number), (answer["status"]!.GetValue<int>(), answer["line"]!.GetValue<int>()));
                Assert.Equal([" not-json"], answer.Violations());
            }
            else
            {
                Assert.Equal($"{number}", answer["reference"]!.GetValue<string>());
            }
        }
    }

    // The line of the stream is the only one that the answer speaks of.
    [Fact]
    public async Task A_line_that_is_not_JSON_is_told_as_this_line()
    {
        string[] answers = await StreamAsync($"{Runner}\n{{bad\n");
        JsonNode problem = JsonNode.Parse(answers[1])!,
            violation = problem["violations"]![0]!;

        Assert.Equal(2, problem["line"]!.GetValue<int>());
        Assert.Equal("This line is not JSON: the error is at byte 2.", (string)violation["detail"]!);
        Assert.Equal("""{"byte":2}""", violation["arguments"]!.ToJsonString());
    }

    [Fact]
    public async Task Blank_lines_count_but_are_not_answered()
    {
        string[] answers = await StreamAsync($"\n \t\r\n{Runner}\n\n[]\n\n");

        Assert.Equal(2, answers.Length);
        Assert.Contains("\"layouts\"", answers[0], StringComparison.Ordinal);
        Assert.Equal(5, JsonNode.Parse(answers[1])!["line"]!.GetValue<int>());
    }

    [Theory]
    [InlineData("", 0)]
    [InlineData("\n", 0)]
    [InlineData("{", 1)]
    public async Task A_body_may_end_anywhere(string end, int extra)
    {
        string[] answers = await StreamAsync($"{Runner}\n{Runner}\n{end}");

        Assert.Equal(2 + extra, answers.Length);
        Assert.All(answers[2..], answer => Assert.Equal([" not-json"], JsonNode.Parse(answer)!.AsObject().Violations()));
    }

    [Fact]
    public async Task A_last_line_without_its_end_is_an_order_still() =>
        Assert.Contains("\"layouts\"", (await StreamAsync(Runner)).Single(), StringComparison.Ordinal);

    [Theory]
    [InlineData("\n")]
    [InlineData("")]
    public async Task A_line_beyond_the_limit_is_refused_in_its_place(string end)
    {
        string huge = "{\"reference\":\"" + new string('x', 5 << 20) + "\"}";
        string[] answers = await StreamAsync($"{Runner}\n{huge}\n{Runner}\n{huge}{end}");

        Assert.Equal(4, answers.Length);
        Assert.All(
            [1, 3],
            i =>
            {
                JsonObject problem = JsonNode.Parse(answers[i])!.AsObject();
                Assert.Equal(
                    (413, i + 1, "order-too-long"),
                    (problem["status"]!.GetValue<int>(), problem["line"]!.GetValue<int>(), problem["code"]!.GetValue<string>())
                );
            }
        );
        Assert.Equal(answers[0], answers[2]);
    }

    [Fact]
    public async Task A_line_of_exactly_the_limit_is_read()
    {
        string padded = Runner + new string(' ', (1 << 20) - Runner.Length);
        string[] answers = await StreamAsync($"{padded}\n{padded} \n");

        Assert.Contains("\"layouts\"", answers[0], StringComparison.Ordinal);
        Assert.Equal(413, JsonNode.Parse(answers[1])!["status"]!.GetValue<int>());
    }

    [Theory]
    [InlineData("application/json", null, HttpStatusCode.UnsupportedMediaType)]
    [InlineData("application/x-ndjson; charset=utf-16", null, HttpStatusCode.UnsupportedMediaType)]
    [InlineData("application/x-ndjson", "text/html", HttpStatusCode.NotAcceptable)]
    [InlineData("application/x-ndjson; charset=utf-8", "application/*", HttpStatusCode.OK)]
    public async Task The_form_of_the_stream_is_agreed_first(string contentType, string? accept, HttpStatusCode expected)
    {
        using HttpRequestMessage request = new(HttpMethod.Post, "/v1/quotes/stream")
        {
            Content = new ByteArrayContent(Encoding.UTF8.GetBytes(Runner)),
        };
        request.Content.Headers.ContentType = MediaTypeHeaderValue.Parse(contentType);
        request.Headers.TryAddWithoutValidation("Accept", accept);
        using HttpResponseMessage response = await service.Http.SendAsync(request);

        Assert.Equal(expected, response.StatusCode);
    }

    private async Task<string[]> StreamAsync(string lines)
    {
        using HttpResponseMessage response = await service.PostAsync(
            "quotes/stream",
            Encoding.UTF8.GetBytes(lines),
            "application/x-ndjson"
        );
        Assert.Equal(HttpStatusCode.OK, response.StatusCode);
        Assert.Equal("application/x-ndjson", response.Content.Headers.ContentType?.MediaType);
        string body = await response.Content.ReadAsStringAsync();
        Assert.True(body.Length == 0 || body.EndsWith('\n'));
        return body.Split('\n')[..^1];
    }
}
