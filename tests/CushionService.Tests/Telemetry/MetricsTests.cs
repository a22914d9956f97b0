using System.Net;
using CushionService.Tests.Hosting;

namespace CushionService.Tests.Telemetry;

/// <summary>What a scrape of <c>/metrics</c> tells (Prometheus text format 0.0.4), and what it does not.</summary>
public sealed class MetricsTests : IDisposable
{
    private const string Fabric = """[{"id":"secret-fabric","width":54,"sold":{"unit":"yd","step":"1/8"}}]""";

    private readonly RunningService _service = new();

    [Fact]
    public async Task A_scrape_counts_answers_refusals_steps_and_fabric_and_names_no_order()
    {
        using HttpResponseMessage answered = await _service.PostAsync(
            "yardage",
            $$"""{"reference":"secret-order","units":"in","effort":"quick","pieces":[{"id":"secret-piece","width":12"""
                + $$""","length":40,"quantity":7}],"fabrics":{{Fabric}}}"""
        );
        using HttpResponseMessage refused = await _service.PostAsync(
            "yardage",
            $$"""{"units":"in","pieces":[{"id":"secret-piece","width":90,"length":90}],"fabrics":{{Fabric}}}"""
        );
        Assert.Equal((HttpStatusCode.OK, HttpStatusCode.UnprocessableEntity), (answered.StatusCode, refused.StatusCode));

        string text = await _service.Http.GetStringAsync(new Uri("/metrics", UriKind.Relative));
        Assert.Contains("http_server_request_duration_seconds_count", text, StringComparison.Ordinal);
        Assert.True(Value(text, "cushionservice_orders_total", "outcome=\"answered\"") >= 1);
        Assert.True(Value(text, "cushionservice_orders_total", "outcome=\"refused\"") >= 1);
        Assert.True(Value(text, "cushionservice_refusals_total", "code=\"wider-than-fabric\"") >= 1);
        Assert.True(Value(text, "cushionservice_search_steps_total", "") >= 1);
        Assert.True(Value(text, "cushionservice_layouts_total", "proven=") >= 1);
        Assert.True(Value(text, "cushionservice_fabric_sold_meters_total", "") > 0);
        Assert.True(Value(text, "cushionservice_fabric_saved_meters_total", "") >= 0);
        Assert.True(Value(text, "cushionservice_queue_length", "") >= 0);
        Assert.True(Value(text, "cushionservice_queue_wait_seconds_count", "") >= 2);
        Assert.DoesNotContain("secret", text, StringComparison.Ordinal);
    }

    public void Dispose() => _service.Dispose();

    private static double Value(string text, string name, string label)
    {
        string line =
            text.Split('\n')
                .FirstOrDefault(line => line.StartsWith(name, StringComparison.Ordinal) && line.Contains(label, StringComparison.Ordinal))
            ?? throw new InvalidOperationException($"There is no {name} with {label} in:\n{text}");
        return double.Parse(line[(line.LastIndexOf('}') + 1)..].Trim().Split(' ')[0], System.Globalization.CultureInfo.InvariantCulture);
    }
}
