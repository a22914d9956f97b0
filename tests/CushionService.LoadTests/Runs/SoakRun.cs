using CushionService.LoadTests.Generating;

namespace CushionService.LoadTests.Runs;

/// <summary>Half of what the service can do, for as long as one likes: memory and handles must not grow.</summary>
internal static class SoakRun
{
    public static async Task RunAsync(int minutes)
    {
        using LoopbackHost host = await LoopbackHost.StartAsync(("Admission__LongestWaitMs", "25"));
        Generator generator = new(host, () => new RestConnection(host.Rest));
        Func<int, byte[]> mix = Requests.Mix();
        Measured saturated = await generator.SaturateAsync(mix, Environment.ProcessorCount, TimeSpan.FromSeconds(20));
        Console.WriteLine($"saturated {saturated}");
        for (int minute = 1; minute <= minutes; minute++)
        {
            Measured measured = await generator.SendAsync(mix, 0.5 * saturated.Rate, 64, TimeSpan.FromMinutes(1));
            Console.WriteLine($"minute {minute, 3}: working set {host.WorkingSet >> 20} MiB, {host.Handles} handles, {measured}");
        }
    }
}
