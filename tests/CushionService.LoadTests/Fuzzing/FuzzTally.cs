using System.Text;

namespace CushionService.LoadTests.Fuzzing;

/// <summary>Counts what became of a fuzzing run's calls, and tells of the first that failed or took too long.</summary>
/// <param name="host">The service.</param>
/// <param name="count">How many calls there will be.</param>
internal sealed class FuzzTally(LoopbackHost host, int count)
{
    private const int Told = 20;

    // Only a handful of searches can run at a time, and a machine may be busy.
    private static readonly TimeSpan Hang = TimeSpan.FromSeconds(2);

    private readonly int[][] _statuses = [new int[600], new int[600]];
    private long _early = host.WorkingSet;
    private int _sent;
    private int _failed;
    private int _slow;

    /// <summary>Whether nothing failed, took too long, or was logged that must not be.</summary>
    public bool Holds => _failed + _slow + host.Errors.Count + host.Leaks == 0 && !host.HasExited;

    /// <summary>Counts one call.</summary>
    public void Add(bool toRest, string name, byte[] body, int status, TimeSpan took)
    {
        Interlocked.Increment(ref _statuses[toRest ? 0 : 1][status]);
        if (status is 0 or 500 && Interlocked.Increment(ref _failed) <= Told)
        {
            Console.WriteLine($"FAILED {status} {name} {Text(toRest, body)}");
        }

        if (took > Hang && Interlocked.Increment(ref _slow) <= Told)
        {
            Console.WriteLine($"SLOW {took.TotalSeconds:0.0} s {name} {Text(toRest, body)}");
        }

        int sent = Interlocked.Increment(ref _sent);
        if (sent == Math.Max(1, count / 5))
        {
            _early = host.WorkingSet;
        }

        if (sent % Math.Max(1, count / 10) == 0)
        {
            Console.WriteLine(
                $"{sent, 8} sent, {_failed} failed, {_slow} slow, working set {host.WorkingSet >> 20} MiB, {host.Handles} handles"
            );
        }
    }

    /// <summary>Prints the counts.</summary>
    public void Print()
    {
        Console.WriteLine($"REST: {Counts(_statuses[0])}");
        Console.WriteLine($"gRPC: {Counts(_statuses[1])}");
        foreach (string line in host.Errors.Lines)
        {
            Console.WriteLine($"LOGGED {line}");
        }

        Console.WriteLine(
            $"{_failed} failed, {_slow} slow, {host.Errors.Count} lines at Error, {host.Leaks} lines with text of an order, memory "
                + $"{(host.WorkingSet - _early) / 1048576.0:+0;-0} MiB since a fifth of the run, "
                + $"{(host.HasExited ? "the service has ended" : "the service lives")}"
        );
    }

    private static string Text(bool toRest, byte[] body) => toRest ? Encoding.UTF8.GetString(body) : Convert.ToBase64String(body);

    private static string Counts(int[] statuses) =>
        string.Join(
            ' ',
            statuses.Select((times, status) => (times, status)).Where(pair => pair.times > 0).Select(pair => $"{pair.status}×{pair.times}")
        );
}
