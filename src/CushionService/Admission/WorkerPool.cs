using System.Diagnostics;
using Microsoft.Extensions.Options;

namespace CushionService.Admission;

/// <summary>The threads that work on orders, and the two queues in front of them. The workers are few, one for each
/// processor, and apart from the thread pool, so that a search never holds up the threads that read requests and write
/// answers.</summary>
/// <remarks>Calls come first. The orders of streams take every fourth turn, and all turns that no call wants, so that
/// neither can starve the other.</remarks>
internal sealed class WorkerPool : IDisposable
{
    // One turn in four is a stream's while both queues hold work.
    private const int TurnOfStreams = 4;

    // The mean follows the last 16 orders or so.
    private const int MeanOver = 16;

    private readonly object _lock = new();
    private readonly Queue<Job> _calls = new();
    private readonly Queue<Job> _streamed = new();
    private readonly Thread[] _workers;
    private readonly int _capacity;

    // In ticks of the stopwatch, as is the mean of what orders took recently.
    private readonly long _longestWait;
    private long _meanTime;

    private int _waiting;
    private int _turn;
    private bool _closed;

    /// <summary>Starts the workers.</summary>
    /// <param name="options">How many, and how much may wait for them.</param>
    public WorkerPool(IOptions<AdmissionOptions> options)
    {
        _capacity = options.Value.Queue;
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

    /// <summary>Calls that wait for a worker now; the orders of streams are not counted.</summary>
    public int Waiting => Volatile.Read(in _waiting);

    /// <summary>Whether a call that arrives now would find the queue full, or wait longer than
    /// <see cref="AdmissionOptions.LongestWaitMs"/>: the calls in the queue times the mean time of an order, shared by
    /// the workers. A pool without a queue is never full, however slow its orders.</summary>
    public bool IsFull
    {
        get
        {
            int waiting = Waiting;
            return waiting > 0 && (waiting >= _capacity || waiting * Volatile.Read(in _meanTime) / _workers.Length > _longestWait);
        }
    }

    /// <summary>Puts work into its queue: that of calls, which has an end, or that of streams, which has none. A stream
    /// itself bounds how many orders it sends at the same time.</summary>
    /// <param name="job">The work. The time that a call spends in the queue counts towards its deadline.</param>
    /// <returns>Whether it was taken; false when the queue of calls is full, or the pool is closed.</returns>
    public bool TryEnqueue(Job job)
    {
        lock (_lock)
        {
            if (_closed || (!job.InTurn && _calls.Count >= _capacity))
            {
                return false;
            }

            (job.InTurn ? _streamed : _calls).Enqueue(job);
            Volatile.Write(ref _waiting, _calls.Count);
            Monitor.Pulse(_lock);
            return true;
        }
    }

    /// <summary>Closes the queues. The workers finish what they do and what waits, and end.</summary>
    public void Dispose()
    {
        lock (_lock)
        {
            _closed = true;
            Monitor.PulseAll(_lock);
        }
    }

    // The loop of a worker. A job never throws, so a worker ends only with the pool.
    private void Work()
    {
        while (Next() is { } job)
        {
            long began = Stopwatch.GetTimestamp();
            QueueMetrics.Waited(began - job.Arrived);
            job.Run();
            long took = Stopwatch.GetTimestamp() - began;
            // Two workers may write at the same time; a mean that misses one order is as good.
            Volatile.Write(ref _meanTime, _meanTime + ((took - _meanTime) / MeanOver));
        }
    }

    // Waits for work; null when the pool is closed and both queues are empty.
    private Job? Next()
    {
        lock (_lock)
        {
            while (_calls.Count == 0 && _streamed.Count == 0)
            {
                if (_closed)
                {
                    return null;
                }

                Monitor.Wait(_lock);
            }

            bool streams = _calls.Count == 0 || (_streamed.Count > 0 && ++_turn % TurnOfStreams == 0);
            Job job = (streams ? _streamed : _calls).Dequeue();
            Volatile.Write(ref _waiting, _calls.Count);
            return job;
        }
    }
}
