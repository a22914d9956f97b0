using System.Diagnostics;
using Microsoft.Extensions.Options;

namespace CushionService.Admission;

/// <summary>Where orders are worked on: a few workers, each a thread of its own, so that a search never holds up the threads that hear
/// callers. Calls come first; the orders of streams take every fourth turn, and all turns that are left.</summary>
internal sealed class WorkerPool : IDisposable
{
    private const int TurnOfStreams = 4;

    private readonly object _door = new();
    private readonly Queue<Job> _calls = new();
    private readonly Queue<Job> _streamed = new();
    private readonly Thread[] _workers;
    private readonly int _most;
    private readonly long _longestWait;
    private int _turn;
    private bool _closed;

    // What an order took of late: an exponential mean, in ticks of the stopwatch.
    private long _mean;

    public WorkerPool(IOptions<AdmissionOptions> options)
    {
        _most = options.Value.Queue;
        _longestWait = options.Value.LongestWaitMs * Stopwatch.Frequency / 1_000;
        _workers =
        [
            .. Enumerable
                .Range(1, options.Value.Workers)
                .Select(number => new Thread(Work) { IsBackground = true, Name = $"worker {number}" }),
        ];
        foreach (Thread worker in _workers)
        {
            worker.Start();
        }
    }

    /// <summary>Calls that wait for a worker now.</summary>
    public int Waiting => Volatile.Read(in _waiting);

    private int _waiting;

    /// <summary>Whether a call that came now would wait too long.</summary>
    public bool IsFull =>
        Waiting is > 0 and int waiting && (waiting >= _most || waiting * Volatile.Read(in _mean) / _workers.Length > _longestWait);

    /// <summary>Takes on a call's work.</summary>
    /// <param name="work">The work.</param>
    /// <param name="cancellation">Gives it up.</param>
    /// <param name="time">When it is given up, counted from now; never when left out.</param>
    /// <returns>Its answer; null when the pool is full.</returns>
    public Task<T>? TryDo<T>(Func<CancellationToken, T> work, CancellationToken cancellation, TimeSpan? time = null)
    {
        Job<T> job = new(work, time ?? Timeout.InfiniteTimeSpan, fromTurn: false, cancellation);
        lock (_door)
        {
            if (_calls.Count >= _most || _closed)
            {
                return null;
            }

            _calls.Enqueue(job);
            Volatile.Write(ref _waiting, _calls.Count);
            Monitor.Pulse(_door);
        }

        return job.Answer;
    }

    /// <summary>Takes on the work of a stream, which waits as long as it must.</summary>
    /// <param name="work">The work.</param>
    /// <param name="cancellation">Gives it up.</param>
    /// <param name="time">When it is given up, counted from its turn; never when left out.</param>
    public Task<T> DoInTurn<T>(Func<CancellationToken, T> work, CancellationToken cancellation, TimeSpan? time = null)
    {
        Job<T> job = new(work, time ?? Timeout.InfiniteTimeSpan, fromTurn: true, cancellation);
        lock (_door)
        {
            ObjectDisposedException.ThrowIf(_closed, this);
            _streamed.Enqueue(job);
            Monitor.Pulse(_door);
        }

        return job.Answer;
    }

    /// <summary>Lets the workers finish what they are at, and what waits.</summary>
    public void Dispose()
    {
        lock (_door)
        {
            _closed = true;
            Monitor.PulseAll(_door);
        }
    }

    private void Work()
    {
        using Deadline ending = new();
        while (Next() is { } job)
        {
            long began = Stopwatch.GetTimestamp();
            QueueMetrics.Waited(began - job.Came);
            job.Do(ending);
            long took = Stopwatch.GetTimestamp() - began;
            // Two workers may write at once; a mean that misses one order is as good.
            Volatile.Write(ref _mean, _mean + ((took - _mean) / 16));
        }
    }

    private Job? Next()
    {
        lock (_door)
        {
            while (_calls.Count == 0 && _streamed.Count == 0)
            {
                if (_closed)
                {
                    return null;
                }

                Monitor.Wait(_door);
            }

            bool streams = _calls.Count == 0 || (_streamed.Count > 0 && ++_turn % TurnOfStreams == 0);
            Job job = (streams ? _streamed : _calls).Dequeue();
            Volatile.Write(ref _waiting, _calls.Count);
            return job;
        }
    }
}
