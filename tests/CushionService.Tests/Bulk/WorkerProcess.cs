using System.Diagnostics;

namespace CushionService.Tests.Bulk;

/// <summary>A worker as a process of its own.</summary>
internal sealed class WorkerProcess : IDisposable
{
    private readonly Process _process;
    private readonly List<string> _lines = [];

    /// <summary>Starts a worker of one order at a time, which takes one processor.</summary>
    /// <param name="url">The address of the queue.</param>
    public WorkerProcess(string url)
    {
        ProcessStartInfo start = new("dotnet", [typeof(Program).Assembly.Location, "--worker"])
        {
            RedirectStandardOutput = true,
            RedirectStandardError = true,
        };
        start.Environment["MANAGEMENT_URLS"] = "http://127.0.0.1:0";
        start.Environment["Worker__Url"] = url;
        start.Environment["Worker__AckWaitSeconds"] = "2";
        start.Environment["Worker__Orders"] = "1";
        _process = Process.Start(start)!;
        _process.OutputDataReceived += Keep;
        _process.ErrorDataReceived += Keep;
        _process.BeginOutputReadLine();
        _process.BeginErrorReadLine();
    }

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

    /// <summary>The memory that it had at most, in MiB.</summary>
    public long PeakMiB
    {
        get
        {
            string peak = File.ReadLines($"/proc/{_process.Id}/status").First(line => line.StartsWith("VmHWM", StringComparison.Ordinal));
            return long.Parse(peak.Split(' ', StringSplitOptions.RemoveEmptyEntries)[^2], System.Globalization.CultureInfo.InvariantCulture)
                / 1024;
        }
    }

    /// <summary>Ends it as kill -9 does.</summary>
    public void Kill() => _process.Kill();

    /// <summary>Asks it to end, as a platform does, and waits until it has ended without a fault.</summary>
    public async Task TerminateAsync()
    {
        using Process kill = Process.Start("kill", ["-TERM", $"{_process.Id}"]);
        await _process.WaitForExitAsync().WaitAsync(TimeSpan.FromMinutes(1));
        Assert.True(_process.ExitCode == 0, $"It ended with {_process.ExitCode}:\n{string.Join('\n', Lines.TakeLast(60))}");
    }

    private void Keep(object sender, DataReceivedEventArgs line)
    {
        lock (_lines)
        {
            _lines.Add(line.Data ?? "");
        }
    }

    public void Dispose()
    {
        if (!_process.HasExited)
        {
            _process.Kill();
            _process.WaitForExit();
        }

        _process.Dispose();
    }
}
