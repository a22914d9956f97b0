using System.Text;
using System.Text.Json.Nodes;
using CushionService.Grpc.V1;
using CushionService.Rejections;
using CushionService.Tests.Hosting;
using Google.Rpc;
using Grpc.Core;
using Microsoft.AspNetCore.Http;
using Microsoft.AspNetCore.Http.Features;
using Microsoft.Extensions.Logging;

namespace CushionService.Tests.Telemetry;

/// <summary>A fault of ours is logged by its type, its place and the trace. The text of the exception, which may quote the order, is in no
/// log.</summary>
public sealed class ExceptionLogTests : IDisposable
{
    private const string Book = "a-price-book-that-only-the-order-names";

    private readonly RunningService _broken = new(services => services.AddFailingBooks(), mayFail: true);

    [Fact]
    public async Task A_call_over_REST_logs_the_trace_of_its_answer_and_nothing_of_the_order()
    {
        using HttpResponseMessage response = await _broken.PostAsync("quotes", $$"""{ "priceBook": "{{Book}}" }""");

        AssertLogged("POST /v1/quotes", (await response.ProblemAsync())["traceId"]!.GetValue<string>());
        string metrics = await _broken.Http.GetStringAsync(new Uri("/metrics", UriKind.Relative));
        Assert.Contains("error_type=\"System.InvalidOperationException\"", metrics, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_call_over_gRPC_logs_the_trace_of_its_answer_and_nothing_of_the_order()
    {
        RpcException failed = await Assert.ThrowsAsync<RpcException>(async () =>
            await _broken.Calls.QuoteAsync(new() { Order = new() { PriceBook = Book } })
        );

        AssertLogged("/cushionservice.v1.CushionService/Quote", failed.GetRpcStatus()!.GetDetail<RequestInfo>().RequestId);
    }

    [Fact]
    public async Task An_order_of_a_stream_logs_its_number_and_nothing_of_itself()
    {
        using HttpResponseMessage response = await _broken.PostAsync(
            "quotes/stream",
            Encoding.UTF8.GetBytes($$"""{ "priceBook": "{{Book}}" }"""),
            "application/x-ndjson"
        );
        JsonNode answer = JsonNode.Parse(await response.Content.ReadAsStringAsync())!;

        Assert.Equal("internal", answer["code"]!.GetValue<string>());
        AssertLogged("Order 1 of a stream", answer["traceId"]!.GetValue<string>());
    }

    [Fact]
    public async Task An_order_of_a_stream_of_messages_logs_its_number_and_nothing_of_itself()
    {
        using AsyncDuplexStreamingCall<QuoteManyRequest, QuoteManyResponse> call = _broken.Calls.QuoteMany();
        await call.RequestStream.WriteAsync(new() { Order = new() { PriceBook = Book } });
        await call.RequestStream.CompleteAsync();
        Assert.True(await call.ResponseStream.MoveNext(CancellationToken.None));

        Assert.Equal("internal", call.ResponseStream.Current.Refusal.Code);
        AssertLogged("Order 1 of a stream", "trace \"00-");
    }

    [Fact]
    public async Task A_call_whose_answer_has_begun_is_logged_and_its_connection_closed()
    {
        ServerErrors errors = new();
        using ILoggerFactory logs = LoggerFactory.Create(logging => logging.AddProvider(errors));
        Begun begun = new();
        DefaultHttpContext http = new();
        http.Features.Set<IHttpResponseFeature>(begun);
        http.Features.Set<IHttpRequestLifetimeFeature>(begun);
        ExceptionLogger logger = new(
            _ => new FailingBooks().Find(Book) is null ? Task.CompletedTask : null!,
            new Logger<ExceptionLogger>(logs)
        );
        await logger.InvokeAsync(http);

        Assert.True(begun.IsClosed);
        string line = Assert.Single(errors.Logged);
        Assert.Contains("FailingBooks.Find", line, StringComparison.Ordinal);
        Assert.DoesNotContain(Book, line, StringComparison.Ordinal);
    }

    [Fact]
    public void The_types_of_the_causes_are_logged_too()
    {
        Exception exception = new InvalidOperationException(Book, new FormatException(Book));

        Assert.Equal("System.InvalidOperationException caused by System.FormatException", ExceptionLog.TypeOf(exception));
        Assert.Equal("an unknown place", ExceptionLog.PlaceOf(exception));
    }

    [Fact]
    public void Want_of_memory_is_no_error_of_the_service()
    {
        ServerErrors errors = new();
        errors.CallFailed(new InsufficientMemoryException(Book), "POST /v1/quotes", "1");
        Assert.Empty(errors.Logged);
        errors.CallFailed(new InvalidOperationException(Book), "POST /v1/quotes", "1");
        Assert.Single(errors.Logged);
    }

    public void Dispose() => _broken.Dispose();

    private void AssertLogged(string call, string trace)
    {
        string line = Assert.Single(_broken.Errors);
        Assert.Contains(call, line, StringComparison.Ordinal);
        Assert.Contains("System.InvalidOperationException", line, StringComparison.Ordinal);
        Assert.Contains("FailingBooks.Find", line, StringComparison.Ordinal);
        Assert.Contains(trace, line, StringComparison.Ordinal);
        Assert.DoesNotContain(Book, line, StringComparison.Ordinal);
        Assert.DoesNotContain(FailingBooks.Secret, line, StringComparison.Ordinal);
    }

    /// <summary>An answer whose head has been sent.</summary>
    private sealed class Begun : HttpResponseFeature, IHttpRequestLifetimeFeature
    {
        public override bool HasStarted => true;

        public bool IsClosed { get; private set; }

        public CancellationToken RequestAborted { get; set; }

        public void Abort() => IsClosed = true;
    }
}
