using System.IO.Compression;
using CushionService.Rest.Pages;
using Microsoft.AspNetCore.Http;

namespace CushionService.Tests.Rest;

/// <summary>Answers that are the same until the next release.</summary>
public sealed class FixedAnswerTests
{
    [Fact]
    public async Task Whoever_asks_while_an_answer_is_compressed_holds_no_thread()
    {
        // Noise of a megabyte: compressing it as small as can be takes longer than a call that only begins.
        byte[] noise = new byte[1 << 20];
        new Random(1).NextBytes(noise);
        FixedAnswer answer = new(noise, "application/octet-stream");
        (DefaultHttpContext Call, Task Written)[] calls = [.. Enumerable.Range(0, 64).Select(_ => Ask(answer))];

        Assert.Contains(calls, call => !call.Written.IsCompleted);
        await Task.WhenAll(calls.Select(call => call.Written));
        foreach ((DefaultHttpContext call, _) in calls)
        {
            Assert.Equal("br", call.Response.Headers.ContentEncoding);
        }

        calls[^1].Call.Response.Body.Position = 0;
        using MemoryStream plain = new();
        await using BrotliStream reading = new(calls[^1].Call.Response.Body, CompressionMode.Decompress);
        await reading.CopyToAsync(plain);
        Assert.Equal(noise, plain.ToArray());
    }

    private static (DefaultHttpContext Call, Task Written) Ask(FixedAnswer answer)
    {
        DefaultHttpContext call = new();
        call.Request.Method = HttpMethods.Get;
        call.Request.Headers.AcceptEncoding = "br";
        call.Response.Body = new MemoryStream();
        return (call, answer.WriteAsync(call));
    }
}
