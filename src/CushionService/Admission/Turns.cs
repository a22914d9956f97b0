using System.Threading.RateLimiting;
using CushionService.Access;
using Microsoft.Extensions.Options;

namespace CushionService.Admission;

/// <summary>Whose turn it is with the workers. There are as many workers as processors, so that an order never waits
/// within its search. A caller waits for its own share of them first, then for that of its group (callers without a key,
/// or streams), and only then in the queue of all: so the queue of all holds a few orders of each caller, and callers
/// take turns in it, however many calls one of them sends.</summary>
internal sealed class Turns : IDisposable
{
    // The mean follows the last 16 orders or so.
    private const int MeanOver = 16;

    private readonly AdmissionOptions _options;
    private readonly PartitionedRateLimiter<Place> _shares;
    private readonly PartitionedRateLimiter<Place> _callers;
    private readonly PartitionedRateLimiter<Place> _groups;
    private readonly Workers _workers;
    private int _waiting;
    private long _meanTicks;

    /// <summary>Sets the shares up.</summary>
    /// <param name="options">How many workers there are, and how much may wait for them.</param>
    public Turns(IOptions<AdmissionOptions> options)
    {
        _options = options.Value;
        _callers = PartitionedRateLimiter.Create<Place, (string, bool, int)>(place =>
            SharesWithNobody(place)
                ? RateLimitPartition.GetNoLimiter<(string, bool, int)>(default)
                : RateLimitPartition.GetConcurrencyLimiter(
                    (place.Caller.Name, place.Streamed, OrdersOf(place)),
                    key => Concurrency(key.Item3, key.Item2 ? int.MaxValue : QueueOf(place.Caller))
                )
        );
        _groups = PartitionedRateLimiter.Create<Place, Group>(place =>
            GroupOf(place) switch
            {
                Group.Streams => RateLimitPartition.GetConcurrencyLimiter(
                    Group.Streams,
                    _ => Concurrency(PartOf(_options.StreamShare), int.MaxValue)
                ),
                Group.Anonymous => RateLimitPartition.GetConcurrencyLimiter(
                    Group.Anonymous,
                    _ => Concurrency(PartOf(_options.AnonymousShare), _options.Queue)
                ),
                _ => RateLimitPartition.GetNoLimiter(Group.Others),
            }
        );
        _shares = PartitionedRateLimiter.CreateChained(_callers, _groups);
        _workers = new Workers(_options.Workers);
    }

    // Callers without a limit of their own, and those who share one.
    private enum Group
    {
        Others,
        Anonymous,
        Streams,
    }

    /// <summary>Calls that wait for a worker now; the orders of streams are not counted.</summary>
    public int Waiting => Volatile.Read(in _waiting);

    /// <summary>Whether a call of a caller that arrives now would find its queue full, or wait longer than the longest
    /// wait of any effort: what is before it times the mean time of an order, shared by the workers that it may
    /// have.</summary>
    /// <param name="caller">Who calls.</param>
    /// <remarks>An estimate from counters that other calls change meanwhile: <see cref="TakeAsync"/> decides.</remarks>
    public bool IsFull(Caller caller)
    {
        if (Waiting == 0)
        {
            return false;
        }

        Place place = new(caller, Streamed: false);
        long own = _callers.GetStatistics(place)?.CurrentQueuedCount ?? 0,
            all = _workers.Waiting;
        double orders = ((double)own / ShareOf(place)) + ((double)all / _options.Workers);
        return Waiting >= _options.Queue
            || own >= QueueOf(caller)
            || orders * TimeSpan.FromTicks(Volatile.Read(in _meanTicks)).TotalMilliseconds > _options.LongestWaitOfAny.TotalMilliseconds;
    }

    /// <summary>Waits for a turn.</summary>
    /// <param name="caller">Who sends the order.</param>
    /// <param name="streamed">Whether it is an order of a stream, which waits as long as it takes.</param>
    /// <param name="longest">How long a call may wait.</param>
    /// <param name="cancellation">The caller's.</param>
    /// <returns>The turn; without a worker when the queue is full or the wait was too long.</returns>
    /// <exception cref="OperationCanceledException">The caller cancelled.</exception>
    public async ValueTask<Turn> TakeAsync(Caller caller, bool streamed, TimeSpan longest, CancellationToken cancellation)
    {
        Place place = new(caller, streamed);
        RateLimitLease shares = _shares.AttemptAcquire(place);
        WorkerRequest? worker = null;
        if (shares.IsAcquired)
        {
            worker = _workers.Request(streamed, out bool waits);
            if (!waits)
            {
                // Mostly: nothing need be set up for a wait.
                return new Turn(shares, await worker.Task);
            }
        }

        if (streamed)
        {
            return await WaitAsync(place, shares, worker, cancellation);
        }

        if (Interlocked.Increment(ref _waiting) > _options.Queue)
        {
            Interlocked.Decrement(ref _waiting);
            worker?.TrySetCanceled(CancellationToken.None);
            return new Turn(shares, null);
        }

        using CancellationTokenSource wait = CancellationTokenSource.CreateLinkedTokenSource(cancellation);
        wait.CancelAfter(longest);
        try
        {
            return await WaitAsync(place, shares, worker, wait.Token);
        }
        catch (OperationCanceledException)
        {
            cancellation.ThrowIfCancellationRequested();
            return default;
        }
        finally
        {
            Interlocked.Decrement(ref _waiting);
        }
    }

    /// <summary>Notes how long an order has taken, for <see cref="IsFull"/>.</summary>
    /// <param name="time">From when the order had a worker to its answer.</param>
    public void Took(TimeSpan time) =>
        // Two workers may write at the same time; a mean that misses one order is as good.
        Volatile.Write(ref _meanTicks, _meanTicks + ((time.Ticks - _meanTicks) / MeanOver));

    /// <summary>Ends the limiters. Who waits gets no turn.</summary>
    public void Dispose()
    {
        _shares.Dispose();
        _callers.Dispose();
        _groups.Dispose();
        _workers.Dispose();
    }

    // Waits for the shares, where none were free, and then for a worker.
    private async ValueTask<Turn> WaitAsync(Place place, RateLimitLease shares, WorkerRequest? worker, CancellationToken cancellation)
    {
        try
        {
            if (worker is null)
            {
                shares = await _shares.AcquireAsync(place, 1, cancellation);
                worker = shares.IsAcquired ? _workers.Request(place.Streamed, out _) : null;
            }

            return new Turn(shares, worker is null ? null : await worker.WaitAsync(cancellation));
        }
        catch (OperationCanceledException)
        {
            shares.Dispose();
            throw;
        }
    }

    private static ConcurrencyLimiterOptions Concurrency(int permits, int queue) =>
        new()
        {
            PermitLimit = permits,
            QueueLimit = queue,
            QueueProcessingOrder = QueueProcessingOrder.OldestFirst,
        };

    private static Group GroupOf(Place place) =>
        place.Streamed ? Group.Streams
        : place.Caller.IsGuest ? Group.Anonymous
        : Group.Others;

    // A caller that may have all workers has as many orders again in the queue of all, so that a worker goes from one to
    // the next.
    private int OrdersOf(Place place) => ShareOf(place) is var share && share < _options.Workers ? share : 2 * share;

    private static bool SharesWithNobody(Place place) => place is { Streamed: false, Caller: { IsGuest: false, IsKnown: false } };

    // A caller that nobody need share with has all workers.
    private int ShareOf(Place place) =>
        place.Streamed ? PartOf(_options.StreamShare)
        : place.Caller.IsGuest ? PartOf(_options.GuestShare)
        : place.Caller.IsKnown ? (int)Math.Ceiling(_options.Workers * _options.CallerShare)
        : _options.Workers;

    // One caller must not fill the queue of all, unless it is alone.
    private int QueueOf(Caller caller) => caller.IsGuest || caller.IsKnown ? Math.Max(1, _options.Queue / 4) : _options.Queue;

    // Rounded down, and at least one worker: with none, nothing would ever be answered.
    private int PartOf(double share) => Math.Max(1, (int)(_options.Workers * share));

    // Whose order waits, and from where.
    private readonly record struct Place(Caller Caller, bool Streamed);
}
