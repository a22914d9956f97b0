using System.Net;
using CushionService.Access;
using CushionService.Admission;
using CushionService.Tests.Access;
using CushionService.Tests.Hosting;
using Google.Rpc;
using Grpc.Core;
using Grpc.Reflection.V1Alpha;

namespace CushionService.Tests.Admission;

/// <summary>Work is limited, and not calls alone: a caller pays for what its orders took.</summary>
public sealed class WorkLimitTests
{
    [Fact]
    public void A_caller_that_has_had_too_much_begins_nothing_until_it_is_paid()
    {
        using WorkLimits work = new();
        Caller caller = Of(steps: 100, burst: 1_000);
        Caller other = Of(steps: 100, burst: 1_000) with { Name = "other" };

        Assert.True(work.MayBegin(caller, out _));
        // 60 s are 10 000 million steps: ten bursts.
        work.Charge(caller, TimeSpan.FromSeconds(60));

        Assert.False(work.MayBegin(caller, out int seconds));
        Assert.InRange(seconds, 80, 100);
        Assert.True(work.MayBegin(other, out _));
    }

    [Fact]
    public async Task What_is_owed_is_paid_with_time()
    {
        using WorkLimits work = new();
        Caller caller = Of(steps: 1_000, burst: 1_000);
        // 9 s are 1 500 million steps: half a second beyond the burst.
        work.Charge(caller, TimeSpan.FromSeconds(9));

        Assert.False(work.MayBegin(caller, out _));
        await work.WaitAsync(caller, default).AsTask().WaitAsync(TimeSpan.FromSeconds(20));
        Assert.True(work.MayBegin(caller, out _));
    }

    [Fact]
    public async Task Small_orders_cost_next_to_nothing()
    {
        string key = Callers.NewKey();
        using RunningService service = new(
            _ => { },
            false,
            [.. Callers.Settings(0, "shop", key, "quote"), ("Access:Keys:0:Steps", "1"), ("Access:Keys:0:StepsBurst", "2000")]
        );
        for (int call = 0; call < 50; call++)
        {
            using HttpResponseMessage response = await service.SendAsync("quotes", key);
            Assert.Equal(HttpStatusCode.OK, response.StatusCode);
        }
    }

    [Fact]
    public async Task A_caller_that_owes_work_is_rejected_with_the_time_until_it_is_paid()
    {
        string key = Callers.NewKey();
        using RunningService service = new(
            _ => { },
            false,
            [.. Callers.Settings(0, "shop", key, "estimate", "quote"), ("Access:Keys:0:Steps", "1"), ("Access:Keys:0:StepsBurst", "1")]
        );
        // Tens of millions of steps, and so most of a minute to pay: what is no rectangle is searched for all the steps of its effort.
        const string Searched = """
            {"units":"in","effort":"standard","pieces":[
            {"id":"a","quantity":6,"points":[[0,0],[13.1,0],[4.7,11.3]]},
            {"id":"b","quantity":6,"points":[[0,0],[9.3,1.7],[7.9,8.1],[2.2,6.4]]}],
            "fabrics":[{"id":"main","width":54,"sold":{"unit":"yd","step":"1/8"}}]}
            """;
        using HttpResponseMessage first = await service.SendAsync("yardage", key, Searched);
        using HttpResponseMessage second = await service.SendAsync("yardage", key);

        Assert.Equal(HttpStatusCode.OK, first.StatusCode);
        Assert.Equal(HttpStatusCode.TooManyRequests, second.StatusCode);
        string seconds = second.Headers.GetValues("Retry-After").Single();
        Assert.InRange(int.Parse(seconds), 5, 3_600);
        Assert.EndsWith(
            "\"steps\";q=1;qu=\"million-steps\";w=1",
            second.Headers.GetValues("RateLimit-Policy").Single(),
            StringComparison.Ordinal
        );
        Assert.Equal($"\"steps\";r=0;t={seconds}", second.Headers.GetValues("RateLimit").Single());
        await second.ProblemAsync();
    }

    [Theory]
    [InlineData("\"effort\":\"quick\"", HttpStatusCode.OK)]
    [InlineData("\"effort\":\"standard\"", HttpStatusCode.Forbidden)]
    [InlineData("\"reference\":\"a\"", HttpStatusCode.Forbidden)]
    public async Task Where_others_have_keys_a_caller_without_one_may_ask_for_quick(string effort, HttpStatusCode expected)
    {
        using RunningService service = new(_ => { }, false, Callers.Settings(0, "shop", Callers.NewKey(), "quote"));
        string order = Callers.Pillow.Replace("\"effort\":\"quick\"", effort, StringComparison.Ordinal);
        using HttpResponseMessage response = await service.SendAsync("yardage", null, order);
        using HttpResponseMessage check = await service.SendAsync("validations", null, order);

        Assert.Equal(expected, response.StatusCode);
        Assert.Equal(HttpStatusCode.OK, check.StatusCode);
        if (expected != HttpStatusCode.OK)
        {
            Assert.Equal(["/effort not-allowed"], (await response.ProblemAsync()).Violations());
        }
    }

    [Fact]
    public async Task The_effort_of_callers_without_a_key_can_be_configured()
    {
        using RunningService service = new(
            _ => { },
            false,
            [.. Callers.Settings(0, "shop", Callers.NewKey(), "quote"), ("Access:Anonymous:Effort", "standard")]
        );
        using HttpResponseMessage response = await service.SendAsync(
            "yardage",
            null,
            Callers.Pillow.Replace("quick", "standard", StringComparison.Ordinal)
        );

        Assert.Equal(HttpStatusCode.OK, response.StatusCode);
    }

    [Fact]
    public async Task Pages_have_a_limit_by_address_and_health_has_none()
    {
        using RunningService service = new(_ => { }, false, ("Admission:PageRate", "1"), ("Admission:PageBurst", "3"));
        List<HttpStatusCode> pages = [],
            health = [];
        for (int call = 0; call < 10; call++)
        {
            using HttpResponseMessage page = await service.Http.GetAsync(new Uri("/openapi/v1.json", UriKind.Relative));
            using HttpResponseMessage live = await service.Http.GetAsync(new Uri("/health/live", UriKind.Relative));
            pages.Add(page.StatusCode);
            if (page.StatusCode == HttpStatusCode.TooManyRequests)
            {
                Assert.Equal("\"page-burst\";r=0;t=3", page.Headers.GetValues("RateLimit").Single());
            }

            health.Add(live.StatusCode);
        }

        Assert.Equal(HttpStatusCode.OK, pages[0]);
        Assert.Contains(HttpStatusCode.TooManyRequests, pages);
        Assert.All(health, status => Assert.Equal(HttpStatusCode.OK, status));
    }

    [Fact]
    public async Task An_answer_that_is_made_for_one_call_is_charged_and_one_that_is_kept_is_not()
    {
        string key = Callers.NewKey();
        using RunningService service = new(
            _ => { },
            false,
            [.. Callers.Settings(0, "shop", key, "estimate"), ("Access:Keys:0:Steps", "1"), ("Access:Keys:0:StepsBurst", "1")]
        );
        HttpStatusCode[] kept = await AskAsync("/v1/catalogue"),
            made = await AskAsync("/v1/catalogue?fields=engine,constructions,outlines,fields");

        Assert.All(kept, status => Assert.Equal(HttpStatusCode.OK, status));
        Assert.Contains(HttpStatusCode.TooManyRequests, made);

        async Task<HttpStatusCode[]> AskAsync(string path)
        {
            List<HttpStatusCode> statuses = [];
            for (int call = 0; call < 40; call++)
            {
                using HttpRequestMessage request = new(HttpMethod.Get, path);
                request.Headers.Add(KeyHandler.Header, key);
                request.Headers.AcceptEncoding.ParseAdd("br");
                using HttpResponseMessage response = await service.Http.SendAsync(request);
                statuses.Add(response.StatusCode);
            }

            return [.. statuses];
        }
    }

    [Fact]
    public async Task A_stream_of_reflection_is_charged_for_each_message()
    {
        using RunningService service = new(_ => { }, false, ("Admission:PageRate", "1"), ("Admission:PageBurst", "5"));
        using var call = new ServerReflection.ServerReflectionClient(service.Channel).ServerReflectionInfo();
        RpcException refused = await Assert.ThrowsAsync<RpcException>(async () =>
        {
            for (int message = 0; message < 100; message++)
            {
                await call.RequestStream.WriteAsync(new ServerReflectionRequest { ListServices = "" });
                Assert.True(await call.ResponseStream.MoveNext(CancellationToken.None));
                Assert.InRange(message, 0, 50);
            }
        });

        Assert.Equal(StatusCode.ResourceExhausted, refused.StatusCode);
        Assert.NotNull(refused.GetRpcStatus()!.GetDetail<RetryInfo>());
    }

    private static Caller Of(int steps, int burst) =>
        Caller.Self with
        {
            Grant = Caller.Self.Grant with { Steps = steps, StepsBurst = burst },
        };
}
