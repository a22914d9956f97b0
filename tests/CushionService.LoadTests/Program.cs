using CushionService.LoadTests;

switch (args)
{
    case ["stream", .. string[] rest] when rest.Length == 0 || (rest.Length == 1 && int.TryParse(rest[0], out _)):
        int count = rest.Length == 0 ? 100_000 : int.Parse(rest[0]);
        using (LoopbackHost host = await LoopbackHost.StartAsync())
        {
            await StreamRun.RunAsync("NDJSON", host, count, NdjsonCaller.CallAsync);
            await StreamRun.RunAsync("QuoteMany", host, count, QuoteManyCaller.CallAsync);
        }

        return 0;
    case ["prices", .. string[] rest] when rest.Length == 0 || (rest.Length == 1 && int.TryParse(rest[0], out _)):
        using (ReplacedBook book = new())
        using (LoopbackHost host = await LoopbackHost.StartAsync([("PriceBooks__Folder", book.Folder), .. PriceBookRun.Unlimited]))
        {
            await PriceBookRun.RunAsync(host, book, rest.Length == 0 ? 20 : int.Parse(rest[0]));
        }

        return 0;
    default:
        Console.Error.WriteLine("usage: stream [orders]   sends that many orders (100000) through each stream of a host on loopback, one in a hundred of them bad");
        Console.Error.WriteLine("usage: prices [seconds]  sends 500 quotes a second for so long (20) while the price book that they name is replaced each second");
        return 2;
}
