using System.Net;
using System.Text.Json.Nodes;
using CushionService.Access;
using CushionService.Admission;
using CushionService.Tests.Access;
using CushionService.Tests.Hosting;
using Grpc.Core;
using Microsoft.Extensions.DependencyInjection;

namespace CushionService.Tests.Admission;

/// <summary>A service with more to do than it can rejects calls at once, and stays alive.</summary>
public sealed class OverloadTests : IDisposable
{
    private readonly RunningService _service = new(
        _ => { },
        false,
        ("Admission:Workers", "1"),
        ("Admission:LongestWaitMs", "1"),
        ("Admission:DeadlineSeconds", "1")
    );

    [Fact]
    public async Task Where_calls_would_wait_too_long_they_are_rejected_and_health_is_answered()
    {
        Turns turns = _service.Services.GetRequiredService<Turns>();
        Turn held = await turns.TakeAsync(Caller.Self, false, TimeSpan.FromSeconds(1), default);

        using HttpResponseMessage rest = await _service.PostAsync("yardage", Callers.Pillow);
        (StatusCode grpc, Metadata trailers) = await Callers.StatusAsync(
            _service.Calls.EstimateYardageAsync(new() { Order = Callers.PillowMessage })
        );
        using HttpResponseMessage live = await _service.Http.GetAsync(new Uri("/health/live", UriKind.Relative));
        held.Dispose();

        Assert.Equal(HttpStatusCode.ServiceUnavailable, rest.StatusCode);
        Assert.Equal("1", rest.Headers.GetValues("Retry-After").Single());
        Assert.Equal("busy", (await rest.ProblemAsync())["code"]!.GetValue<string>());
        Assert.Equal(StatusCode.Unavailable, grpc);
        Assert.Contains(
            Google.Rpc.Status.Parser.ParseFrom(trailers.GetValueBytes("grpc-status-details-bin")).Details,
            detail => detail.Is(Google.Rpc.RetryInfo.Descriptor)
        );
        Assert.Equal(HttpStatusCode.OK, live.StatusCode);
        using HttpResponseMessage after = await _service.PostAsync("yardage", Callers.Pillow);
        Assert.Equal(HttpStatusCode.OK, after.StatusCode);
    }

    [Fact]
    public async Task An_order_that_waits_beyond_its_time_is_cancelled()
    {
        using RunningService service = new(_ => { }, false, ("Admission:Workers", "1"), ("Admission:DeadlineSeconds", "1"));
        Turns turns = service.Services.GetRequiredService<Turns>();
        Turn held = await turns.TakeAsync(Caller.Self, false, TimeSpan.FromSeconds(1), default);
        Task<HttpResponseMessage> late = service.PostAsync("yardage", Callers.Pillow);
        while (turns.Waiting == 0)
        {
            await Task.Delay(10);
        }

        // Longer than its one second.
        await Task.Delay(1_200);
        held.Dispose();
        using HttpResponseMessage response = await late;

        Assert.Equal(HttpStatusCode.UnprocessableEntity, response.StatusCode);
        Assert.False(response.Headers.Contains("Retry-After"));
        JsonObject problem = await response.ProblemAsync();
        Assert.Equal("too-slow", problem["code"]!.GetValue<string>());
        Assert.Equal([" too-slow"], problem.Violations());
        Assert.Equal(1, problem["violations"]![0]!["maximum"]!.GetValue<double>());
    }

    public void Dispose() => _service.Dispose();
}
