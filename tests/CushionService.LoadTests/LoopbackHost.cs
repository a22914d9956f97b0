using System.Collections.Concurrent;
using System.Diagnostics;
using System.Security.Cryptography;
using System.Text;
using CushionService.Desk;

namespace CushionService.LoadTests;

/// <summary>The service as a process of its own, on two free loopback ports.</summary>
internal sealed class LoopbackHost : IDisposable
{
    private readonly Process _process;
    private readonly ConcurrentQueue<string> _errors = [];
    private int _errorCount;
    private int _leaks;

    private LoopbackHost(Process process, Uri rest, Uri grpc) => (_process, Rest, Grpc) = (process, rest, grpc);

    public Uri Rest { get; }

    public Uri Grpc { get; }

    /// <summary>Memory that the service occupies now, in bytes.</summary>
    public long WorkingSet
    {
        get
        {
            _process.Refresh();
            return _process.WorkingSet64;
        }
    }

    /// <summary>Processor time that the service has used so far.</summary>
    public TimeSpan ProcessorTime
    {
        get
        {
            _process.Refresh();
            return _process.TotalProcessorTime;
        }
    }

    /// <summary>Files, sockets and pipes that the service has open now.</summary>
    public int Handles => Directory.GetFileSystemEntries($"/proc/{_process.Id}/fd").Length;

    /// <summary>What the service logged as an error since it heard, twenty lines at most, and how many there were.</summary>
    public (IReadOnlyCollection<string> Lines, int Count) Errors => (_errors, _errorCount);

    /// <summary>How many lines it logged with a text that only orders have.</summary>
    public int Leaks => _leaks;

    /// <summary>A text of orders that no line of the log may have.</summary>
    public const string Secret = "kept-by-nobody";

    /// <summary>Whether the process has ended.</summary>
    public bool HasExited => _process.HasExited;

    /// <summary>The process's number.</summary>
    public int Id => _process.Id;

    /// <summary>Starts the service, and waits until it hears.</summary>
    /// <param name="settings">Environment variables; null leaves the service its own.</param>
    public static Task<LoopbackHost> StartAsync(params (string Name, string? Value)[] settings) =>
        StartAsync([typeof(OrderDesk).Assembly.Location], settings);

    /// <summary>Starts the service with the floor beside it.</summary>
    /// <param name="settings">Environment variables; null leaves the service its own.</param>
    public static Task<LoopbackHost> StartWithFloorAsync(params (string Name, string? Value)[] settings)
    {
        // The floor is in the load tests' own assembly, run as the service is: by its entry point and with its runtime's settings.
        string service = typeof(OrderDesk).Assembly.Location,
            tests = typeof(LoopbackHost).Assembly.Location;
        return StartAsync(
            [
                "exec",
                "--runtimeconfig",
                Path.ChangeExtension(service, "runtimeconfig.json"),
                "--depsfile",
                Path.ChangeExtension(tests, "deps.json"),
                tests,
                "host",
            ],
            settings
        );
    }

    /// <summary>Starts the service as it is shipped, with one key, so that callers without one are limited.</summary>
    /// <param name="key">The key.</param>
    public static Task<LoopbackHost> StartShippedAsync(string key) =>
        StartAsync(
            ("Access__Anonymous__Rate", null),
            ("Access__Anonymous__Burst", null),
            ("Access__Keys__0__Name", "shop"),
            ("Access__Keys__0__Sha256", Convert.ToHexStringLower(SHA256.HashData(Encoding.UTF8.GetBytes(key))))
        );

    private static async Task<LoopbackHost> StartAsync(string[] command, (string Name, string? Value)[] settings)
    {
        ProcessStartInfo start = new("dotnet", command) { RedirectStandardOutput = true };
        // As the container sets it.
        start.Environment["DOTNET_GCgen0size"] = "0x4000000";
        // The generator is one caller that sends for thousands.
        start.Environment["Access__Anonymous__Rate"] = "1000000";
        start.Environment["Access__Anonymous__Burst"] = "10000000";
        start.Environment["ASPNETCORE_URLS"] = "http://127.0.0.1:0";
        start.Environment["GRPC_URLS"] = "http://127.0.0.1:0";
        foreach ((string name, string? value) in settings)
        {
            start.Environment[name] = value;
        }

        Process process = Process.Start(start)!;
        List<Uri> addresses = [];
        while (addresses.Count < 2 && await process.StandardOutput.ReadLineAsync() is { } line)
        {
            const string Said = "Now listening on: ";
            if (line.IndexOf(Said, StringComparison.Ordinal) is > 0 and int at)
            {
                addresses.Add(new Uri(line[(at + Said.Length)..].Trim()));
            }
        }

        LoopbackHost host = new(process, addresses[0], addresses[1]);
        _ = Task.Run(host.ReadLogAsync);
        return host;
    }

    // What it logs must not fill the pipe either.
    private async Task ReadLogAsync()
    {
        while (await _process.StandardOutput.ReadLineAsync() is { } line)
        {
            if (line.Contains(" ERR]", StringComparison.Ordinal) || line.Contains(" FTL]", StringComparison.Ordinal))
            {
                _errorCount++;
                if (_errors.Count < 20)
                {
                    _errors.Enqueue(line);
                }
            }

            if (line.Contains(Secret, StringComparison.Ordinal))
            {
                _leaks++;
            }
        }
    }

    public void Dispose()
    {
        _process.Kill();
        _process.Dispose();
    }

    /// <summary>Tells the service to end, as a platform does, and waits until it has.</summary>
    public async Task StopAsync()
    {
        using Process signal = Process.Start("kill", ["-TERM", $"{Id}"]);
        await _process.WaitForExitAsync().WaitAsync(TimeSpan.FromSeconds(60));
    }
}
