using System.Net.Sockets;
using CushionService.LoadTests.Generating;

namespace CushionService.LoadTests.Chaos;

/// <summary>Two instances behind nginx at 300 requests a second: one is killed, both are restarted one after the other, and callers come
/// that never finish what they say.</summary>
internal static class ChaosRun
{
    private const double Rate = 300;

    public static async Task<int> RunAsync(int seconds)
    {
        int[] ports = [Balancer.FreePort(), Balancer.FreePort()];
        LoopbackHost[] instances = [await InstanceAsync(ports[0]), await InstanceAsync(ports[1])];
        using Balancer balancer = Balancer.Start(ports);
        await Task.Delay(500);
        TimeSpan phase = TimeSpan.FromSeconds(seconds);
        Generator generator = new(null, () => new RestConnection(balancer.At));
        long failed = 0;
        try
        {
            await PhaseAsync("nothing happens", () => Task.CompletedTask);
            await PhaseAsync(
                "kill -9 of one",
                () =>
                {
                    instances[0].Dispose();
                    return Task.CompletedTask;
                }
            );
            instances[0] = await InstanceAsync(ports[0]);
            await PhaseAsync(
                "rolling restart",
                async () =>
                {
                    for (int i = 0; i < instances.Length; i++)
                    {
                        await instances[i].StopAsync();
                        instances[i].Dispose();
                        instances[i] = await InstanceAsync(ports[i]);
                        await Task.Delay(1_500);
                    }
                }
            );
            await PhaseAsync("slow and half-open callers", () => UnfinishedAsync(ports, phase / 2));
        }
        finally
        {
            Array.ForEach(instances, instance => instance.Dispose());
        }

        return failed == 0 ? 0 : 1;

        async Task PhaseAsync(string name, Func<Task> happens)
        {
            Task<Measured> sending = generator.SendAsync(_ => Requests.Yardage, Rate, 64, phase);
            await Task.Delay(phase / 4);
            await happens();
            Measured measured = await sending;
            failed += measured.Others(200);
            Console.WriteLine($"{name, -28}{measured.Calls} calls, {measured.Others(200)} failed, {measured}");
        }
    }

    private static Task<LoopbackHost> InstanceAsync(int port) =>
        LoopbackHost.StartAsync(
            ("ASPNETCORE_URLS", $"http://127.0.0.1:{port}"),
            ("Lifetime__NoticeSeconds", "1"),
            ("Admission__LongestWaitMs", "25")
        );

    // Callers that send half a head, half a body a byte at a time, or nothing at all, straight to the instances.
    private static async Task UnfinishedAsync(int[] ports, TimeSpan time)
    {
        List<Socket> sockets = [];
        for (int i = 0; i < 200; i++)
        {
            Socket socket = new(SocketType.Stream, ProtocolType.Tcp);
            await socket.ConnectAsync("127.0.0.1", ports[i % ports.Length]);
            byte[] said = (i % 3) switch
            {
                0 => [],
                1 => "POST /v1/yardage HTTP/1.1\r\nHost: a"u8.ToArray(),
                _ =>
                    "POST /v1/yardage HTTP/1.1\r\nHost: a\r\nContent-Type: application/json\r\nContent-Length: 100000\r\n\r\n{"u8.ToArray(),
            };
            await socket.SendAsync(said);
            sockets.Add(socket);
        }

        await Task.Delay(time);
        sockets.ForEach(socket => socket.Dispose());
    }
}
