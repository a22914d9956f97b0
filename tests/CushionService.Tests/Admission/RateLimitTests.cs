using System.Net;
using CushionService.Tests.Access;
using CushionService.Tests.Hosting;
using Grpc.Core;
using V1 = CushionService.Grpc.V1;

namespace CushionService.Tests.Admission;

/// <summary>A caller that calls too often is rejected, and nobody else is.</summary>
public sealed class RateLimitTests : IDisposable
{
    private static readonly string Greedy = Callers.NewKey(),
        Modest = Callers.NewKey();

    private readonly RunningService _service = new(
        _ => { },
        false,
        [
            .. Callers.Settings(0, "greedy", Greedy, "estimate", "batch"),
            .. Callers.Settings(1, "modest", Modest, "estimate"),
            ("Access:Keys:0:Rate", "1"),
            ("Access:Keys:0:Burst", "3"),
            ("Access:Keys:0:Streams", "1"),
        ]
    );

    [Fact]
    public async Task The_fourth_call_at_once_is_one_too_many()
    {
        List<HttpStatusCode> statuses = [];
        for (int call = 0; call < 3; call++)
        {
            using HttpResponseMessage response = await _service.SendAsync("yardage", Greedy);
            statuses.Add(response.StatusCode);
            Assert.Equal("\"calls\";q=1;w=1, \"burst\";q=3", response.Headers.GetValues("RateLimit-Policy").Single());
        }

        Assert.All(statuses, status => Assert.Equal(HttpStatusCode.OK, status));
        // A slow machine may have given a token back by now: the bucket holds three, and empties faster than one a second.
        HttpResponseMessage last = await _service.SendAsync("yardage", Greedy);
        for (int call = 0; call < 20 && last.StatusCode == HttpStatusCode.OK; call++)
        {
            last.Dispose();
            last = await _service.SendAsync("yardage", Greedy);
        }

        Assert.Equal(HttpStatusCode.TooManyRequests, last.StatusCode);
        Assert.Equal("1", last.Headers.GetValues("Retry-After").Single());
        Assert.StartsWith("\"burst\";r=0;", last.Headers.GetValues("RateLimit").Single(), StringComparison.Ordinal);
        await last.ProblemAsync();
        last.Dispose();

        (StatusCode code, Metadata trailers) = await Callers.StatusAsync(
            _service.Calls.EstimateYardageAsync(new() { Order = Callers.PillowMessage }, Callers.Headers(Greedy))
        );
        Assert.Equal(StatusCode.ResourceExhausted, code);
        Google.Rpc.Status told = Google.Rpc.Status.Parser.ParseFrom(trailers.GetValueBytes("grpc-status-details-bin"));
        Assert.Contains(told.Details, detail => detail.Is(Google.Rpc.RetryInfo.Descriptor));

        using HttpResponseMessage other = await _service.SendAsync("yardage", Modest);
        Assert.Equal(HttpStatusCode.OK, other.StatusCode);
    }

    [Fact]
    public async Task A_second_stream_is_one_too_many()
    {
        using AsyncDuplexStreamingCall<V1.QuoteManyRequest, V1.QuoteManyResponse> open = _service.Calls.QuoteMany(Callers.Headers(Greedy));
        await open.RequestStream.WriteAsync(new() { Order = Callers.PillowMessage });
        Assert.True(await open.ResponseStream.MoveNext(CancellationToken.None));

        using HttpResponseMessage second = await _service.SendAsync("quotes/stream", Greedy, "");
        Assert.Equal(HttpStatusCode.TooManyRequests, second.StatusCode);
        Assert.Contains("\"streams\";q=1;", second.Headers.GetValues("RateLimit-Policy").Single(), StringComparison.Ordinal);
        Assert.Equal("\"streams\";r=0", second.Headers.GetValues("RateLimit").Single());
        await open.RequestStream.CompleteAsync();
        Assert.False(await open.ResponseStream.MoveNext(CancellationToken.None));
    }

    public void Dispose() => _service.Dispose();
}
