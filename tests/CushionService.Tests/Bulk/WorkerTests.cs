using System.Diagnostics;
using System.Globalization;
using System.Text;
using CushionService.Bulk;
using CushionService.Tests.Hosting;
using NATS.Client.Core;
using NATS.Client.JetStream;
using NATS.Client.JetStream.Models;
using NATS.Net;
using Xunit.Abstractions;

namespace CushionService.Tests.Bulk;

/// <summary>Workers answer every order of a queue exactly once, whatever happens to one of them (NATS JetStream).</summary>
public sealed class WorkerTests(RunningService service, ITestOutputHelper output) : IClassFixture<RunningService>
{
    private const string Nats = "/usr/sbin/nats-server";

    private static readonly TimeSpan Patience = TimeSpan.FromMinutes(30);

    // A load run names more of them.
    private static readonly int Count = int.Parse(
        Environment.GetEnvironmentVariable("CUSHION_WORKER_ORDERS") ?? "300",
        CultureInfo.InvariantCulture
    );

    [SkippableFact]
    public async Task Three_workers_answer_every_order_exactly_once_though_one_is_killed()
    {
        DebianServer.Needs(Nats, "nats-server");
        using DebianServer server = Server();
        string url = $"nats://127.0.0.1:{server.Port}";
        // The first worker is there before the queue: it goes on trying.
        using WorkerProcess first = new(url);
        await server.StartAsync();
        await using NatsConnection connection = new(new NatsOpts { Url = url });
        INatsJSContext jetStream = connection.CreateJetStreamContext();
        await UntilAsync(async () => await StreamAsync(jetStream, OrderSubjects.DeadStream) is not null, Patience);
        double alone = await RateAsync(jetStream, 0, Count / 10, Count / 10);
        using WorkerProcess second = new(url),
            third = new(url);
        Stopwatch time = Stopwatch.StartNew();
        double together = await RateAsync(jetStream, Count / 10, Count, Count / 2);
        second.Kill();
        using WorkerProcess fourth = new(url);
        await UntilAsync(async () => (await StreamAsync(jetStream, OrderSubjects.OrderStream))!.Info.State.Messages == 0, Patience);
        output.WriteLine($"{Count} orders, all but the first tenth in {time.Elapsed}.");
        output.WriteLine($"One worker answers {alone:F0} a second, three {together:F0}: {together / alone:F2} times as many.");
        output.WriteLine($"Memory at most {first.PeakMiB} MiB, {third.PeakMiB} MiB, {fourth.PeakMiB} MiB.");

        Dictionary<string, INatsJSMsg<byte[]>> answers = await AllAsync(jetStream, OrderSubjects.AnswerStream),
            dead = await AllAsync(jetStream, OrderSubjects.DeadStream);
        Assert.Equal(Count, await StoredAsync(jetStream));
        Assert.Equal(
            Enumerable.Range(0, Count).Where(BulkOrders.IsUnreadable).Select(number => $"order-{number}").Order(),
            dead.Keys.Order()
        );
        Assert.All(dead.Values, letter => Assert.Equal("unreadable-order", letter.Headers![OrderSubjects.Code].ToString()));
        Assert.All(dead.Values, letter => Assert.Equal(BulkOrders.Of(13), letter.Data));
        Assert.Equal(Count, answers.Count + dead.Count);
        Assert.True(Math.Max(first.PeakMiB, third.PeakMiB) < 512, "A worker's memory grows.");
        await AnswersAreThoseOfCallsAsync(answers);
        await first.TerminateAsync();
        await third.TerminateAsync();
    }

    [SkippableFact]
    public async Task A_worker_that_is_to_end_gives_back_what_it_has_not_begun()
    {
        DebianServer.Needs(Nats, "nats-server");
        using DebianServer server = Server();
        await server.StartAsync();
        string url = $"nats://127.0.0.1:{server.Port}";
        using WorkerProcess worker = new(url);
        await using NatsConnection connection = new(new NatsOpts { Url = url });
        INatsJSContext jetStream = connection.CreateJetStreamContext();
        await UntilAsync(async () => await StreamAsync(jetStream, OrderSubjects.DeadStream) is not null, Patience);
        for (int number = 0; number < 200; number++)
        {
            (await jetStream.PublishAsync(OrderSubjects.Orders, BulkOrders.Of(number))).EnsureSuccess();
        }

        await UntilAsync(async () => await StoredAsync(jetStream) > 0, Patience);
        await worker.TerminateAsync();
        long answered = await StoredAsync(jetStream);
        INatsJSStream orders = (await StreamAsync(jetStream, OrderSubjects.OrderStream))!;
        Assert.Equal(200, answered + orders.Info.State.Messages);
    }

    private static DebianServer Server() => new(Nats, static (port, folder) => ["-a", "127.0.0.1", "-p", $"{port}", "-js", "-sd", folder]);

    // Sends the orders, then waits for a number of answers: how many come each second from there on.
    private static async Task<double> RateAsync(INatsJSContext jetStream, int first, int end, int until)
    {
        // Many at the same time: the queue is to be longer than what is answered meanwhile.
        foreach (int[] part in Enumerable.Range(first, end - first).Chunk(256))
        {
            PubAckResponse[] stored = await Task.WhenAll(
                part.Select(async number =>
                    await jetStream.PublishAsync(
                        OrderSubjects.Orders,
                        BulkOrders.Of(number),
                        opts: new NatsJSPubOpts { MsgId = $"order-{number}" }
                    )
                )
            );
            Array.ForEach(stored, one => one.EnsureSuccess());
        }

        long before = await StoredAsync(jetStream);
        Stopwatch time = Stopwatch.StartNew();
        await UntilAsync(async () => await StoredAsync(jetStream) >= until, Patience);
        return (await StoredAsync(jetStream) - before) / time.Elapsed.TotalSeconds;
    }

    // Byte for byte, but for the trace and the address of a refusal.
    private async Task AnswersAreThoseOfCallsAsync(Dictionary<string, INatsJSMsg<byte[]>> answers)
    {
        foreach (int number in Enumerable.Range(0, 20).Where(number => !BulkOrders.IsUnreadable(number)))
        {
            using HttpResponseMessage call = await service.PostAsync("quotes", BulkOrders.Of(number));
            INatsJSMsg<byte[]> answer = answers[$"order-{number}"];
            string one = Encoding.UTF8.GetString(answer.Data!),
                other = await call.Content.ReadAsStringAsync();
            Assert.Equal($"{(int)call.StatusCode}", answer.Headers![OrderSubjects.Status].ToString());
            Assert.Equal(call.Content.Headers.ContentType!.MediaType, answer.Headers["Content-Type"].ToString());
            if (BulkOrders.IsUnsound(number))
            {
                string same = one[one.IndexOf("\"title\"", StringComparison.Ordinal)..one.IndexOf("\"traceId\"", StringComparison.Ordinal)];
                Assert.Contains(same, other, StringComparison.Ordinal);
            }
            else
            {
                Assert.Equal(other, one);
            }
        }
    }

    private static async Task<long> StoredAsync(INatsJSContext jetStream) =>
        (await StreamAsync(jetStream, OrderSubjects.AnswerStream))!.Info.State.Messages
        + (await StreamAsync(jetStream, OrderSubjects.DeadStream))!.Info.State.Messages;

    private static async Task<INatsJSStream?> StreamAsync(INatsJSContext jetStream, string name)
    {
        try
        {
            return await jetStream.GetStreamAsync(name);
        }
        catch (NatsJSApiException)
        {
            return null;
        }
    }

    // By the id of the order; fails where one is there twice.
    private static async Task<Dictionary<string, INatsJSMsg<byte[]>>> AllAsync(INatsJSContext jetStream, string stream)
    {
        Dictionary<string, INatsJSMsg<byte[]>> all = [];
        long count = (await StreamAsync(jetStream, stream))!.Info.State.Messages;
        INatsJSConsumer consumer = await jetStream.CreateOrderedConsumerAsync(stream);
        await foreach (INatsJSMsg<byte[]> message in consumer.ConsumeAsync<byte[]>())
        {
            all.Add(message.Headers![OrderSubjects.OrderId].ToString(), message);
            if (all.Count == count)
            {
                break;
            }
        }

        return all;
    }

    private static async Task UntilAsync(Func<Task<bool>> holds, TimeSpan patience)
    {
        Stopwatch time = Stopwatch.StartNew();
        while (!await holds())
        {
            Assert.True(time.Elapsed < patience, "It does not come about.");
            await Task.Delay(100);
        }
    }
}
