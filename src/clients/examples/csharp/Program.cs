using System.Text.Json;
using CushionService.Client;

// Quotes an order: dotnet run -- ADDRESS ORDER.json
CushionClient cushions = CushionClient.Create(new CushionClientOptions { Address = new Uri(args[0]) });
await using FileStream file = File.OpenRead(args[1]);
Order order = (await JsonSerializer.DeserializeAsync<Order>(file, CushionClient.Json))!;
try
{
    QuoteAnswer quote = await cushions.QuoteAsync(order);
    foreach (YardageLine fabric in quote.Yardage)
    {
        Console.WriteLine($"{fabric.Fabric}: {fabric.SoldLength} {fabric.SoldUnit.Word()}");
    }

    if (quote.Cost is { } cost)
    {
        Console.WriteLine($"{cost.Total} {cost.Currency}");
    }

    return 0;
}
catch (RefusedException refused)
{
    await Console.Error.WriteLineAsync(refused.Problem.Title);
    foreach (ViolationAnswer violation in refused.Problem.Violations)
    {
        await Console.Error.WriteLineAsync($"{violation.Pointer}: {violation.Detail}");
    }

    return 1;
}
