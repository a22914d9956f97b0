using System.Globalization;
using System.Net;
using CushionService.LoadTests.Generating;

namespace CushionService.LoadTests.Runs;

/// <summary>What becomes of one address while another one sends all that it can, with the settings that are shipped.</summary>
internal static class AttackRun
{
    private const int Connections = 6;
    private const int Readers = 16;
    private static readonly IPAddress s_attacker = IPAddress.Parse("127.0.0.2");
    private static readonly IPAddress s_victim = IPAddress.Parse("127.0.0.3");

    // Fifty welted tees on a repeat of half an inch: no estimate of one cushion takes more steps.
    private static string Worst(int number) =>
        string.Create(
            CultureInfo.InvariantCulture,
            $"/v1/estimate?units=in&construction=boxed&outline=tee&width={20 + (number % 200 / 10.0)}&depth=20&thickness=3&earWidth=4"
                + $"&earDepth=5&quantity=50&edging=welt&fabricWidth=54&fabricRepeatLength=0.5&fabricRepeatWidth=0.5"
        );

    private static string Usual(int number) =>
        string.Create(
            CultureInfo.InvariantCulture,
            $"/v1/estimate?units=in&construction=boxed&outline=rectangle&width={30 + (number % 200 / 10.0)}&depth=18&thickness=3"
                + $"&fabricWidth=54"
        );

    public static async Task RunAsync(int seconds)
    {
        using LoopbackHost host = await LoopbackHost.StartShippedAsync("a key that nobody sends");
        TimeSpan time = TimeSpan.FromSeconds(seconds);
        IConnection From(IPAddress address) => new RestConnection(host.Rest, address);
        await new Generator(host, () => From(s_victim)).SendAsync(number => Requests.Get(Usual(number)), 5, 4, TimeSpan.FromSeconds(5));

        await AttackAsync("estimates", number => Requests.Get(Worst(number)), Connections);
        byte[] document = Requests.Get("/openapi/v1.json");
        await AttackAsync("documents", _ => document, Readers);

        async Task AttackAsync(string name, Func<int, byte[]> request, int connections)
        {
            Task<Measured> attack = new Generator(host, () => From(s_attacker)).SaturateAsync(request, connections, time);
            Task<Measured> live = new Generator(null, () => From(s_victim)).SendAsync(_ => Requests.Live, 20, 4, time);
            Measured victim = await new Generator(null, () => From(s_victim)).SendAsync(number => Requests.Get(Usual(number)), 5, 4, time);
            Console.WriteLine($"{name}: attacker {await attack}");
            Console.WriteLine($"{name}: victim   {victim}");
            Console.WriteLine($"{name}: live     {await live}");
            Console.WriteLine(
                string.Create(
                    CultureInfo.InvariantCulture,
                    $"{name}: the victim had {100.0 * victim.Answers / victim.Calls:0.0} % of its answers"
                )
            );
        }
    }
}
