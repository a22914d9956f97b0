using System.Diagnostics;

namespace CushionService.LoadTests;

/// <summary>Sends numbered orders through a stream and checks every answer: in order, one for each, a refusal exactly for the bad
/// ones.</summary>
internal static class StreamRun
{
    /// <summary>Whether an order is one of the bad: one in a hundred.</summary>
    public static bool IsBad(int number) => number % 100 == 37;

    /// <summary>Finished width of an order, so that neighbours differ.</summary>
    public static int WidthOf(int number) => 10 + number % 40;

    public static async Task RunAsync(string name, LoopbackHost host, int count, Func<LoopbackHost, int, Action<Answer>, Task> call)
    {
        int next = 1;
        int[] marks = [count / 10, count / 2, count];
        long before = host.WorkingSet;
        Console.WriteLine($"{name}: {count} orders; working set before {Mebibytes(before)}");
        Stopwatch watch = Stopwatch.StartNew();
        await call(
            host,
            count,
            answer =>
            {
                if (answer.Number != next || answer.Refused != IsBad(next) || (!answer.Refused && answer.Reference != $"{next}"))
                {
                    throw new InvalidOperationException($"{name}: answer {next} is {answer}.");
                }

                if (Array.IndexOf(marks, next) is >= 0 and int mark)
                {
                    Console.WriteLine(
                        $"{name}: {next, 7} answered, working set {Mebibytes(host.WorkingSet)}, {next / watch.Elapsed.TotalSeconds:0} "
                            + "a second"
                    );
                }

                next++;
            }
        );
        Console.WriteLine(
            next == count + 1
                ? $"{name}: every answer in its place, {Enumerable.Range(1, count).Count(IsBad)} of them refusals"
                : throw new InvalidOperationException($"{name}: {next - 1} answers to {count} orders.")
        );
    }

    private static string Mebibytes(long bytes) => $"{bytes / 1048576.0:0} MiB";
}
