using System.Net;
using System.Net.Sockets;

namespace CushionService.LoadTests.Generating;

/// <summary>One connection of HTTP/1.1 that sends prepared requests: cheap, since the generator shares the processors with the
/// service.</summary>
/// <param name="at">The service.</param>
/// <param name="from">The address that calls, of the loopback network; null for the usual one.</param>
internal sealed class RestConnection(Uri at, IPAddress? from = null) : IConnection
{
    private const int LongestAnswer = 1 << 26;

    // As long as most answers; hundreds of connections are not to fill the memory.
    private byte[] _buffer = new byte[1 << 13];
    private Socket? _socket;

    public async ValueTask<Reply> SendAsync(byte[] request, CancellationToken cancellation)
    {
        try
        {
            if (_socket is null)
            {
                _socket = new Socket(SocketType.Stream, ProtocolType.Tcp) { NoDelay = true };
                if (from is not null)
                {
                    _socket.Bind(new IPEndPoint(from, 0));
                }

                await _socket.ConnectAsync(at.Host, at.Port, cancellation);
            }

            await _socket.SendAsync(request, cancellation);
            return await ReadAsync(_socket, cancellation);
        }
        catch (SocketException)
        {
            Dispose();
            return default;
        }
    }

    public void Dispose()
    {
        _socket?.Dispose();
        _socket = null;
    }

    private async ValueTask<Reply> ReadAsync(Socket socket, CancellationToken cancellation)
    {
        int filled = 0,
            body = -1,
            length = -1;
        Reply reply = default;
        while (true)
        {
            int read = await socket.ReceiveAsync(_buffer.AsMemory(filled), cancellation);
            if (read == 0)
            {
                Dispose();
                return default;
            }

            filled += read;
            if (body < 0 && _buffer.AsSpan(0, filled).IndexOf("\r\n\r\n"u8) is >= 0 and int end)
            {
                body = end + 4;
                (reply, length) = Head(_buffer.AsSpan(0, body));
            }

            if (body >= 0 && (length >= 0 ? filled >= body + length : _buffer.AsSpan(body, filled - body).EndsWith("0\r\n\r\n"u8)))
            {
                return reply;
            }

            if (filled == LongestAnswer)
            {
                throw new InvalidOperationException("The answer is longer than the generator's buffer.");
            }

            if (filled == _buffer.Length)
            {
                Array.Resize(ref _buffer, 2 * filled);
            }
        }
    }

    // The length is -1 when the body comes in chunks.
    private static (Reply Reply, int Length) Head(ReadOnlySpan<byte> head)
    {
        int status = ((head[9] - '0') * 100) + ((head[10] - '0') * 10) + head[11] - '0';
        Reply reply = new(status, head.IndexOf("\r\nRetry-After: "u8) >= 0);
        if (status == 304)
        {
            return (reply, 0);
        }

        int at = head.IndexOf("\r\nContent-Length: "u8);
        if (at < 0)
        {
            return (reply, -1);
        }

        int length = 0;
        for (int i = at + 18; head[i] != '\r'; i++)
        {
            length = (length * 10) + head[i] - '0';
        }

        return (reply, length);
    }
}
