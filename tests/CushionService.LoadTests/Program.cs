using System.Globalization;
using CushionService.LoadTests;
using CushionService.LoadTests.Chaos;
using CushionService.LoadTests.Floor;
using CushionService.LoadTests.Fuzzing;
using CushionService.LoadTests.Runs;

int number = args.Length == 2 && int.TryParse(args[1], out int said) ? said : 0;
switch (args)
{
    case ["stream"] or ["stream", _] when args.Length == 1 || number > 0:
        int count = number == 0 ? 100_000 : number;
        using (LoopbackHost host = await LoopbackHost.StartAsync())
        {
            await StreamRun.RunAsync("NDJSON", host, count, NdjsonCaller.CallAsync);
            await StreamRun.RunAsync("QuoteMany", host, count, QuoteManyCaller.CallAsync);
        }

        return 0;
    case ["prices"] or ["prices", _]:
        using (ReplacedBook book = new())
        using (LoopbackHost host = await LoopbackHost.StartAsync([("PriceBooks__Folder", book.Folder), .. PriceBookRun.Unlimited]))
        {
            await PriceBookRun.RunAsync(host, book, number == 0 ? 20 : number);
        }

        return 0;
    case ["throughput"] or ["throughput", _]:
        await ThroughputRun.RunAsync(number == 0 ? 5 : number);
        return 0;
    case ["intake"] or ["intake", _]:
        IntakeRun.Run(number == 0 ? 20_000 : number);
        return 0;
    case ["orders"] or ["orders", _]:
        return OrdersRun.Run(number == 0 ? 20_000 : number, 0, null);
    case ["orders", string orders, string first]:
        return OrdersRun.Run(int.Parse(orders, CultureInfo.InvariantCulture), int.Parse(first, CultureInfo.InvariantCulture), null);
    case ["orders", string orders, string first, string file, .. string[] efforts]:
        return OrdersRun.Run(
            int.Parse(orders, CultureInfo.InvariantCulture),
            int.Parse(first, CultureInfo.InvariantCulture),
            file,
            efforts
        );
    case ["order", _]:
        return OrdersRun.Show(number);
    case ["overload"] or ["overload", _]:
        await OverloadRun.RunAsync(number == 0 ? 60 : number);
        return 0;
    case ["soak"] or ["soak", _]:
        await SoakRun.RunAsync(number == 0 ? 20 : number);
        return 0;
    case ["fuzz"] or ["fuzz", _]:
        return await FuzzRun.RunAsync(number == 0 ? 1_000_000 : number);
    case ["fuzz", string requests, string seed]:
        return await FuzzRun.RunAsync(int.Parse(requests, CultureInfo.InvariantCulture), int.Parse(seed, CultureInfo.InvariantCulture));
    case ["chaos"] or ["chaos", _]:
        return await ChaosRun.RunAsync(number == 0 ? 20 : number);
    case ["attack"] or ["attack", _]:
        await AttackRun.RunAsync(number == 0 ? 30 : number);
        return 0;
    case ["amplification"]:
        await AmplificationRun.RunAsync();
        return 0;
    case ["parse"]:
        ParserTarget.Run();
        return 0;
    case ["seeds", var folder]:
        Console.WriteLine($"{ParserTarget.WriteSeeds(folder)} inputs to start from");
        return 0;
    case ["host"]:
        FloorHost.Run();
        return 0;
    default:
        Console.Error.WriteLine(
            """
            usage, all on loopback alone:
              stream [orders]       sends that many orders (100000) through each stream, one in a hundred of them bad
              prices [seconds]      sends 500 quotes a second while the price book that they name is replaced each second (20)
              throughput [seconds]  compares the widget's calls with a floor that parses and echoes, in runs of that length (5)
              intake [calls]        measures the taking in of an order beside the rest of the call (20000)
              orders [orders [first [file [effort...]]]]
                                    quotes that many generated orders of every construction at quick and standard (20000); no traffic.
                                    With a file it goes on behind what the file holds, and sums up all of it
              order NUMBER          writes one of them
              overload [seconds]    sends five times what the service can do (60)
              soak [minutes]        sends half of what the service can do (20)
              fuzz [requests [seed]] sends that many spoilt orders through both doors (1000000)
              attack [seconds]      one address sends its worst, another one its usual calls, with the settings that are shipped (30)
              amplification         for every call the most bytes and processor time to a byte of request
              chaos [seconds]       kills and restarts two instances behind nginx, in phases of that length (20)
            """
        );
        return 2;
}
