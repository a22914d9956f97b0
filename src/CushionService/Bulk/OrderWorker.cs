using CushionService.Rejections;
using Microsoft.Extensions.Options;
using NATS.Client.Core;
using NATS.Client.JetStream;

namespace CushionService.Bulk;

/// <summary>Takes orders from the queue and answers them, some at the same time. When the process is to end, it takes no more, finishes
/// what it works on, and gives the rest back.</summary>
/// <param name="queue">The queue.</param>
/// <param name="answering">Answers an order.</param>
/// <param name="options">How many orders, and how often each is tried.</param>
/// <param name="log">Gets the numbers of orders that failed, and nothing of their content.</param>
internal sealed partial class OrderWorker(
    OrderQueue queue,
    OrderAnswering answering,
    IOptions<WorkerOptions> options,
    ILogger<OrderWorker> log
) : BackgroundService
{
    private static readonly NatsJSNextOpts Patience = new() { Expires = TimeSpan.FromSeconds(5) };

    private readonly WorkerOptions _options = options.Value;

    /// <summary>Works until the process is to end.</summary>
    /// <param name="stoppingToken">Cancelled when the process is to end.</param>
    /// <returns>Ends once every loop has finished the order that it works on.</returns>
    protected override Task ExecuteAsync(CancellationToken stoppingToken) =>
        Task.WhenAll(Enumerable.Range(0, _options.Orders).Select(_ => Task.Run(() => WorkAsync(stoppingToken), CancellationToken.None)));

    // Whatever happens to the server, the worker goes on when it is back.
    private async Task WorkAsync(CancellationToken stop)
    {
        int failures = 0;
        INatsJSConsumer? consumer = null;
        await using HeldOrders held = new(_options.AckWait);
        while (!stop.IsCancellationRequested)
        {
            try
            {
                consumer ??= await queue.ConsumerAsync(stop);
                await AnswerAsync(await TakeAsync(consumer, stop), held, stop);
                failures = 0;
            }
            catch (Exception) when (stop.IsCancellationRequested)
            {
                // What was left goes to another worker.
                return;
            }
            catch (Exception exception)
            {
                consumer = null;
                TimeSpan pause = BackOff.After(++failures);
                LogAway(log, exception.GetType().Name, pause.TotalSeconds);
                await Task.Delay(pause, stop).ConfigureAwait(ConfigureAwaitOptions.SuppressThrowing);
            }
        }
    }

    // What is there at once, else the next that comes.
    private async Task<List<QueuedOrder>> TakeAsync(INatsJSConsumer consumer, CancellationToken stop)
    {
        List<QueuedOrder> batch = [];
        await foreach (
            INatsJSMsg<byte[]> message in consumer.FetchNoWaitAsync<byte[]>(
                new NatsJSFetchOpts { MaxMsgs = _options.Batch },
                cancellationToken: CancellationToken.None
            )
        )
        {
            batch.Add(new QueuedOrder(message));
        }

        if (batch.Count == 0 && await consumer.NextAsync<byte[]>(opts: Patience, cancellationToken: stop) is { } next)
        {
            batch.Add(new QueuedOrder(next));
        }

        return batch;
    }

    private async Task AnswerAsync(List<QueuedOrder> batch, HeldOrders held, CancellationToken stop)
    {
        batch.ForEach(order => held.Add(order.Message));
        try
        {
            foreach (QueuedOrder order in batch)
            {
                if (stop.IsCancellationRequested)
                {
                    await order.Message.NakAsync(cancellationToken: CancellationToken.None);
                }
                else
                {
                    await TryAsync(order);
                }

                held.Remove(order.Message);
            }
        }
        finally
        {
            batch.ForEach(order => held.Remove(order.Message));
        }
    }

    // An order that fails by a fault of ours is tried again later, perhaps by another release.
    private async Task TryAsync(QueuedOrder order)
    {
        try
        {
            await answering.AnswerAsync(order, _options.Deliveries);
        }
        catch (Exception exception) when (exception is not NatsException and not OperationCanceledException)
        {
            log.OrderFailed(exception, (long)order.Number, order.TraceId);
            await order.Message.NakAsync(delay: BackOff.After((int)order.Deliveries), cancellationToken: CancellationToken.None);
        }
    }

    [LoggerMessage(LogLevel.Warning, "The queue of orders does not answer ({Reason}); trying again in {Seconds} seconds")]
    private static partial void LogAway(ILogger log, string reason, double seconds);
}
