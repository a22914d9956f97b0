using System.Globalization;
using CushionService.LoadTests.Floor;
using CushionService.LoadTests.Generating;
using Grpc.Net.Client;

namespace CushionService.LoadTests.Runs;

/// <summary>How the widget's calls compare with the floor: alternating runs in one host, so that both sides see the same machine.</summary>
internal static class ThroughputRun
{
    private const int Connections = 32;
    private const int Rounds = 5;

    public static async Task RunAsync(int seconds)
    {
        // The service accepts everything that arrives: what is measured is what it can do, not what it would reject.
        using LoopbackHost host = await LoopbackHost.StartWithFloorAsync(("Admission__LongestWaitMs", "60000"));
        using GrpcChannel channel = GrpcChannel.ForAddress(host.Grpc);
        byte[] held = Requests.Get(Requests.Estimate, $"If-None-Match: {await TagAsync(host)}\r\n");
        Generator rest = new(host, () => new RestConnection(host.Rest));
        const string Echo = FloorCalls.Service + "/Echo",
            Estimate = "cushionservice.v1.CushionService/EstimateYardage";
        Generator echo = new(host, () => new GrpcConnection(host.Grpc, Echo)),
            echoShared = new(host, () => new GrpcConnection(channel, Echo));
        Generator grpc = new(host, () => new GrpcConnection(host.Grpc, Estimate)),
            grpcShared = new(host, () => new GrpcConnection(channel, Estimate));
        (string Name, Generator Generator, byte[] Request)[] sides =
        [
            ("floor REST", rest, Requests.Floor),
            ("POST /v1/yardage", rest, Requests.Yardage),
            ("GET /v1/estimate, held", rest, held),
            ("floor gRPC", echo, Requests.OneCushionMessage),
            ("EstimateYardage", grpc, Requests.OneCushionMessage),
            ("floor, one connection", echoShared, Requests.OneCushionMessage),
            ("Estimate…, one connection", grpcShared, Requests.OneCushionMessage),
        ];
        List<Measured>[] rounds = await SaturateAsync(sides, seconds);
        Tell("POST /v1/yardage", 1, 0);
        Tell("GET /v1/estimate, held", 2, 0);
        Tell("EstimateYardage", 4, 3);
        Tell("EstimateYardage, one connection", 6, 5);
        double rate = 0.7 * Median(rounds[1], measured => measured.Rate);
        List<Measured> arriving = [];
        for (int round = -1; round < Rounds; round++)
        {
            Measured measured = await rest.SendAsync(_ => Requests.Yardage, rate, 4 * Connections, TimeSpan.FromSeconds(seconds));
            if (round >= 0)
            {
                arriving.Add(measured);
                Console.WriteLine($"{"POST /v1/yardage at 70 %", -26}{measured}");
            }
        }

        Console.WriteLine(
            string.Create(
                CultureInfo.InvariantCulture,
                $"POST /v1/yardage at 70 %: p99 {Median(arriving, measured => measured.Percentile(99)):0.0} ms (median of {Rounds})"
            )
        );

        // Round by round: the two sides of a round see the same machine, and a shared one changes its pace.
        void Tell(string name, int side, int floor) =>
            Console.WriteLine(
                string.Create(
                    CultureInfo.InvariantCulture,
                    $"{name} / floor: {Ratio(side, floor, measured => measured.Rate):0.00} of the throughput, "
                        + $"{Ratio(floor, side, measured => measured.Processor):0.00} by processor time of the service alone (medians "
                        + $"of {Rounds} rounds)"
                )
            );

        double Ratio(int one, int other, Func<Measured, double> figure) =>
            rounds[one].Zip(rounds[other], (a, b) => figure(a) / figure(b)).Order().ElementAt(Rounds / 2);
    }

    // Every side in every round, one after the other, so that a machine that slows down slows all of them.
    private static async Task<List<Measured>[]> SaturateAsync((string Name, Generator Generator, byte[] Request)[] sides, int seconds)
    {
        List<Measured>[] rounds = [.. sides.Select(_ => new List<Measured>())];
        for (int round = -1; round < Rounds; round++)
        {
            for (int side = 0; side < sides.Length; side++)
            {
                Measured measured = await sides[side]
                    .Generator.SaturateAsync(_ => sides[side].Request, Connections, TimeSpan.FromSeconds(seconds));
                if (measured.Others(200, 304) > 0)
                {
                    throw new InvalidOperationException($"{sides[side].Name}: {measured}");
                }

                // The first round warms up.
                if (round >= 0)
                {
                    rounds[side].Add(measured);
                    Console.WriteLine($"{sides[side].Name, -26}{measured}");
                }
            }
        }

        return rounds;
    }

    private static double Median(List<Measured> rounds, Func<Measured, double> figure) =>
        rounds.Select(figure).Order().ElementAt(rounds.Count / 2);

    private static async Task<string> TagAsync(LoopbackHost host)
    {
        using HttpClient http = new() { BaseAddress = host.Rest };
        using HttpResponseMessage answer = await http.GetAsync(new Uri(Requests.Estimate, UriKind.Relative));
        return answer.EnsureSuccessStatusCode().Headers.ETag!.ToString();
    }
}
