using System.Diagnostics;

namespace CushionService.LoadTests;

/// <summary>The service as a process of its own, on two free loopback ports.</summary>
internal sealed class LoopbackHost : IDisposable
{
    private readonly Process _process;

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

    public static async Task<LoopbackHost> StartAsync(params (string Name, string Value)[] settings)
    {
        ProcessStartInfo start = new("dotnet", [typeof(OrderDesk).Assembly.Location])
        {
            RedirectStandardOutput = true,
        };
        start.Environment["ASPNETCORE_URLS"] = "http://127.0.0.1:0";
        start.Environment["GRPC_URLS"] = "http://127.0.0.1:0";
        foreach ((string name, string value) in settings)
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

        // What it logs later must not fill the pipe.
        _ = process.StandardOutput.BaseStream.CopyToAsync(Stream.Null);
        return new LoopbackHost(process, addresses[0], addresses[1]);
    }

    public void Dispose()
    {
        _process.Kill();
        _process.Dispose();
    }
}
