using System.Collections.Concurrent;
using NATS.Client.Core;
using NATS.Client.JetStream;

namespace CushionService.Bulk;

/// <summary>The orders that a worker has taken and not yet answered. While it has them it tells the server so, for otherwise the server
/// would give those that take long to another worker.</summary>
internal sealed class HeldOrders : IAsyncDisposable
{
    private readonly ConcurrentDictionary<INatsJSMsg<byte[]>, bool> _held = [];
    private readonly CancellationTokenSource _end = new();
    private readonly Task _telling;

    /// <summary>Begins to tell.</summary>
    /// <param name="wait">After how long the server gives an order to another worker.</param>
    /// <remarks>It tells three times within that wait, so that one lost message costs nothing.</remarks>
    public HeldOrders(TimeSpan wait) => _telling = TellAsync(wait / 3);

    /// <summary>Holds an order.</summary>
    /// <param name="order">As it was delivered; holding it twice is as holding it once.</param>
    public void Add(INatsJSMsg<byte[]> order) => _held[order] = true;

    /// <summary>Lets go of an order.</summary>
    /// <param name="order">One that is answered, given back or failed; an order that is not held is passed over.</param>
    public void Remove(INatsJSMsg<byte[]> order) => _held.TryRemove(order, out _);

    /// <summary>Ends the telling.</summary>
    public async ValueTask DisposeAsync()
    {
        await _end.CancelAsync();
        await _telling.ConfigureAwait(ConfigureAwaitOptions.SuppressThrowing);
        _end.Dispose();
    }

    private async Task TellAsync(TimeSpan pause)
    {
        using PeriodicTimer timer = new(pause);
        while (await timer.WaitForNextTickAsync(_end.Token))
        {
            foreach (INatsJSMsg<byte[]> order in _held.Keys)
            {
                try
                {
                    await order.AckProgressAsync(cancellationToken: _end.Token);
                }
                catch (NatsException)
                {
                    // Of a server that is away: the order comes again when it is back.
                }
            }
        }
    }
}
