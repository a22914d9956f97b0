using System.Net;
using CushionService.Operations;
using CushionService.Tests.Hosting;

namespace CushionService.Tests.Operations;

/// <summary>Connections stay below the system's limit, and the platform may have a port of its own.</summary>
public sealed class PortTests
{
    [Theory]
    [InlineData(600, 2, 172)]
    [InlineData(1_024, 2, 384)]
    [InlineData(100, 2, 16)]
    [InlineData(1_048_576, 2, 10_000)]
    public void Connections_leave_the_process_its_own_descriptors(long limit, int addresses, long connections) =>
        Assert.Equal(connections, Descriptors.ConnectionsFor(addresses, limit));

    [Fact]
    public async Task Health_and_metrics_are_at_the_port_of_the_platform_and_nowhere_else()
    {
        await using ServiceProcess service = await ServiceProcess.StartAsync(("MANAGEMENT_URLS", $"http://127.0.0.1:{FreePort()}"));
        // The platform's port is the second that the service names.
        using HttpClient rest = new() { BaseAddress = service.Rest },
            platform = new() { BaseAddress = service.Grpc };

        Assert.Equal(HttpStatusCode.NotFound, await StatusAsync(rest, "/health/live"));
        Assert.Equal(HttpStatusCode.NotFound, await StatusAsync(rest, "/metrics"));
        Assert.Equal(HttpStatusCode.OK, await StatusAsync(rest, "/v1/catalogue"));
        Assert.Equal(HttpStatusCode.OK, await StatusAsync(platform, "/health/ready"));
        Assert.Equal(HttpStatusCode.OK, await StatusAsync(platform, "/metrics"));
        Assert.Equal(HttpStatusCode.NotFound, await StatusAsync(platform, "/v1/catalogue"));
    }

    private static int FreePort()
    {
        using System.Net.Sockets.TcpListener listener = new(IPAddress.Loopback, 0);
        listener.Start();
        return ((IPEndPoint)listener.LocalEndpoint).Port;
    }

    private static async Task<HttpStatusCode> StatusAsync(HttpClient http, string path)
    {
        using HttpResponseMessage response = await http.GetAsync(new Uri(path, UriKind.Relative));
        return response.StatusCode;
    }
}
        Assert.Equal(HttpStatusCode.NotFound, await StatusAsync(rest, "/metrics/"));
        Assert.Equal(HttpStatusCode.NotFound, await StatusAsync(rest, "/Metrics"));
        Assert.Equal(HttpStatusCode.NotFound, await StatusAsync(rest, "/HEALTH/live/"));
