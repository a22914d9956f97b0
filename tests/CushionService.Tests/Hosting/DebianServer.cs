using System.Diagnostics;
using System.Net;
using System.Net.Sockets;

namespace CushionService.Tests.Hosting;

/// <summary>A server program of Debian's on a free loopback port, with a folder of its own. Killed and deleted at the end.</summary>
internal sealed class DebianServer : IDisposable
{
    private readonly string _program;
    private readonly Func<int, string, string[]> _arguments;
    private Process? _process;

    /// <summary>Prepares the server; it is not started yet.</summary>
    /// <param name="program">The path of the program.</param>
    /// <param name="arguments">Its arguments, for a port and a folder.</param>
    public DebianServer(string program, Func<int, string, string[]> arguments)
    {
        (_program, _arguments) = (program, arguments);
        using TcpListener free = new(IPAddress.Loopback, 0);
        free.Start();
        Port = ((IPEndPoint)free.LocalEndpoint).Port;
    }

    public int Port { get; }

    public string Folder { get; } = Directory.CreateTempSubdirectory("server").FullName;

    /// <summary>Skips a test where the program is not installed.</summary>
    public static void Needs(string program, string package) =>
        Skip.IfNot(File.Exists(program), $"{program} is not installed (Debian's {package}).");

    /// <summary>Starts the server, and waits until it listens.</summary>
    public async Task StartAsync()
    {
        ProcessStartInfo start = new(_program, _arguments(Port, Folder)) { RedirectStandardOutput = true, RedirectStandardError = true };
        _process = Process.Start(start)!;
        _process.OutputDataReceived += static (_, _) => { };
        _process.ErrorDataReceived += static (_, _) => { };
        _process.BeginOutputReadLine();
        _process.BeginErrorReadLine();
        for (int time = 0; time < 100; time++)
        {
            try
            {
                using TcpClient client = new();
                await client.ConnectAsync(IPAddress.Loopback, Port);
                return;
            }
            catch (SocketException)
            {
                await Task.Delay(100);
            }
        }

        Assert.Fail($"{_program} does not listen.");
    }

    /// <summary>Kills it; it may be started again on the same port.</summary>
    public void Kill()
    {
        _process?.Kill(entireProcessTree: true);
        _process?.WaitForExit();
        _process?.Dispose();
        _process = null;
    }

    public void Dispose()
    {
        Kill();
        Directory.Delete(Folder, recursive: true);
    }
}
