using CushionService.Tests.Hosting;
using CushionService.Tests.Orders;

namespace CushionService.Tests.Rest;

/// <summary>The same order gives the same bytes: twice, after a restart, and to many callers at once.</summary>
public sealed class DeterminismTests
{
    private const int Callers = 16;
    private static readonly string[] Orders = [.. Enumerable.Range(1, 12).Select(number => OrderGenerator.Sound(number).ToJsonString())];

    [Fact]
    public async Task The_same_order_gives_the_same_bytes_again_after_a_restart_and_to_many_callers_at_once()
    {
        byte[][] first;
        using (RunningService service = new())
        {
            first = await QuotesAsync(service);
            Assert.Equal(first, await QuotesAsync(service));
        }

        using RunningService restarted = new();
        byte[][][] crowd = await Task.WhenAll(Enumerable.Range(0, Callers).Select(_ => Task.Run(() => QuotesAsync(restarted))));
        Assert.All(crowd, quotes => Assert.Equal(first, quotes));
    }

    private static async Task<byte[][]> QuotesAsync(RunningService service)
    {
        List<byte[]> quotes = [];
        foreach (string order in Orders)
        {
            using HttpResponseMessage response = await service.PostAsync("quotes", order);
            Assert.Equal(System.Net.HttpStatusCode.OK, response.StatusCode);
            quotes.Add(await response.Content.ReadAsByteArrayAsync());
        }

        return [.. quotes];
    }
}
