using System.Net;
using System.Runtime.CompilerServices;
using System.Text.Json;
using CushionService.Client;
using Microsoft.Extensions.DependencyInjection;

// The package for .NET against the live service: quote, refusal, stream, cancellation, and a call that is sent again.
Uri address = new(args[0]);
Order order = JsonSerializer.Deserialize<Order>(await File.ReadAllTextAsync(args[1]), CushionClient.Json)!;
Cushion cushion = order.Cushions![0];
Order wrong = order with { Cushions = [cushion with { Outline = cushion.Outline! with { Width = 0 } }] };
int count = int.Parse(args[2], null);

ServiceCollection services = new();
services.AddCushionClient(options => options.Address = address);
await using ServiceProvider provider = services.BuildServiceProvider();
CushionClient client = provider.GetRequiredService<CushionClient>();

QuoteAnswer quote = await client.QuoteAsync(order);
Check(quote.Reference == order.Reference && quote.Yardage[0].SoldLength > 0, "a quote");

try
{
    await client.QuoteAsync(wrong);
    Check(false, "a refusal");
}
catch (RefusedException refused)
{
    Check(refused.Problem.Violations.Single().Pointer == "/cushions/0/outline/width" && !refused.MaySendAgain, "a refusal");
}

long next = 1;
await foreach (StreamedQuote one in client.QuoteManyAsync(ManyAsync()))
{
    bool isWrong = next % 100 == 0;
    Check(one.Number == next && (one.Quote is null) == isWrong, $"the answer to order {next}");
    Check(isWrong ? one.Problem!.Line == next : one.Quote!.Reference == $"{next}", $"the answer to order {next}");
    next++;
}

Check(next == count + 1, "a stream");

using CancellationTokenSource stop = new();
int heard = 0;
try
{
    await foreach (StreamedQuote _ in client.QuoteManyAsync(ManyAsync(), stop.Token))
    {
        if (++heard == 5)
        {
            await stop.CancelAsync();
        }
    }
}
catch (OperationCanceledException) { }

Check(heard is >= 5 and < 100, "cancellation");

Rejecting rejecting = new() { InnerHandler = new SocketsHttpHandler() };
using HttpClient http = new(new SendAgainHandler(5, TimeProvider.System) { InnerHandler = rejecting }) { BaseAddress = address };
Check((await new CushionClient(http).QuoteAsync(order)).Reference == order.Reference && rejecting.Calls == 3, "a call that is sent again");
Console.WriteLine($"client for .NET: quote, refusal, stream of {count}, cancellation, sent again");

static void Check(bool holds, string what)
{
    if (!holds)
    {
        throw new InvalidOperationException($"The client fails at {what}.");
    }
}

async IAsyncEnumerable<Order> ManyAsync([EnumeratorCancellation] CancellationToken cancellation = default)
{
    for (int number = 1; number <= count; number++)
    {
        cancellation.ThrowIfCancellationRequested();
        yield return (number % 100 == 0 ? wrong : order) with
        {
            Reference = $"{number}",
        };
        await Task.Yield();
    }
}

// Rejects the first two calls, as a service that is busy does.
internal sealed class Rejecting : DelegatingHandler
{
    public int Calls { get; private set; }

    protected override Task<HttpResponseMessage> SendAsync(HttpRequestMessage request, CancellationToken cancellationToken)
    {
        if (++Calls > 2)
        {
            return base.SendAsync(request, cancellationToken);
        }

        HttpResponseMessage response = new(HttpStatusCode.ServiceUnavailable);
        response.Headers.RetryAfter = new(TimeSpan.Zero);
        return Task.FromResult(response);
    }
}
