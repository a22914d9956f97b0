using System.Text.Json.Nodes;
using CushionService.Grpc.V1;
using CushionService.Tests.BothDoors;
using CushionService.Tests.Hosting;
using Google.Rpc;
using Google.Type;
using Grpc.Core;
using Grpc.Health.V1;
using Grpc.Reflection.V1Alpha;

namespace CushionService.Tests.Grpc;

/// <summary>What gRPC callers can do that JSON cannot say, and what is beside the calls.</summary>
public sealed class CallTests(RunningService service) : IClassFixture<RunningService>
{
    // gRPC over HTTP/2, Status-Message: printable ASCII but the percent sign is sent as it is.
    [Theory]
    [InlineData("Not known here, or no longer.", "Not known here, or no longer.")]
    [InlineData("100 % für", "100 %25 f%C3%BCr")]
    public void A_status_message_is_encoded_as_clients_decode_it(string message, string sent) =>
        Assert.Equal(sent, Rejections.TrailersOnly.Encoded(message));

    [Fact]
    public async Task A_call_without_an_order_is_refused() => Assert.Equal([" required"], await RefusedAsync(null));

    [Fact]
    public async Task A_number_that_names_no_value_is_told_with_its_place()
    {
        Order order = SoundOrder();
        order.Units = (Units)77;
        order.Fabrics[0].Sold.Unit = (SaleUnit)99;

        Assert.Equal(["/units unknown-value", "/fabrics/0/sold/unit unknown-value"], await RefusedAsync(order));
    }

    [Fact]
    public async Task A_value_that_is_not_said_counts_as_left_out()
    {
        Order order = SoundOrder();
        order.Units = Units.Unspecified;

        Assert.Equal(["/units required"], await RefusedAsync(order));
    }

    [Theory]
    [InlineData(double.NaN)]
    [InlineData(double.PositiveInfinity)]
    [InlineData(double.NegativeInfinity)]
    public async Task A_number_that_is_not_finite_is_refused_wherever_it_stands(double number)
    {
        Order order = SoundOrder();
        order.Fabrics[0].Shrinkage = new Shrinkage { Length = number };
        Assert.Equal(["/fabrics/0/shrinkage/length not-finite"], await RefusedAsync(order));

        order.Fabrics[0].Shrinkage = null;
        order.Fabrics[0].Width = new Measure { Number = number };
        Assert.Equal(["/fabrics/0/width not-a-length"], await RefusedAsync(order));
    }

    [Fact]
    public async Task A_length_without_number_or_text_is_no_length()
    {
        Order order = SoundOrder();
        order.Fabrics[0].Width = new Measure();

        Assert.Equal(["/fabrics/0/width not-a-length"], await RefusedAsync(order));
    }

    [Theory]
    [InlineData("CHF", 18, 0, "wrong-currency")]
    [InlineData("USD", 18, 1_000_000_000, "bad-form")]
    [InlineData("USD", 18, -5, "bad-form")]
    [InlineData("", -18, 0, "bad-form")]
    public async Task An_amount_that_is_none_of_the_order_is_refused(string currency, long units, int nanos, string code)
    {
        Order order = SoundOrder();
        order.Currency = "USD";
        order.Fabrics[0].Price = new Price
        {
            Amount = new Money
            {
                CurrencyCode = currency,
                Units = units,
                Nanos = nanos,
            },
            Per = SaleUnit.Yd,
        };

        Assert.Equal([$"/fabrics/0/price/amount {code}"], await RefusedAsync(order));
    }

    [Fact]
    public async Task A_refusal_with_more_faults_than_a_trailer_takes_lists_the_first()
    {
        Order order = SoundOrder();
        order.Cushions.Add(Enumerable.Range(0, 200).Select(_ => new Cushion()));
        RpcException refused = await Assert.ThrowsAsync<RpcException>(async () => await service.Calls.QuoteAsync(new() { Order = order }));
        ValidateResponse all = await service.Calls.ValidateAsync(new() { Order = order });

        int listed = refused.GetRpcStatus()!.GetDetail<ViolationList>().Violations.Count;
        Assert.InRange(listed, 50, all.Violations.Count - 1);
        Assert.Equal(all.Violations.Take(listed), refused.GetRpcStatus()!.GetDetail<ViolationList>().Violations);
        Assert.StartsWith($"The order has {all.Violations.Count} problems.", refused.Status.Detail, StringComparison.Ordinal);
    }

    [Fact]
    public async Task An_order_longer_than_a_mebibyte_is_refused_unread()
    {
        Order order = new() { Reference = new string('x', 1 << 20) };
        RpcException refused = await Assert.ThrowsAsync<RpcException>(async () => await service.Calls.QuoteAsync(new() { Order = order }));

        Assert.Equal(StatusCode.ResourceExhausted, refused.StatusCode);
    }

    [Theory]
    [InlineData(new byte[] { 0xFF, 0xFF, 0xFF })]
    [InlineData(new byte[] { 10, 5, 10, 3, 0xFF, 0xFE, 0xFD })]
    [InlineData(new byte[] { 10, 200, 1 })]
    public async Task Bytes_that_are_no_message_are_the_caller_s_fault_and_no_error_of_the_service(byte[] message)
    {
        Method<byte[], QuoteResponse> method = new(
            MethodType.Unary,
            "cushionservice.v1.CushionService",
            "Quote",
            Marshallers.Create<byte[]>(bytes => bytes, bytes => bytes),
            Marshallers.Create<QuoteResponse>(_ => [], QuoteResponse.Parser.ParseFrom)
        );
        RpcException refused = await Assert.ThrowsAsync<RpcException>(async () =>
            await service
                .Channel.CreateCallInvoker()
                .AsyncUnaryCall(method, null, new CallOptions(new Metadata { { "accept-language", "fr" } }), message)
        );

        Assert.Equal(StatusCode.InvalidArgument, refused.StatusCode);
        Assert.Equal("Ces octets ne sont pas un message de cet appel.", refused.Status.Detail);
        Assert.Empty(service.Errors);
    }

    [Fact]
    public async Task A_deadline_that_has_passed_and_a_call_that_is_given_up_are_told_as_such()
    {
        RpcException late = await Assert.ThrowsAsync<RpcException>(async () =>
            await service.Calls.QuoteAsync(new() { Order = SoundOrder() }, deadline: System.DateTime.UtcNow.AddSeconds(-1))
        );
        Assert.Equal(StatusCode.DeadlineExceeded, late.StatusCode);

        using CancellationTokenSource source = new();
        await source.CancelAsync();
        RpcException gone = await Assert.ThrowsAsync<RpcException>(async () =>
            await service.Calls.QuoteAsync(new() { Order = SoundOrder() }, cancellationToken: source.Token)
        );
        Assert.Equal(StatusCode.Cancelled, gone.StatusCode);
    }

    [Fact]
    public async Task A_fault_of_ours_says_a_code_and_the_trace_and_nothing_else()
    {
        using RunningService broken = new(services => services.AddFailingBooks(), mayFail: true);
        RpcException failed = await Assert.ThrowsAsync<RpcException>(async () =>
            await broken.Calls.QuoteAsync(new() { Order = new() { PriceBook = "nook" } })
        );
        Google.Rpc.Status status = failed.GetRpcStatus()!;

        Assert.Equal(StatusCode.Internal, failed.StatusCode);
        Assert.Equal("internal", status.GetDetail<ErrorInfo>().Reason);
        Assert.NotEmpty(status.GetDetail<RequestInfo>().RequestId);
        Assert.DoesNotContain(FailingBooks.Secret, status.ToString(), StringComparison.Ordinal);
        Assert.Contains(nameof(FailingBooks), Assert.Single(broken.Errors), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Health_is_told()
    {
        HealthCheckResponse health = await new Health.HealthClient(service.Channel).CheckAsync(new());

        Assert.Equal(HealthCheckResponse.Types.ServingStatus.Serving, health.Status);
    }

    [Fact]
    public async Task Reflection_names_the_service()
    {
        using var call = new ServerReflection.ServerReflectionClient(service.Channel).ServerReflectionInfo();
        await call.RequestStream.WriteAsync(new ServerReflectionRequest { ListServices = "" });
        Assert.True(await call.ResponseStream.MoveNext(CancellationToken.None));

        Assert.Contains(
            "cushionservice.v1.CushionService",
            call.ResponseStream.Current.ListServicesResponse.Service.Select(known => known.Name)
        );
        await call.RequestStream.CompleteAsync();
    }

    private static Order SoundOrder() =>
        (Order)
            Wire.Message(
                JsonNode
                    .Parse(
                        """
                        {
                          "units": "in",
                          "pieces": [{ "id": "runner", "width": 12, "length": 40 }],
                          "fabrics": [{ "id": "main", "width": 54, "sold": { "unit": "yd", "step": "1/8" } }]
                        }
                        """
                    )!
                    .AsObject(),
                Order.Descriptor
            );

    private async Task<string[]> RefusedAsync(Order? order)
    {
        RpcException refused = await Assert.ThrowsAsync<RpcException>(async () => await service.Calls.QuoteAsync(new() { Order = order }));
        Assert.Equal(StatusCode.InvalidArgument, refused.StatusCode);
        return
        [
            .. refused.GetRpcStatus()!.GetDetail<ViolationList>().Violations.Select(violation => $"{violation.Pointer} {violation.Code}"),
        ];
    }
}
