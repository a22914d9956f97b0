using System.Net;
using System.Text;
using System.Text.Json.Nodes;
using CushionService.Tests.Hosting;

namespace CushionService.Tests.Telemetry;

/// <summary>What the service logs and exports as a process of its own.</summary>
public sealed class LogTests
{
    private const string Trace = "4bf92f3577b34da6a3ce929d0e0e4736";
    private const string Order = """
        {"reference":"secret-order","customer":"secret customer","due":"2026-12-24","note":"a secret note",
          "units":"in","pieces":[{"id":"secret-piece","width":12,"length":40}],
          "fabrics":[{"id":"secret-fabric","width":54,"sold":{"unit":"yd","step":"1/8"}}]}
        """;

    [Fact]
    public async Task Lines_are_compact_json_with_the_caller_s_trace_and_nothing_of_the_order()
    {
        await using ServiceProcess service = await ServiceProcess.StartAsync(
            ("Serilog__WriteTo__0__Args__formatter", "Serilog.Formatting.Compact.CompactJsonFormatter, Serilog.Formatting.Compact"),
            ("Serilog__MinimumLevel__Override__Microsoft.AspNetCore", "Information")
        );
        await SendAsync(service, key: "not-a-key-of-ours");
        await WaitForAsync(() => service.Lines.Any(line => line.Contains(Trace, StringComparison.Ordinal)));

        Assert.All(service.Lines, line => Assert.NotNull(JsonNode.Parse(line)!["@t"]));
        Assert.Contains(service.Lines, line => JsonNode.Parse(line)!["@tr"]?.GetValue<string>() == Trace);
        Assert.All(service.Lines, line => Assert.DoesNotContain("secret", line, StringComparison.Ordinal));
        Assert.All(service.Lines, line => Assert.DoesNotContain("not-a-key-of-ours", line, StringComparison.Ordinal));
    }

    [Fact]
    public async Task Spans_are_exported_where_the_environment_says()
    {
        TaskCompletionSource<byte[]> spans = new();
        using HttpListener collector = new();
        collector.Prefixes.Add($"http://127.0.0.1:{FreePort()}/");
        collector.Start();
        _ = CollectAsync(collector, spans);
        await using ServiceProcess service = await ServiceProcess.StartAsync(
            ("OTEL_EXPORTER_OTLP_ENDPOINT", collector.Prefixes.Single()),
            ("OTEL_EXPORTER_OTLP_PROTOCOL", "http/protobuf"),
            ("OTEL_BSP_SCHEDULE_DELAY", "100")
        );
        await SendAsync(service);

        byte[] exported = await spans.Task.WaitAsync(TimeSpan.FromSeconds(60));
        Assert.True(exported.AsSpan().IndexOf(Convert.FromHexString(Trace)) >= 0);
        Assert.True(exported.AsSpan().IndexOf("secret"u8) < 0);
    }

    private static async Task SendAsync(ServiceProcess service, string? key = null)
    {
        using HttpClient http = new() { BaseAddress = service.Rest };
        using HttpRequestMessage request = new(HttpMethod.Post, "/v1/yardage")
        {
            Content = new StringContent(Order, Encoding.UTF8, "application/json"),
        };
        request.Headers.Add("traceparent", $"00-{Trace}-00f067aa0ba902b7-01");
        if (key is not null)
        {
            request.Headers.Add("X-Api-Key", key);
        }

        using HttpResponseMessage response = await http.SendAsync(request);
        Assert.Equal(key is null ? HttpStatusCode.OK : HttpStatusCode.Unauthorized, response.StatusCode);
    }

    // The spans come to a path of their own, beside metrics and logs (OpenTelemetry Protocol 1.x over HTTP).
    private static async Task CollectAsync(HttpListener collector, TaskCompletionSource<byte[]> spans)
    {
        while (collector.IsListening)
        {
            HttpListenerContext call = await collector.GetContextAsync();
            using MemoryStream body = new();
            await call.Request.InputStream.CopyToAsync(body);
            call.Response.Close();
            if (call.Request.Url!.AbsolutePath == "/v1/traces")
            {
                spans.TrySetResult(body.ToArray());
            }
        }
    }

    private static int FreePort()
    {
        using System.Net.Sockets.TcpListener listener = new(IPAddress.Loopback, 0);
        listener.Start();
        return ((IPEndPoint)listener.LocalEndpoint).Port;
    }

    private static async Task WaitForAsync(Func<bool> holds)
    {
        for (int tries = 0; tries < 600 && !holds(); tries++)
        {
            await Task.Delay(100);
        }
    }
}
