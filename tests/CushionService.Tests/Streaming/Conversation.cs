using System.IO.Pipelines;
using System.Net;
using System.Net.Http.Headers;
using System.Text;
using CushionService.Tests.Hosting;

namespace CushionService.Tests.Streaming;

/// <summary>A stream of orders of which the caller sends one when it likes and hears the answers when it likes.</summary>
internal sealed class Conversation : HttpContent
{
    private readonly Pipe _spoken = new(new PipeOptions(pauseWriterThreshold: 1, resumeWriterThreshold: 1));
    private readonly CancellationTokenSource _gone = new();
    private StreamReader? _heard;

    private Conversation() => Headers.ContentType = new MediaTypeHeaderValue("application/x-ndjson");

    public static async Task<Conversation> StartAsync(RunningService service)
    {
        Conversation talk = new();
        using HttpRequestMessage request = new(HttpMethod.Post, "/v1/quotes/stream") { Content = talk, Version = HttpVersion.Version20 };
        HttpResponseMessage response = await service.Direct.SendAsync(request, HttpCompletionOption.ResponseHeadersRead, talk._gone.Token);
        Assert.Equal(HttpStatusCode.OK, response.StatusCode);
        talk._heard = new StreamReader(await response.Content.ReadAsStreamAsync());
        return talk;
    }

    /// <summary>Sends text; done when the connection has taken it.</summary>
    public async Task SayAsync(string text) => await _spoken.Writer.WriteAsync(Encoding.UTF8.GetBytes(text));

    /// <summary>The next line; null at the end.</summary>
    public Task<string?> HearAsync() => _heard!.ReadLineAsync();

    /// <summary>Says that there is no more to send.</summary>
    public void End() => _spoken.Writer.Complete();

    protected override Task SerializeToStreamAsync(Stream stream, TransportContext? context) => SerializeToStreamAsync(stream, context, CancellationToken.None);

    protected override async Task SerializeToStreamAsync(Stream stream, TransportContext? context, CancellationToken cancellationToken)
    {
        while (true)
        {
            ReadResult result = await _spoken.Reader.ReadAsync(_gone.Token);
            foreach (ReadOnlyMemory<byte> part in result.Buffer)
            {
                await stream.WriteAsync(part, _gone.Token);
            }

            await stream.FlushAsync(_gone.Token);
            _spoken.Reader.AdvanceTo(result.Buffer.End);
            if (result.IsCompleted)
            {
                return;
            }
        }
    }

    protected override bool TryComputeLength(out long length)
    {
        length = 0;
        return false;
    }

    protected override void Dispose(bool disposing)
    {
        _gone.Cancel();
        _heard?.Dispose();
        base.Dispose(disposing);
    }
}
