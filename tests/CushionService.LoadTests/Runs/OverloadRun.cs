using System.Globalization;
using CushionService.LoadTests.Generating;

namespace CushionService.LoadTests.Runs;

/// <summary>What becomes of callers when five times as many come as can be served.</summary>
internal static class OverloadRun
{
    private const double Overload = 5;

    public static async Task RunAsync(int seconds)
    {
        using LoopbackHost host = await LoopbackHost.StartAsync(("Admission__LongestWaitMs", "25"));
        Generator generator = new(host, () => new RestConnection(host.Rest));
        Func<int, byte[]> mix = Requests.Mix();
        // One caller for each hand: none waits, and none is rejected.
        await generator.SaturateAsync(mix, Environment.ProcessorCount, TimeSpan.FromSeconds(10));
        Measured saturated = await generator.SaturateAsync(mix, Environment.ProcessorCount, TimeSpan.FromSeconds(10));
        Console.WriteLine($"saturated  {saturated}");
        Measured unloaded = await generator.SendAsync(mix, 0.1 * saturated.Rate, 64, TimeSpan.FromSeconds(30));
        Console.WriteLine($"unloaded   {unloaded}");
        long before = host.WorkingSet;
        Task<Measured> live = generator.SendAsync(_ => Requests.Live, 20, 8, TimeSpan.FromSeconds(seconds));
        Measured overloaded = await generator.SendAsync(mix, Overload * saturated.Rate, 256, TimeSpan.FromSeconds(seconds));
        Console.WriteLine($"overloaded {overloaded}");
        Console.WriteLine($"live       {await live}");
        Console.WriteLine(
            string.Create(
                CultureInfo.InvariantCulture,
                $"p99 of what was let in {overloaded.Percentile(99) / unloaded.Percentile(99):0.0} × "
                    + $"unloaded; {overloaded.Others(200, 429, 503)} neither answered nor rejected; "
                    + $"{overloaded.RefusedSilently} rejected without Retry-After; working set {before >> 20} "
                    + $"to {host.WorkingSet >> 20} MiB"
            )
        );
    }
}
