using System.Collections.Concurrent;
using System.Diagnostics;

namespace CushionService.LoadTests.Generating;

/// <summary>Requests that arrive at a constant rate, whatever becomes of those before them. The thread that keeps the time sends them
/// itself: the generator shares the processors with the service, and is to take as little of them as it can.</summary>
internal sealed class Arrivals(Func<int, byte[]> request, IConnection[] connections) : IDisposable
{
    private readonly ConcurrentStack<IConnection> _free = new(connections);
    private readonly ConcurrentQueue<(int Number, long At)> _waiting = new();
    private readonly TaskCompletionSource _all = new(TaskCreationOptions.RunContinuationsAsynchronously);
    private int _left;

    /// <summary>What was measured so far.</summary>
    public Measured Measured { get; } = new();

    /// <summary>Sends until the time is over, and waits for the last answer.</summary>
    /// <param name="rate">Requests a second.</param>
    /// <param name="began">When the first is due, in ticks of <see cref="Stopwatch"/>.</param>
    /// <param name="time">How long requests arrive.</param>
    public Task SendAsync(double rate, long began, TimeSpan time)
    {
        _left = Math.Max(1, (int)(rate * time.TotalSeconds));
        new Thread(() => Tick(rate, began, _left)) { IsBackground = true }.Start();
        return _all.Task;
    }

    public void Dispose()
    {
        foreach (IConnection connection in connections)
        {
            connection.Dispose();
        }
    }

    private void Tick(double rate, long began, int count)
    {
        for (int number = 0; number < count; number++)
        {
            long at = began + (long)(number / rate * Stopwatch.Frequency);
            while (Stopwatch.GetTimestamp() < at)
            {
                Thread.Sleep(1);
            }

            _waiting.Enqueue((number, at));
            Send();
        }
    }

    private void Send()
    {
        while (!_waiting.IsEmpty && _free.TryPop(out IConnection? connection))
        {
            _ = SendAsync(connection);
        }
    }

    // Sends what waits, one after the other, until nothing does.
    private async Task SendAsync(IConnection connection)
    {
        while (_waiting.TryDequeue(out (int Number, long At) due))
        {
            try
            {
                Measured.Add(await connection.SendAsync(request(due.Number), CancellationToken.None), Generator.Microseconds(due.At));
            }
            catch (Exception fault)
            {
                _all.TrySetException(fault);
            }

            if (Interlocked.Decrement(ref _left) == 0)
            {
                _all.TrySetResult();
            }
        }

        _free.Push(connection);

        // What came before it was free again.
        Send();
    }
}
