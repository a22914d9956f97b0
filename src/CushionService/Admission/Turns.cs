using System.Threading.RateLimiting;
using CushionService.Access;
using Microsoft.Extensions.Options;

namespace CushionService.Admission;

/// <summary>Whose turn it is with the workers. There are as many workers as processors, so that an order never waits
/// within its search. A caller waits for its own share of them first, then for that of its group (callers without a key,
/// or streams), and only then in the queue of all: so the queue of all holds a few orders of each caller, and callers
/// take turns in it, however many calls one of them sends.</summary>
/// <remarks>A worker is a permit and not a thread: the order is worked on where its call runs. The thread pool keeps as
/// many threads beside the workers as it has without them, so that a search holds up no thread that reads requests.
/// </remarks>
internal sealed class Turns : IDisposable
{
    // A streamed order lets the calls pass that it finds waiting when it has a worker: at most three times.
    private const int TimesStreamsYield = 3;

    // The mean follows the last 16 orders or so.
    private const int MeanOver = 16;

    private readonly AdmissionOptions _options;
    private readonly PartitionedRateLimiter<Place> _shares;
    private readonly PartitionedRateLimiter<Place> _callers;
    private readonly PartitionedRateLimiter<Place> _groups;
    private readonly ConcurrencyLimiter _workers;
    private int _waiting;
    private long _meanTicks;

    /// <summary>Sets the shares up.</summary>
    /// <param name="options">How many workers there are, and how much may wait for them.</param>
    public Turns(IOptions<AdmissionOptions> options)
    {
        _options = options.Value;
        _callers = PartitionedRateLimiter.Create<Place, (string, bool, int)>(place =>
            RateLimitPartition.GetConcurrencyLimiter(
                (place.Caller.Name, place.Streamed, ShareOf(place)),
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
        _workers = new ConcurrencyLimiter(Concurrency(_options.Workers, int.MaxValue));
        ThreadPool.GetMinThreads(out int threads, out int ports);
        ThreadPool.SetMinThreads(Math.Max(threads, Environment.ProcessorCount + (2 * _options.Workers)), ports);
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
            all = _workers.GetStatistics()?.CurrentQueuedCount ?? 0;
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
        if (streamed)
        {
            return await TakeStreamedAsync(place, cancellation);
        }

        // Mostly a worker is free, and nothing need be set up for a wait.
        RateLimitLease shares = _shares.AttemptAcquire(place);
        if (shares.IsAcquired)
        {
            RateLimitLease worker = _workers.AttemptAcquire();
            if (worker.IsAcquired)
            {
                return new Turn(shares, worker);
            }
        }

        if (Interlocked.Increment(ref _waiting) > _options.Queue)
        {
            Interlocked.Decrement(ref _waiting);
            return new Turn(shares, null);
        }

        using CancellationTokenSource wait = CancellationTokenSource.CreateLinkedTokenSource(cancellation);
        wait.CancelAfter(longest);
        try
        {
            if (!shares.IsAcquired)
            {
                shares = await _shares.AcquireAsync(place, 1, wait.Token);
            }

            return new Turn(shares, shares.IsAcquired ? await _workers.AcquireAsync(1, wait.Token) : null);
        }
        catch (OperationCanceledException)
        {
            shares.Dispose();
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

    // Rejoining the queue before giving the worker back keeps the order's place behind those that wait now, and no
    // further back.
    private async ValueTask<Turn> TakeStreamedAsync(Place place, CancellationToken cancellation)
    {
        RateLimitLease shares = await _shares.AcquireAsync(place, 1, cancellation);
        try
        {
            RateLimitLease worker = await _workers.AcquireAsync(1, cancellation);
            for (int time = 0; time < TimesStreamsYield && worker.IsAcquired && _workers.GetStatistics()!.CurrentQueuedCount > 0; time++)
            {
                // To the end of the queue.
                ValueTask<RateLimitLease> next = _workers.AcquireAsync(1, cancellation);
                worker.Dispose();
                worker = await next;
            }

            return new Turn(shares, worker);
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
