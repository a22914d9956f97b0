using System.Diagnostics;
using System.Net;
using System.Net.Sockets;
using CushionService.Operations;
using CushionService.Tests.Hosting;

namespace CushionService.Tests.Operations;

/// <summary>Connections stay below the system's limit, and the platform may have a port of its own.</summary>
public sealed class PortTests
{
    [Theory]
    [InlineData(600L, 2, 340, 66)]
    [InlineData(1_024L, 2, 340, 278)]
    [InlineData(1_024L, 3, 400, 165)]
    [InlineData(1_048_576L, 2, 340, 10_000)]
    [InlineData(null, 2, 340, 10_000)]
    public void Connections_leave_the_process_its_own_descriptors(long? limit, int addresses, long open, long connections) =>
        Assert.Equal(connections, Descriptors.ConnectionsFor(addresses, limit, open));

    [Fact]
    public void Without_room_for_connections_the_start_says_so() =>
        Assert.Contains(
            "ulimit -n",
            Assert.Throws<InvalidOperationException>(() => Descriptors.ConnectionsFor(2, 480, 340)).Message,
            StringComparison.Ordinal
        );

    [Theory]
    [InlineData("ulimit -n 300; exec dotnet \"$0\"", 1, "ulimit -n")]
    [InlineData("exec dotnet \"$0\" --check-prices", 2, "--check-prices FOLDER")]
    [InlineData("exec dotnet \"$0\" --check-health now", 2, "--check-health")]
    public async Task A_start_that_cannot_be_meant_ends_at_once_and_says_why(string command, int code, string told)
    {
        using Process started = Process.Start(
            new ProcessStartInfo("bash", ["-c", command, typeof(Program).Assembly.Location]) { RedirectStandardError = true }
        )!;
        try
        {
            string error = await started.StandardError.ReadToEndAsync().WaitAsync(TimeSpan.FromMinutes(1));
            await started.WaitForExitAsync();

            Assert.Equal(code, started.ExitCode);
            Assert.Contains(told, error, StringComparison.Ordinal);
        }
        finally
        {
            started.Kill(entireProcessTree: true);
        }
    }

    [Theory]
    [InlineData("10.0.0.0/8", 3)]
    [InlineData("127.0.0.0/8", 20)]
    public async Task One_address_has_a_part_of_the_connections_unless_it_is_a_known_proxy(string proxies, int expected)
    {
        await using ServiceProcess service = await ServiceProcess.StartAsync(
            ("Lifetime__ConnectionsOfAddress", "3"),
            ("Access__Proxies__0", proxies)
        );
        List<TcpClient> opened = [];
        try
        {
            for (int connection = 0; connection < 20; connection++)
            {
                TcpClient client = new();
                opened.Add(client);
                await client.ConnectAsync(service.Rest.Host, service.Rest.Port);
            }

            // What is closed at once reads as ended; what is open waits for a request.
            await Task.Delay(1_000);
            Assert.Equal(expected, opened.Count(client => !(client.Client.Poll(0, SelectMode.SelectRead) && client.Available == 0)));
            opened.ForEach(client => client.Dispose());
            using HttpClient http = new() { BaseAddress = service.Rest };
            for (int wait = 0; wait < 50 && !await IsAliveAsync(http); wait++)
            {
                await Task.Delay(100);
            }

            Assert.True(await IsAliveAsync(http));
        }
        finally
        {
            opened.ForEach(client => client.Dispose());
        }
    }

    [Fact]
    public async Task Health_and_metrics_are_at_the_port_of_the_platform_and_nowhere_else()
    {
        await using ServiceProcess service = await ServiceProcess.StartAsync(("MANAGEMENT_URLS", $"http://127.0.0.1:{FreePort()}"));
        // The platform's port is the second that the service names.
        using HttpClient rest = new() { BaseAddress = service.Rest },
            platform = new() { BaseAddress = service.Grpc };

        Assert.Equal(HttpStatusCode.NotFound, await StatusAsync(rest, "/health/live"));
        Assert.Equal(HttpStatusCode.NotFound, await StatusAsync(rest, "/metrics"));
        Assert.Equal(HttpStatusCode.NotFound, await StatusAsync(rest, "/metrics/"));
        Assert.Equal(HttpStatusCode.NotFound, await StatusAsync(rest, "/Metrics"));
        Assert.Equal(HttpStatusCode.NotFound, await StatusAsync(rest, "/HEALTH/live/"));
        Assert.Equal(HttpStatusCode.OK, await StatusAsync(rest, "/v1/catalogue"));
        Assert.Equal(HttpStatusCode.OK, await StatusAsync(platform, "/health/ready"));
        Assert.Equal(HttpStatusCode.OK, await StatusAsync(platform, "/metrics"));
        Assert.Equal(HttpStatusCode.NotFound, await StatusAsync(platform, "/v1/catalogue"));
    }

    private static async Task<bool> IsAliveAsync(HttpClient http)
    {
        try
        {
            return await StatusAsync(http, "/health/live") == HttpStatusCode.OK;
        }
        catch (HttpRequestException)
        {
            return false;
        }
    }

    private static int FreePort()
    {
        using TcpListener listener = new(IPAddress.Loopback, 0);
        listener.Start();
        return ((IPEndPoint)listener.LocalEndpoint).Port;
    }

    private static async Task<HttpStatusCode> StatusAsync(HttpClient http, string path)
    {
        using HttpResponseMessage response = await http.GetAsync(new Uri(path, UriKind.Relative));
        return response.StatusCode;
    }
}
