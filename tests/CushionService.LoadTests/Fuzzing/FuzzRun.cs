using System.Diagnostics;
using System.Text.Json.Nodes;
using CushionService.LoadTests.Generating;
using Grpc.Net.Client;

namespace CushionService.LoadTests.Fuzzing;

/// <summary>Sends spoilt orders through both doors: whatever comes, the service answers or refuses, soon, and neither fails nor
/// grows.</summary>
internal static class FuzzRun
{
    private const int Workers = 8;
    private static readonly TimeSpan LongestWait = TimeSpan.FromSeconds(60);

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
                small["reference"] = LoopbackHost.Secret;
                kept["label"] = LoopbackHost.Secret;
                yield return small.ToJsonString();
            }
        }
    }

    /// <summary>Sends the requests.</summary>
    /// <param name="count">How many.</param>
    /// <param name="first">The seed of the first worker; those of the others follow. Other seeds are other requests, so that a long run may
    /// be sent in parts.</param>
    /// <returns>0 where nothing failed.</returns>
    public static async Task<int> RunAsync(int count, int first = 1)
    {
        using LoopbackHost host = await LoopbackHost.StartAsync(
            ("Admission__LongestWaitMs", "60000"),
            ("Access__Anonymous__Streams", "1000"),
            ("Access__Anonymous__Steps", "20000000"),
            ("Access__Anonymous__StepsBurst", "20000000")
        );
        using GrpcChannel channel = GrpcChannel.ForAddress(
            host.Grpc,
            new GrpcChannelOptions { MaxReceiveMessageSize = null, DisposeHttpClient = true }
        );
        IReadOnlyList<string> orders = [.. Requests.Orders().SelectMany(Parts)];
        byte[][] messages = [.. orders.Select(order => MessageText.Of(order))];
        Console.WriteLine(
            $"{count} requests; {orders.Count} orders; seeds {first} to {first + Workers - 1}; working set {host.WorkingSet >> 20} MiB"
        );
        FuzzTally tally = new(host, count);
        await Task.WhenAll(
            Enumerable
                .Range(0, Workers)
                .Select(worker =>
                    Task.Run(() => SendAsync(new FuzzCalls(orders, messages, first + worker), host.Rest, channel, tally, worker, count))
                )
        );
        tally.Print();
        return tally.Holds ? 0 : 1;
    }

    private static async Task SendAsync(FuzzCalls calls, Uri at, GrpcChannel channel, FuzzTally tally, int worker, int count)
    {
        using RestConnection rest = new(at);
        IConnection[] grpc = [.. FuzzCalls.Grpc.Select(call => Connection(channel, call))];
        for (int number = worker; number < count; number += Workers)
        {
            bool toRest = number % 2 == 0;
            (IConnection connection, string name, byte[] request, byte[] body) = toRest ? OverRest() : OverGrpc();
            using CancellationTokenSource patience = new(LongestWait);
            long began = Stopwatch.GetTimestamp();
            Reply reply = default;
            try
            {
                reply = await connection.SendAsync(request, patience.Token);
            }
            catch (OperationCanceledException)
            {
                // Counts as failed. The connection may hold half of an answer.
                rest.Dispose();
            }

            tally.Add(toRest, name, body, reply.Status, Stopwatch.GetElapsedTime(began));
        }

        (IConnection, string, byte[], byte[]) OverRest()
        {
            (string name, byte[] request, byte[] body) = calls.OverRest();
            return (rest, name, request, body);
        }

        (IConnection, string, byte[], byte[]) OverGrpc()
        {
            (int call, byte[] body) = calls.OverGrpc();
            return (grpc[call], FuzzCalls.Grpc[call], body, body);
        }
    }

    private static IConnection Connection(GrpcChannel channel, string call)
    {
        string path = "cushionservice.v1.CushionService/" + call;
        return call == "QuoteMany" ? new GrpcStreamConnection(channel, path) : new GrpcConnection(channel, path);
    }
}
