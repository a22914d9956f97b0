namespace CushionService.Admission;

/// <summary>The workers: threads of their own, one for each order that may be worked on at the same time, and the queue
/// before them. Calls come first; an order of a stream lets three calls pass at most.</summary>
/// <remarks>A worker goes from one order to the next without leaving its processor. On the thread pool, orders and
/// requests displace each other from the processor's caches, and a short order takes twice as long (decision
/// 12).</remarks>
internal sealed class Workers : IDisposable
{
    private const int CallsPerStreamed = 3;

    private readonly object _lock = new();
    private readonly Queue<WorkerRequest> _calls = new();
    private readonly Queue<WorkerRequest> _streamed = new();
    private int _idle;
    private int _passed;
    private bool _closed;

    /// <summary>Starts the workers.</summary>
    /// <param name="count">How many: 1 or more.</param>
    public Workers(int count)
    {
        _idle = count;
        for (int number = 1; number <= count; number++)
        {
            new Thread(Work) { IsBackground = true, Name = $"worker {number}" }.Start();
        }
    }

    /// <summary>Orders that wait for a worker now, those of streams included.</summary>
    public int Waiting
    {
        get
        {
            lock (_lock)
            {
                return Math.Max(0, _calls.Count + _streamed.Count - _idle);
            }
        }
    }

    /// <summary>Queues for a worker.</summary>
    /// <param name="streamed">Whether it is for an order of a stream.</param>
    /// <param name="waits">Whether all workers are taken.</param>
    /// <returns>The place in the queue.</returns>
    public WorkerRequest Request(bool streamed, out bool waits)
    {
        WorkerRequest request = new(this);
        lock (_lock)
        {
            if (_closed)
            {
                waits = false;
                request.SetResult(null);
                return request;
            }

            (streamed ? _streamed : _calls).Enqueue(request);
            waits = _calls.Count + _streamed.Count > _idle;
            Monitor.Pulse(_lock);
        }

        return request;
    }

    /// <summary>Notes that a worker is free: at once, and not only when its thread comes back, so that an order that arrives
    /// between finds it.</summary>
    public void Free()
    {
        lock (_lock)
        {
            _idle++;
        }
    }

    /// <summary>Lets the workers finish what they are at. Who waits gets none.</summary>
    public void Dispose()
    {
        lock (_lock)
        {
            _closed = true;
            Monitor.PulseAll(_lock);
        }
    }

    private void Work()
    {
        while (Next() is { } request)
        {
            request.Serve();
        }
    }

    private WorkerRequest? Next()
    {
        lock (_lock)
        {
            while (_calls.Count == 0 && _streamed.Count == 0 && !_closed)
            {
                Monitor.Wait(_lock);
            }

            while (_closed && (_calls.TryDequeue(out WorkerRequest? waiting) || _streamed.TryDequeue(out waiting)))
            {
                waiting.TrySetResult(null);
            }

            if (_closed)
            {
                return null;
            }

            bool call = _calls.Count > 0 && (_streamed.Count == 0 || _passed < CallsPerStreamed);
            _passed = call && _streamed.Count > 0 ? _passed + 1 : 0;
            _idle--;
            return (call ? _calls : _streamed).Dequeue();
        }
    }
}
