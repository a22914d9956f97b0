using System.Diagnostics;
using System.Net;
using CushionService.Admission;
using CushionService.Tests.Access;
using CushionService.Tests.Hosting;
using Microsoft.Extensions.Logging.Abstractions;
using Microsoft.Extensions.Options;

namespace CushionService.Tests.Admission;

/// <summary>Instances share the rates of callers in Redis, and do without when it is away.</summary>
public sealed class SharedBucketTests
{
    private const string Redis = "/usr/bin/redis-server";

    [SkippableFact]
    public async Task Two_instances_admit_together_what_one_may()
    {
        DebianServer.Needs(Redis, "redis-server");
        using DebianServer server = Server();
        await server.StartAsync();
        await using SharedBuckets one = await BucketsAsync(server.Port),
            other = await BucketsAsync(server.Port);
        const int Rate = 500,
            Burst = 200;
        int taken = 0;
        Stopwatch time = Stopwatch.StartNew();
        await Task.WhenAll(Enumerable.Range(0, 8).Select(i => Task.Run(() => TakeAsync(i % 2 == 0 ? one : other))));
        double allowed = Burst + (Rate * time.Elapsed.TotalSeconds);
        Assert.InRange(taken, 0.98 * allowed, 1.02 * allowed);

        async Task TakeAsync(SharedBuckets buckets)
        {
            while (time.Elapsed < TimeSpan.FromSeconds(3))
            {
                if ((await buckets.TakeAsync("shop", Rate, Burst))!.Value.Taken)
                {
                    Interlocked.Increment(ref taken);
                }
            }
        }
    }

    [SkippableFact]
    public async Task Without_redis_the_limits_are_those_of_the_instance_until_it_is_back()
    {
        DebianServer.Needs(Redis, "redis-server");
        using DebianServer server = Server();
        await server.StartAsync();
        string key = Callers.NewKey();
        using RunningService first = Service(key, server.Port),
            second = Service(key, server.Port);
        await UntilSharedAsync(first, key, HttpStatusCode.TooManyRequests);
        await UntilSharedAsync(second, key, HttpStatusCode.TooManyRequests);

        server.Kill();
        // Each has a burst of its own.
        Assert.Equal(HttpStatusCode.OK, await StatusAsync(first, key));
        Assert.Equal(HttpStatusCode.OK, await StatusAsync(second, key));
        Assert.Contains(
            "\"Degraded\"",
            await first.Http.GetStringAsync(new Uri("/health/ready", UriKind.Relative)),
            StringComparison.Ordinal
        );

        await server.StartAsync();
        await UntilBackAsync(first, key);
        await UntilBackAsync(second, key);
        await UntilSharedAsync(first, key, HttpStatusCode.TooManyRequests);
        // On a slow machine one has come back by now.
        HttpStatusCode[] statuses = [await StatusAsync(second, key), await StatusAsync(second, key)];
        Assert.Contains(HttpStatusCode.TooManyRequests, statuses);
    }

    private static DebianServer Server() =>
        new(Redis, static (port, folder) => ["--bind", "127.0.0.1", "--port", $"{port}", "--dir", folder, "--save", ""]);

    private static async Task<SharedBuckets> BucketsAsync(int port)
    {
        AdmissionOptions options = new() { Redis = $"127.0.0.1:{port}" };
        SharedBuckets buckets = new(Options.Create(options), TimeProvider.System, NullLogger<SharedBuckets>.Instance);
        for (int time = 0; time < 100 && await buckets.TakeAsync("warm", 1, 1) is null; time++)
        {
            await Task.Delay(50);
        }

        return buckets;
    }

    private static RunningService Service(string key, int port) =>
        new(
            _ => { },
            settings:
            [
                .. Callers.Settings(0, "shop", key, "estimate"),
                ("Access:Keys:0:Rate", "1"),
                ("Access:Keys:0:Burst", "3"),
                ("Admission:Redis", $"127.0.0.1:{port}"),
            ]
        );

    private static async Task<HttpStatusCode> StatusAsync(RunningService service, string key)
    {
        using HttpResponseMessage response = await service.SendAsync("yardage", key);
        return response.StatusCode;
    }

    private static async Task UntilBackAsync(RunningService service, string key)
    {
        for (int time = 0; time < 100; time++)
        {
            await StatusAsync(service, key);
            string health = await service.Http.GetStringAsync(new Uri("/health/ready", UriKind.Relative));
            if (!health.Contains("Degraded", StringComparison.Ordinal))
            {
                return;
            }

            await Task.Delay(100);
        }

        Assert.Fail("The limits are not shared again.");
    }

    // The bucket of all holds three: it is empty after a few calls, whoever makes them.
    private static async Task UntilSharedAsync(RunningService service, string key, HttpStatusCode status)
    {
        for (int call = 0; call < 60; call++)
        {
            if (await StatusAsync(service, key) == status)
            {
                return;
            }
        }

        Assert.Fail($"No call was answered {status}.");
    }
}
