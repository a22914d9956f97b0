using System.Diagnostics;
using System.Text;
using System.Text.Json.Nodes;
using CushionService.LoadTests.Generating;
using Grpc.Net.Client;

namespace CushionService.LoadTests.Fuzzing;

/// <summary>Sends spoilt orders through both doors: whatever comes, the service answers or refuses, soon, and neither fails nor
/// grows.</summary>
internal static class FuzzRun
{
    private const int Workers = 8;
    private const int Told = 20;

    // Only a handful of searches can run at a time, and a machine may be busy.
    private static readonly TimeSpan Hang = TimeSpan.FromSeconds(2);

    private static readonly string[] Rest = ["validations", "pieces", "layouts", "yardage", "quotes", "comparisons", "fits"];
    private static readonly string[] Grpc = ["Validate", "ListPieces", "LayOut", "EstimateYardage", "Quote", "Compare", "Fit"];

    // One cushion or piece at a time: a fault shows in a small order as well as in a large one, and a million small ones are sent in
    // minutes.
    private static IEnumerable<string> Parts(string order)
    {
        foreach (string list in (string[])["cushions", "pieces"])
        {
            int count = JsonNode.Parse(order)![list]?.AsArray().Count ?? 0;
            for (int part = 0; part < count; part++)
            {
                JsonObject small = JsonNode.Parse(order)!.AsObject();
                JsonNode kept = small[list]![part]!.DeepClone();
                kept["quantity"] = 1;
                _ = small.Remove("cushions") & small.Remove("pieces");
                small[list] = new JsonArray(kept);
                small["effort"] = "quick";
                yield return small.ToJsonString();
            }
        }
    }

    public static async Task<int> RunAsync(int count)
    {
        using LoopbackHost host = await LoopbackHost.StartAsync(("Admission__LongestWaitMs", "60000"));
        using GrpcChannel channel = GrpcChannel.ForAddress(host.Grpc);
        IReadOnlyList<string> orders = [.. Requests.Orders().SelectMany(Parts)];
        byte[][] messages = [.. orders.Select(MessageText.Of)];
        Console.WriteLine($"{count} requests; {orders.Count} orders; seeds 1 to {Workers}; working set {host.WorkingSet >> 20} MiB");
        int sent = 0,
            failed = 0,
            slow = 0;
        int[] statuses = new int[600];
        await Task.WhenAll(
            Enumerable
                .Range(1, Workers)
                .Select(seed =>
                    Task.Run(async () =>
                    {
                        Spoiler spoiler = new(orders, seed);
                        Random random = new(seed);
                        using RestConnection rest = new(host.Rest);
                        IConnection[] grpc =
                        [
                            .. Grpc.Select(call => new GrpcConnection(channel, "cushionservice.v1.CushionService/" + call)),
                        ];
                        for (int number = seed; number <= count; number += Workers)
                        {
                            int call = random.Next(Rest.Length);
                            bool toRest = number % 2 == 0;
                            // A request message of any call has the order as its first field: the same wrapping serves them all.
                            byte[] body =
                                toRest ? spoiler.Next()
                                : random.Next(2) == 0 ? spoiler.Scratch(messages[random.Next(messages.Length)])
                                : MessageText.Of(Encoding.UTF8.GetString(spoiler.Next()));
                            long began = Stopwatch.GetTimestamp();
                            Reply reply = toRest
                                ? await rest.SendAsync(Requests.Post("/v1/" + Rest[call], body), CancellationToken.None)
                                : await grpc[call].SendAsync(body, CancellationToken.None);
                            TimeSpan took = Stopwatch.GetElapsedTime(began);
                            Interlocked.Increment(ref statuses[reply.Status]);
                            if (reply.Status is 0 or 500 && Interlocked.Increment(ref failed) <= Told)
                            {
                                Console.WriteLine(
                                    $"FAILED {reply.Status} {(toRest ? Rest[call] : Grpc[call])} "
                                        + $"{(toRest ? Encoding.UTF8.GetString(body) : Convert.ToBase64String(body))}"
                                );
                            }

                            if (took > Hang && Interlocked.Increment(ref slow) <= Told)
                            {
                                Console.WriteLine(
                                    $"SLOW {took.TotalSeconds:0.0} "
                                        + $"s {(toRest ? Rest[call] : Grpc[call])} "
                                        + $"{(toRest ? Encoding.UTF8.GetString(body) : Convert.ToBase64String(body))}"
                                );
                            }

                            int done = Interlocked.Increment(ref sent);
                            if (done % Math.Max(1, count / 10) == 0)
                            {
                                Console.WriteLine(
                                    $"{done, 8} sent, {failed} failed, {slow} slow, working set {host.WorkingSet >> 20} "
                                        + $"MiB, {host.Handles} handles"
                                );
                            }
                        }
                    })
                )
        );
        Console.WriteLine(
            string.Join(
                ' ',
                statuses
                    .Select((times, status) => (times, status))
                    .Where(pair => pair.times > 0)
                    .Select(pair => $"{pair.status}×{pair.times}")
            )
        );
        Console.WriteLine($"{failed} failed, {slow} slow, {(host.HasExited ? "the service has ended" : "the service lives")}");
        return failed + slow == 0 && !host.HasExited ? 0 : 1;
    }
}
