using System.Globalization;
using System.Net.Sockets;
using System.Text;
using System.Text.Json;

namespace CushionService.LoadTests;

/// <summary>Sends orders as lines over HTTP/1.1 and reads the answers at the same time, over a socket: a client that sends the whole body
/// before it reads would wait for ever on a service that reads no further than it is read.</summary>
internal static class NdjsonCaller
{
    private const int LinesInChunk = 50;

    public static async Task CallAsync(LoopbackHost host, int count, Action<Answer> heard)
    {
        using TcpClient socket = new(host.Rest.Host, host.Rest.Port) { NoDelay = true };
        await using NetworkStream stream = socket.GetStream();
        Task sending = SendAsync(stream, host.Rest, count);
        await ReadAsync(new BufferedStream(stream, 1 << 16), heard);
        await sending;
    }

    private static async Task SendAsync(NetworkStream stream, Uri at, int count)
    {
        await stream.WriteAsync(
            Encoding.ASCII.GetBytes(
                $"POST /v1/quotes/stream HTTP/1.1\r\nHost: {at.Authority}\r\nContent-Type: application/x-ndjson\r\nTransfer-Encoding: "
                    + "chunked\r\nConnection: close\r\n\r\n"
            )
        );
        for (int number = 1; number <= count; )
        {
            StringBuilder lines = new();
            for (int line = 0; line < LinesInChunk && number <= count; line++, number++)
            {
                lines.Append(StreamRun.IsBad(number) ? "{\"units\":\"in\",\"cushions\":[" : Order(number)).Append('\n');
            }

            byte[] chunk = Encoding.UTF8.GetBytes(lines.ToString());
            await stream.WriteAsync((byte[])[.. Encoding.ASCII.GetBytes($"{chunk.Length:x}\r\n"), .. chunk, (byte)'\r', (byte)'\n']);
        }

        await stream.WriteAsync("0\r\n\r\n"u8.ToArray());
    }

    private static string Order(int number) =>
        $$$"""
            {"reference":"{{{number}}}","units":"in","effort":"quick",
            "cushions":[{"id":"pad","construction":"knife-edge","outline":{"kind":"rectangle","width":{{{StreamRun.WidthOf(
                number
            )}}},"depth":15},
            "closure":{"kind":"zipper"}}],"fabrics":[{"id":"main","width":54,"sold":{"unit":"yd","step":"1/8"}}]}
            """.ReplaceLineEndings(
            ""
        );

    private static async Task ReadAsync(BufferedStream stream, Action<Answer> heard)
    {
        string status = await LineAsync(stream);
        if (!status.Contains(" 200 ", StringComparison.Ordinal))
        {
            throw new InvalidOperationException(status);
        }

        while ((await LineAsync(stream)).Length > 0) { }

        using MemoryStream line = new();
        long number = 0;
        while (int.Parse(await LineAsync(stream), NumberStyles.HexNumber, CultureInfo.InvariantCulture) is > 0 and int size)
        {
            byte[] chunk = new byte[size];
            await stream.ReadExactlyAsync(chunk);
            await LineAsync(stream);
            foreach (byte part in chunk)
            {
                if (part != '\n')
                {
                    line.WriteByte(part);
                    continue;
                }

                heard(AnswerOf(line.GetBuffer().AsMemory(0, (int)line.Length), ++number));
                line.SetLength(0);
            }
        }
    }

    private static Answer AnswerOf(ReadOnlyMemory<byte> line, long number)
    {
        using JsonDocument answer = JsonDocument.Parse(line);
        bool refused = answer.RootElement.TryGetProperty("line", out JsonElement place);
        return new Answer(
            refused ? place.GetInt64() : number,
            refused,
            refused ? null : answer.RootElement.GetProperty("reference").GetString()
        );
    }

    private static async Task<string> LineAsync(BufferedStream stream)
    {
        StringBuilder line = new();
        byte[] one = new byte[1];
        while (await stream.ReadAsync(one) == 1 && one[0] != '\n')
        {
            line.Append((char)one[0]);
        }

        return line.ToString().TrimEnd('\r');
    }
}
