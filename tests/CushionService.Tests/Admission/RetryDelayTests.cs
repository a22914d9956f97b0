using CushionService.Access;
using CushionService.Admission;
using CushionService.Contract;
using CushionService.Contract.Answers;
using CushionService.Contract.Orders;
using CushionService.Desk;
using CushionService.Rejections;
using CushionService.Tests.Access;
using CushionService.Tests.Hosting;
using Google.Protobuf.WellKnownTypes;
using Google.Rpc;
using Grpc.Core;
using Microsoft.AspNetCore.Http;
using Microsoft.Extensions.Configuration;
using Microsoft.Extensions.DependencyInjection;
using Microsoft.Extensions.Options;

namespace CushionService.Tests.Admission;

/// <summary>A rejection says when to try again: after the configured seconds, and a few more at random.</summary>
public sealed class RetryDelayTests
{
    [Fact]
    public void The_delay_is_spread_over_the_jitter_and_never_leaves_it()
    {
        RetryDelay delay = Delay(new Random(1), least: 2, jitter: 3);
        int[] drawn = [.. Enumerable.Range(0, 1_000).Select(_ => delay.NextSeconds())];

        Assert.Equal([2, 3, 4, 5], drawn.Distinct().Order());
        Assert.All(drawn.CountBy(seconds => seconds), count => Assert.InRange(count.Value, 150, 350));
    }

    [Fact]
    public void Without_jitter_the_delay_is_always_the_same()
    {
        RetryDelay delay = Delay(new Random(1), least: 7, jitter: 0);

        Assert.All(Enumerable.Range(0, 100), _ => Assert.Equal(7, delay.NextSeconds()));
    }

    [Fact]
    public void What_cannot_be_tried_sooner_is_spread_as_well() =>
        Assert.Equal(
            [5, 6, 7, 8],
            Enumerable.Repeat(Delay(new Random(1), least: 2, jitter: 3), 1_000).Select(delay => delay.NextSeconds(5)).Distinct().Order()
        );

    [Fact]
    public async Task REST_and_gRPC_give_the_same_delay_to_a_caller_that_calls_too_often()
    {
        string key = Callers.NewKey();
        using RunningService service = new(
            services => services.AddSingleton<Random>(new KnownRandom(2)),
            false,
            [
                .. Callers.Settings(0, "greedy", key, "estimate"),
                ("Access:Keys:0:Rate", "1"),
                ("Access:Keys:0:Burst", "1"),
                ("Admission:RetryAfterSeconds", "5"),
                ("Admission:RetryJitterSeconds", "3"),
            ]
        );
        HttpResponseMessage rest = await service.SendAsync("yardage", key);
        for (int call = 0; call < 50 && rest.IsSuccessStatusCode; call++)
        {
            rest.Dispose();
            rest = await service.SendAsync("yardage", key);
        }

        (StatusCode code, Metadata trailers) = (StatusCode.OK, []);
        for (int call = 0; call < 50 && code == StatusCode.OK; call++)
        {
            (code, trailers) = await Callers.StatusAsync(
                service.Calls.EstimateYardageAsync(new() { Order = Callers.PillowMessage }, Callers.Headers(key))
            );
        }

        Assert.Equal("7", rest.Headers.GetValues("Retry-After").Single());
        rest.Dispose();
        Google.Rpc.Status status = Google.Rpc.Status.Parser.ParseFrom(trailers.GetValueBytes("grpc-status-details-bin"));
        RetryInfo retry = status.Details.Single(detail => detail.Is(RetryInfo.Descriptor)).Unpack<RetryInfo>();
        Assert.Equal(Duration.FromTimeSpan(TimeSpan.FromSeconds(7)), retry.RetryDelay);
    }

    [Fact]
    public async Task The_refusal_of_an_order_that_finds_the_queue_full_says_when_to_send_it_again()
    {
        AdmissionOptions options = new() { Workers = 1, LongestWaitMs = 1 };
        using Turns turns = new(Options.Create(options));
        using WorkLimits work = new();
        using Turn held = await turns.TakeAsync(Caller.Self, false, TimeSpan.FromSeconds(1), default);
        OrderDispatcher orders = new(new OrderDesk(), turns, work, Delay(new KnownRandom(1), least: 5, jitter: 3), Options.Create(options));
        Outcome<YardageAnswer> outcome = await orders.HandleAsync(
            Caller.Self,
            new ReceivedOrder(new Order(), []),
            Purposes.Yardage,
            CancellationToken.None
        );
        using ServiceProvider services = new ServiceCollection()
            .AddSingleton<IConfiguration>(new ConfigurationBuilder().Build())
            .BuildServiceProvider();
        DefaultHttpContext http = new() { RequestServices = services };
        await Problems.WriteAsync(http, outcome.Refusal!);

        Assert.Equal("busy", Assert.Single(outcome.Refusal!.Violations).Code);
        Assert.Equal((503, "6"), (http.Response.StatusCode, http.Response.Headers.RetryAfter.ToString()));
    }

    private static RetryDelay Delay(Random random, int least, int jitter) =>
        new(Options.Create(new RetryOptions { RetryAfterSeconds = least, RetryJitterSeconds = jitter }), random);
}
