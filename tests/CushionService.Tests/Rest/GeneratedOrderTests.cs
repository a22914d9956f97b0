using System.Net;
using System.Text.Json.Nodes;
using CushionService.Tests.Hosting;
using CushionService.Tests.Orders;

namespace CushionService.Tests.Rest;

/// <summary>Properties of every quote, over generated orders; the layouts are checked by the test's own arithmetic.</summary>
public sealed class GeneratedOrderTests(RunningService service) : IClassFixture<RunningService>
{
    private const int Count = 2000;

    [Fact]
    public async Task Every_quote_lays_its_pieces_apart_within_the_fabric_and_sells_enough_of_it()
    {
        int quoted = 0;
        for (int number = 0; number < Count; number++)
        {
            JsonObject order = number % 5 == 0 ? OrderGenerator.Careless(number) : OrderGenerator.Sound(number);
            using HttpResponseMessage response = await service.PostAsync("quotes", order.ToJsonString());
            if (response.StatusCode == HttpStatusCode.OK)
            {
                LayoutCheck.Check(await response.JsonAsync());
                quoted++;
            }
            else
            {
                await response.ProblemAsync();
                Assert.True(response.StatusCode == HttpStatusCode.UnprocessableEntity, $"{number}: {response.StatusCode} for {order}");
            }
        }

        Assert.True(quoted > Count * 3 / 4, $"Only {quoted} of {Count} orders were quoted.");
    }
}
