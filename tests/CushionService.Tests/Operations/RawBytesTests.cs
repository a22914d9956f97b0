using System.Net.Sockets;
using System.Text;
using CushionService.Tests.Hosting;

namespace CushionService.Tests.Operations;

/// <summary>Bodies that no client would send: each is its caller's fault, and none is an error in the log.</summary>
public sealed class RawBytesTests
{
    [Fact]
    public async Task Bodies_that_cannot_be_read_are_refused_and_are_no_errors_of_the_service()
    {
        await using ServiceProcess service = await ServiceProcess.StartAsync();
        const string Web = "/cushionservice.v1.CushionService/Quote",
            Text = "application/grpc-web-text";

        Assert.StartsWith(
            "HTTP/1.1 400 ",
            await SendAsync(service, "/v1/yardage", "application/json", "Transfer-Encoding: chunked", "ffffffffffffffff\r\n")
        );
        Assert.StartsWith(
            "HTTP/1.1 400 ",
            await SendAsync(service, "/v1/yardage", "application/json", "Transfer-Encoding: chunked", "zz\r\n")
        );
        foreach (string noise in (string[])["!!!!", "A===", "AAAA!", "AAAAAP//"])
        {
            string answer = await SendAsync(service, Web, Text, $"Content-Length: {noise.Length}", noise);
            Assert.Contains("grpc-status: ", answer, StringComparison.OrdinalIgnoreCase);
            Assert.DoesNotContain("grpc-status: 2", answer, StringComparison.OrdinalIgnoreCase);
        }

        Assert.DoesNotContain(service.Lines, static line => line.Contains(" ERR]", StringComparison.Ordinal));
    }

    [Fact]
    public async Task Calls_that_are_reset_as_soon_as_they_begin_end_their_connection_and_fill_no_log()
    {
        await using ServiceProcess service = await ServiceProcess.StartAsync();
        for (int connection = 0; connection < 3; connection++)
        {
            using TcpClient caller = new();
            await caller.ConnectAsync(service.Grpc.Host, service.Grpc.Port);
            await Assert.ThrowsAsync<IOException>(() => ResetAsync(caller.GetStream(), 100_000));
        }

        using HttpClient http = new() { BaseAddress = service.Rest };
        Assert.True((await http.GetAsync(new Uri("/v1/catalogue", UriKind.Relative))).IsSuccessStatusCode);
        Assert.DoesNotContain(
            service.Lines,
            static line => line.Contains(" ERR]", StringComparison.Ordinal) || line.Contains(" FTL]", StringComparison.Ordinal)
        );
    }

    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public async Task Callers_that_hang_up_in_the_middle_of_an_order_are_no_errors_of_the_service(bool reset)
    {
        await using ServiceProcess service = await ServiceProcess.StartAsync();
        string[] paths = ["/v1/yardage", "/v1/quotes", "/v1/quotes/stream", "/v1/fits"];
        await Task.WhenAll(
            Enumerable
                .Range(0, 80)
                .Select(async call =>
                {
                    using TcpClient caller = new();
                    await caller.ConnectAsync(service.Rest.Host, service.Rest.Port);
                    string type = paths[call % paths.Length].EndsWith("stream", StringComparison.Ordinal)
                        ? "application/x-ndjson"
                        : "application/json";
                    await caller
                        .GetStream()
                        .WriteAsync(
                            Encoding.ASCII.GetBytes(
                                $"POST {paths[call % paths.Length]} HTTP/1.1\r\nHost: x\r\nContent-Type: {type}\r\n"
                                    + "Content-Length: 500\r\n\r\n"
                                    + "{\"units\":\"in\","
                            )
                        );
                    await Task.Delay(call % 20);
                    caller.LingerState = new LingerOption(reset, 0);
                })
        );

        using HttpClient http = new() { BaseAddress = service.Rest };
        Assert.True((await http.GetAsync(new Uri("/v1/catalogue", UriKind.Relative))).IsSuccessStatusCode);
        Assert.DoesNotContain(service.Lines, static line => line.Contains(" ERR]", StringComparison.Ordinal));
    }

    // HEADERS and RST_STREAM of one call after another (RFC 9113, sections 6.2 and 6.4), and nothing is read.
    private static async Task ResetAsync(NetworkStream stream, int calls)
    {
        await stream.WriteAsync("PRI * HTTP/2.0\r\n\r\nSM\r\n\r\n\0\0\0\u0004\0\0\0\0\0"u8.ToArray());
        byte[] fields = [0x83, 0x86, 0x04, 1, (byte)'/', 0x01, 1, (byte)'x'];
        for (uint id = 1; id < 2 * calls; id += 2)
        {
            byte[] both =
            [
                .. (byte[])[0, 0, (byte)fields.Length, 1, 4, .. Id(id), .. fields],
                .. (byte[])[0, 0, 4, 3, 0, .. Id(id), 0, 0, 0, 8],
            ];
            await stream.WriteAsync(both);
        }
    }

    private static byte[] Id(uint stream) => [(byte)(stream >> 24), (byte)(stream >> 16), (byte)(stream >> 8), (byte)stream];

    private static async Task<string> SendAsync(ServiceProcess service, string path, string type, string framing, string body)
    {
        using TcpClient caller = new();
        await caller.ConnectAsync(service.Rest.Host, service.Rest.Port);
        NetworkStream stream = caller.GetStream();
        await stream.WriteAsync(
            Encoding.ASCII.GetBytes(
                $"POST {path} HTTP/1.1\r\nHost: x\r\nConnection: close\r\nContent-Type: {type}\r\n{framing}\r\n\r\n{body}"
            )
        );
        using StreamReader reader = new(stream);
        return await reader.ReadToEndAsync().WaitAsync(TimeSpan.FromSeconds(20));
    }
}
