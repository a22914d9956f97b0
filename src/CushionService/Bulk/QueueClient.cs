using System.Collections.Concurrent;
using System.Globalization;
using System.IO.Compression;
using System.Text.Json;
using CushionService.Contract;
using CushionService.Contract.Orders;
using CushionService.Engine.Specifications;
using CushionService.Json;
using CushionService.Streaming;
using Microsoft.Extensions.Options;
using NATS.Client.JetStream;
using NATS.Client.JetStream.Models;

namespace CushionService.Bulk;

/// <summary>Sends orders to a queue, and gives each its answer when a worker has stored it.</summary>
internal sealed class QueueClient : IAsyncDisposable
{
    private readonly OrderQueue _queue;
    private readonly CancellationTokenSource _end = new();
    private readonly ConcurrentDictionary<string, TaskCompletionSource<BulkLine>> _waiting = [];

    // Another run of the same file has other ids: what it was sent is no answer to this one.
    private readonly string _run = Guid.NewGuid().ToString("N");
    private readonly List<Task> _listening = [];

    private QueueClient(OrderQueue queue) => _queue = queue;

    /// <summary>Connects, and begins to listen for answers.</summary>
    /// <param name="url">The address of the NATS server.</param>
    /// <param name="cancellation">Ends the attempt.</param>
    /// <exception cref="NATS.Client.Core.NatsException">The server cannot be reached.</exception>
    public static async Task<QueueClient> OpenAsync(string url, CancellationToken cancellation)
    {
        QueueClient client = new(new OrderQueue(Options.Create(new WorkerOptions { Url = url })));
        await client._queue.OpenAsync(cancellation);
        client._listening.Add(await client.ListenAsync(OrderSubjects.AnswerStream, cancellation));
        client._listening.Add(await client.ListenAsync(OrderSubjects.DeadStream, cancellation));
        return client;
    }

    /// <summary>Sends an order, and waits for its answer.</summary>
    /// <param name="line">The line of the order.</param>
    /// <param name="order">The order.</param>
    /// <param name="cancellation">Ends the wait; the order stays in the queue.</param>
    public async Task<BulkLine> AskAsync(long line, Order order, CancellationToken cancellation)
    {
        string id = string.Create(CultureInfo.InvariantCulture, $"{_run}-{line}");
        TaskCompletionSource<BulkLine> answer = new(TaskCreationOptions.RunContinuationsAsynchronously);
        // Entered before the order is sent: its answer may come before the sending returns.
        _waiting[id] = answer;
        byte[] body = JsonSerializer.SerializeToUtf8Bytes(order, ContractJson.Options);
        PubAckResponse stored = await _queue.Stream.PublishAsync(
            OrderSubjects.Orders,
            body,
            opts: new NatsJSPubOpts { MsgId = id },
            cancellationToken: cancellation
        );
        stored.EnsureSuccess();
        BulkLine came = await answer.Task.WaitAsync(cancellation);
        _waiting.TryRemove(id, out _);
        return came.IsProblem ? came with { Text = BulkText.AtLine(came.Text.Span, line) } : came;
    }

    /// <summary>Ends the listening, and closes the connection.</summary>
    public async ValueTask DisposeAsync()
    {
        await _end.CancelAsync();
        await Task.WhenAll(_listening).ConfigureAwait(ConfigureAwaitOptions.SuppressThrowing);
        await _queue.DisposeAsync();
        _end.Dispose();
    }

    // From what the stream has now: the order is sent after that, and so is its answer. The outer task ends when this is known, the inner
    // one with the client.
    private async Task<Task> ListenAsync(string stream, CancellationToken cancellation)
    {
        INatsJSStream known = await _queue.Stream.GetStreamAsync(stream, cancellationToken: cancellation);
        INatsJSConsumer consumer = await _queue.Stream.CreateOrderedConsumerAsync(
            stream,
            new NatsJSOrderedConsumerOpts
            {
                DeliverPolicy = ConsumerConfigDeliverPolicy.ByStartSequence,
                OptStartSeq = known.Info.State.LastSeq + 1,
            },
            cancellation
        );
        return Task.Run(() => TakeAsync(consumer), CancellationToken.None);
    }

    private async Task TakeAsync(INatsJSConsumer consumer)
    {
        await foreach (INatsJSMsg<byte[]> message in consumer.ConsumeAsync<byte[]>(cancellationToken: _end.Token))
        {
            if (
                message.Headers?.TryGetValue(OrderSubjects.OrderId, out var id) == true
                && _waiting.TryGetValue(id.ToString(), out TaskCompletionSource<BulkLine>? waiting)
            )
            {
                waiting.TrySetResult(Line(message));
            }
        }
    }

    private static BulkLine Line(INatsJSMsg<byte[]> message)
    {
        if (message.Subject == OrderSubjects.Dead)
        {
            Refusal refusal = new([new Violation("", "internal", StreamTexts.Failed)]);
            return new BulkLine(BulkText.Of(refusal, default, message.Headers![OrderSubjects.Number].ToString(), null), IsProblem: true);
        }

        byte[] body = message.Data ?? [];
        if (message.Headers!.ContainsKey("Content-Encoding"))
        {
            using GZipStream gzip = new(new MemoryStream(body), CompressionMode.Decompress);
            using MemoryStream to = new();
            gzip.CopyTo(to);
            body = to.ToArray();
        }

        return new BulkLine(body, message.Headers["Content-Type"] != BulkText.Json);
    }
}
