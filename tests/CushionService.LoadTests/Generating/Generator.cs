using System.Diagnostics;

namespace CushionService.LoadTests.Generating;

/// <summary>Sends requests to a host: as many as it takes (closed model), or at a constant rate whether it takes them or not (open
/// model).</summary>
/// <param name="host">Whose processor time is measured; null where there are several, or one that ends.</param>
/// <param name="connect">Makes a connection.</param>
internal sealed class Generator(LoopbackHost? host, Func<IConnection> connect)
{
    /// <summary>Sends from each connection as soon as it has its answer, which finds saturation.</summary>
    public async Task<Measured> SaturateAsync(Func<int, byte[]> request, int connections, TimeSpan time)
    {
        Measured measured = new();
        int number = 0;
        TimeSpan before = host?.ProcessorTime ?? default;
        long began = Stopwatch.GetTimestamp();
        await Task.WhenAll(
            Enumerable
                .Range(0, connections)
                .Select(_ =>
                    Task.Run(async () =>
                    {
                        using IConnection connection = connect();
                        while (Stopwatch.GetElapsedTime(began) < time)
                        {
                            long sent = Stopwatch.GetTimestamp();
                            Reply reply = await connection.SendAsync(request(Interlocked.Increment(ref number)), CancellationToken.None);
                            measured.Add(reply, Microseconds(sent));
                        }
                    })
                )
        );
        return Close(measured, began, before);
    }

    /// <summary>Sends at a constant rate. A request that finds no free connection waits, and its wait counts.</summary>
    public async Task<Measured> SendAsync(Func<int, byte[]> request, double rate, int connections, TimeSpan time)
    {
        TimeSpan before = host?.ProcessorTime ?? default;
        long began = Stopwatch.GetTimestamp();
        using Arrivals arrivals = new(request, [.. Enumerable.Range(0, connections).Select(_ => connect())]);
        await arrivals.SendAsync(rate, began, time);
        return Close(arrivals.Measured, began, before);
    }

    private Measured Close(Measured measured, long began, TimeSpan before)
    {
        measured.Seconds = Stopwatch.GetElapsedTime(began).TotalSeconds;
        measured.Processor = ((host?.ProcessorTime ?? default) - before).TotalMicroseconds / Math.Max(1, measured.Calls);
        return measured;
    }

    /// <summary>Microseconds since a time of <see cref="Stopwatch"/>.</summary>
    internal static long Microseconds(long since) => (long)Stopwatch.GetElapsedTime(since).TotalMicroseconds;
}
