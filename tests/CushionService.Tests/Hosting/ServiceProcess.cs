using System.Diagnostics;

namespace CushionService.Tests.Hosting;

/// <summary>The service as a process of its own, on two free loopback ports.</summary>
internal sealed class ServiceProcess : IAsyncDisposable
{
    private static readonly TimeSpan Patience = TimeSpan.FromMinutes(3);

    private readonly Process _process;
    private readonly List<string> _lines = [];

    private ServiceProcess(Process process) => _process = process;

    public Uri Rest { get; private set; } = null!;

    public Uri Grpc { get; private set; } = null!;

    /// <summary>What it has logged so far.</summary>
    public IReadOnlyList<string> Lines
    {
        get
        {
            lock (_lines)
            {
                return [.. _lines];
            }
        }
    }

    /// <summary>Starts the service, and waits until it listens.</summary>
    /// <param name="settings">Environment variables.</param>
    public static async Task<ServiceProcess> StartAsync(params (string Name, string Value)[] settings)
    {
        ProcessStartInfo start = new("dotnet", [typeof(Program).Assembly.Location]) { RedirectStandardOutput = true };
        foreach (
            (string name, string value) in ((string, string)[])
                [("ASPNETCORE_URLS", "http://127.0.0.1:0"), ("GRPC_URLS", "http://127.0.0.1:0"), .. settings]
        )
        {
            start.Environment[name] = value;
        }

        ServiceProcess service = new(Process.Start(start)!);
        // The host says where it listens, REST first.
        Uri[] addresses = await service.ListeningAsync().WaitAsync(Patience);
        (service.Rest, service.Grpc) = (addresses[0], addresses[1]);
        _ = service.ReadAsync();
        return service;
    }

    /// <summary>Ends the process.</summary>
    public async ValueTask DisposeAsync()
    {
        _process.Kill(entireProcessTree: true);
        await _process.WaitForExitAsync();
        _process.Dispose();
    }

    private async Task<Uri[]> ListeningAsync()
    {
        const string Said = "Now listening on: ";
        List<Uri> addresses = [];
        while (addresses.Count < 2 && await NextAsync() is { } line)
        {
            int at = line.IndexOf(Said, StringComparison.Ordinal),
                compact = line.IndexOf("\"address\":\"", StringComparison.Ordinal);
            if (compact >= 0)
            {
                addresses.Add(new Uri(line[(compact + 11)..].Split('"')[0]));
            }
            else if (at >= 0)
            {
                addresses.Add(new Uri(line[(at + Said.Length)..].Trim()));
            }
        }

        return [.. addresses];
    }

    private async Task ReadAsync()
    {
        while (await NextAsync() is not null) { }
    }

    private async Task<string?> NextAsync()
    {
        string? line = await _process.StandardOutput.ReadLineAsync();
        if (line is not null)
        {
            lock (_lines)
            {
                _lines.Add(line);
            }
        }

        return line;
    }
}
