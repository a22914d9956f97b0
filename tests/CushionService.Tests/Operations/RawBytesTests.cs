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
