using System.Net;
using System.Text.Json.Nodes;
using CushionService.Grpc.V1;
using CushionService.Tests.BothDoors;
using CushionService.Tests.Hosting;
using CushionService.Tests.Orders;
using Grpc.Core;

namespace CushionService.Tests.Streaming;

/// <summary>The same stream over gRPC.</summary>
public sealed class QuoteManyTests(RunningService service) : IClassFixture<RunningService>
{
    [Fact]
    public async Task Every_order_is_answered_in_its_place_as_by_REST()
    {
        JsonObject[] orders =
        [
            .. Enumerable.Range(0, 60).Select(number => number % 3 == 0 ? OrderGenerator.Careless(number) : OrderGenerator.Sound(number)),
        ];
        using AsyncDuplexStreamingCall<QuoteManyRequest, QuoteManyResponse> call = service.Calls.QuoteMany();
        Task sending = SendAsync(call.RequestStream, orders);
        int number = 0;
        await foreach (QuoteManyResponse answer in call.ResponseStream.ReadAllAsync())
        {
            using HttpResponseMessage single = await service.PostAsync("quotes", orders[number++].ToJsonString());
            JsonNode rest = await single.JsonAsync();
            Assert.Equal(number, answer.Number);
            Assert.Equal(
                single.StatusCode == HttpStatusCode.OK
                    ? QuoteManyResponse.AnswerOneofCase.Quote
                    : QuoteManyResponse.AnswerOneofCase.Refusal,
                answer.AnswerCase
            );
            if (answer.Quote is { } quote)
            {
                Assert.True(JsonNode.DeepEquals(Wire.Plain(rest), Wire.Json(quote)));
            }
            else
            {
                Assert.Equal(
                    (rest["code"]!.GetValue<string>(), rest["title"]!.GetValue<string>(), (int)StatusCode.InvalidArgument),
                    (answer.Refusal.Code, answer.Refusal.Title, answer.Refusal.Status)
                );
                Assert.True(JsonNode.DeepEquals(Wire.Plain(rest["violations"]), Wire.Json(answer.Refusal)["violations"]));
            }
        }

        await sending;
        Assert.Equal(orders.Length, number);
    }

    [Fact]
    public async Task A_message_without_an_order_is_refused_in_its_place()
    {
        using AsyncDuplexStreamingCall<QuoteManyRequest, QuoteManyResponse> call = service.Calls.QuoteMany();
        await call.RequestStream.WriteAsync(new());
        Assert.True(await call.ResponseStream.MoveNext(CancellationToken.None));
        await call.RequestStream.CompleteAsync();

        Assert.Equal("invalid-order", call.ResponseStream.Current.Refusal.Code);
        Assert.False(await call.ResponseStream.MoveNext(CancellationToken.None));
    }

    [Fact]
    public async Task A_caller_who_gives_up_is_told_so()
    {
        using CancellationTokenSource gone = new();
        using AsyncDuplexStreamingCall<QuoteManyRequest, QuoteManyResponse> call = service.Calls.QuoteMany(cancellationToken: gone.Token);
        await call.RequestStream.WriteAsync(new() { Order = Message(OrderGenerator.Sound(1)) });
        Assert.True(await call.ResponseStream.MoveNext(CancellationToken.None));
        await gone.CancelAsync();
        RpcException told = await Assert.ThrowsAsync<RpcException>(() => call.ResponseStream.MoveNext(CancellationToken.None));

        Assert.Equal(StatusCode.Cancelled, told.StatusCode);
    }

    [Fact]
    public async Task A_fault_of_ours_is_told_in_its_place_without_its_inside()
    {
        using RunningService broken = new(services => services.AddFailingBooks(), mayFail: true);
        using AsyncDuplexStreamingCall<QuoteManyRequest, QuoteManyResponse> call = broken.Calls.QuoteMany();
        await call.RequestStream.WriteAsync(new() { Order = new() { PriceBook = "nook" } });
        Assert.True(await call.ResponseStream.MoveNext(CancellationToken.None));

        Assert.Equal("internal", call.ResponseStream.Current.Refusal.Code);
        Assert.DoesNotContain(FailingBooks.Secret, call.ResponseStream.Current.ToString(), StringComparison.Ordinal);
        Assert.Contains(nameof(FailingBooks), Assert.Single(broken.Errors), StringComparison.Ordinal);
    }

    private static async Task SendAsync(IClientStreamWriter<QuoteManyRequest> requests, JsonObject[] orders)
    {
        foreach (JsonObject order in orders)
        {
            await requests.WriteAsync(new() { Order = Message(order) });
        }

        await requests.CompleteAsync();
    }

    private static Order Message(JsonObject order) => (Order)Wire.Message(order, Order.Descriptor);
}
