using System.Text.Json.Nodes;
using CushionService.Tests.Hosting;
using CushionService.Tests.Orders;

namespace CushionService.Tests.Rest;

/// <summary>Whatever a caller sends in place of an order, the answer is a problem of the caller's, and it comes at once.</summary>
public sealed class BrokenOrderTests(RunningService service) : IClassFixture<RunningService>
{
    private const int Count = 500;
    private static readonly TimeSpan Patience = TimeSpan.FromSeconds(10);

    [Theory]
    [InlineData("quotes")]
    [InlineData("yardage")]
    public async Task A_broken_order_is_a_problem_of_the_caller(string call)
    {
        for (int number = 0; number < Count; number++)
        {
            (string way, byte[] body) = BrokenOrders.Of(number);
            using HttpResponseMessage response = await service.PostAsync(call, body).WaitAsync(Patience);

            Assert.True(
                (int)response.StatusCode is >= 400 and < 500,
                $"{number}, {way}: {(int)response.StatusCode} {System.Text.Encoding.UTF8.GetString(body)}"
            );
            JsonObject problem = await response.ProblemAsync();
            Assert.NotEmpty(problem["violations"]!.AsArray());
        }
    }
}
