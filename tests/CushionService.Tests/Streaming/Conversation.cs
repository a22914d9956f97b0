using System.Globalization;
using System.Net.Sockets;
using System.Text;

namespace CushionService.Tests.Streaming;

/// <summary>A stream of orders over HTTP/1.1 on a socket, of which the caller sends one when it likes and hears the answers when it
/// likes.</summary>
internal sealed class Conversation : IDisposable
{
    private readonly TcpClient _socket;
    private readonly StreamReader _heard;
    private readonly Queue<string> _lines = new();

    private Conversation(TcpClient socket) => (_socket, _heard) = (socket, new StreamReader(socket.GetStream(), Encoding.Latin1));

    public static async Task<Conversation> StartAsync(Uri service)
    {
        TcpClient socket = new();
        await socket.ConnectAsync(service.Host, service.Port);
        Conversation talk = new(socket);
        await talk.SendAsync(
            $"POST /v1/quotes/stream HTTP/1.1\r\nHost: {service.Authority}\r\nContent-Type: application/x-ndjson\r\nTransfer-Encoding: "
                + "chunked\r\nConnection: close\r\n\r\n"
        );
        Assert.Contains(" 200 ", await talk._heard.ReadLineAsync(), StringComparison.Ordinal);
        while (await talk._heard.ReadLineAsync() is { Length: > 0 }) { }

        return talk;
    }

    /// <summary>Sends one line.</summary>
    public Task SayAsync(string line) => SendAsync($"{line.Length + 1:x}\r\n{line}\n\r\n");

    /// <summary>Says that there is no more to send.</summary>
    public Task EndAsync() => SendAsync("0\r\n\r\n");

    private string _begun = "";

    /// <summary>The next answer; null at the end.</summary>
    public async Task<string?> HearAsync()
    {
        while (_lines.Count == 0)
        {
            int size = int.Parse((await _heard.ReadLineAsync())!, NumberStyles.HexNumber, CultureInfo.InvariantCulture);
            if (size == 0)
            {
                return null;
            }

            char[] chunk = new char[size];
            await _heard.ReadBlockAsync(chunk);
            await _heard.ReadLineAsync();
            // A chunk may end within a line.
            string[] lines = (_begun + new string(chunk)).Split('\n');
            _begun = lines[^1];
            foreach (string line in lines[..^1].Where(line => line.Length > 0))
            {
                _lines.Enqueue(line);
            }
        }

        return _lines.Dequeue();
    }

    public void Dispose()
    {
        _heard.Dispose();
        _socket.Dispose();
    }

    private async Task SendAsync(string text) => await _socket.GetStream().WriteAsync(Encoding.ASCII.GetBytes(text));
}
