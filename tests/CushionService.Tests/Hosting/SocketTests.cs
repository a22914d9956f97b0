using System.Diagnostics;
using System.Net;
using System.Text;
using CushionService.Grpc.V1;
using Grpc.Net.Client;

namespace CushionService.Tests.Hosting;

/// <summary>The service as a process of its own, over real sockets: REST on one port, gRPC in clear text on the other.</summary>
public sealed class SocketTests
{
    private static readonly TimeSpan Patience = TimeSpan.FromSeconds(60);

    [Fact]
    public async Task Each_door_answers_on_its_own_port()
    {
        using Process process = Start();
        try
        {
            string[] addresses = await ListeningAsync(process, 2).WaitAsync(Patience);
            using HttpClient http = new() { BaseAddress = new Uri(addresses[0]), Timeout = Patience };
            using GrpcChannel channel = GrpcChannel.ForAddress(addresses[1]);
            using StringContent order = new(Order, Encoding.UTF8, "application/json");
            using HttpResponseMessage rest = await http.PostAsync("/v1/yardage", order);
            GetCatalogueResponse grpc = await new global::CushionService.Grpc.V1.CushionService.CushionServiceClient(channel).GetCatalogueAsync(new());

            Assert.Equal(HttpStatusCode.OK, rest.StatusCode);
            Assert.Equal(HttpVersion.Version11, rest.Version);
            Assert.Equal((await rest.JsonAsync())["engine"]!.GetValue<string>(), grpc.Engine);
        }
        finally
        {
            process.Kill(entireProcessTree: true);
            await process.WaitForExitAsync();
        }
    }

    private const string Order = """
        {"units":"in","pieces":[{"id":"runner","width":12,"length":40}],"fabrics":[{"id":"main","width":54,"sold":{"unit":"yd","step":"1/8"}}]}
        """;

    private static Process Start()
    {
        ProcessStartInfo start = new("dotnet", [typeof(Program).Assembly.Location]) { RedirectStandardOutput = true };
        start.Environment["ASPNETCORE_URLS"] = "http://127.0.0.1:0";
        start.Environment["GRPC_URLS"] = "http://127.0.0.1:0";
        return Process.Start(start)!;
    }

    // The host says where it listens, REST first.
    private static async Task<string[]> ListeningAsync(Process process, int count)
    {
        List<string> addresses = [];
        while (addresses.Count < count && await process.StandardOutput.ReadLineAsync() is { } line)
        {
            Assert.DoesNotContain("WRN", line, StringComparison.Ordinal);
            int at = line.IndexOf("Now listening on: ", StringComparison.Ordinal);
            if (at >= 0)
            {
                addresses.Add(line[(at + "Now listening on: ".Length)..].Trim());
            }
        }

        return [.. addresses];
    }
}
