using CushionService.Access;
using CushionService.Admission;
using CushionService.Contract;
using CushionService.Contract.Answers;
using CushionService.Contract.Orders;
using CushionService.Desk;
using CushionService.Grpc.Mapping;
using CushionService.Grpc.V1;
using CushionService.Intake;
using CushionService.Streaming;
using Google.Protobuf;
using Grpc.Core;

namespace CushionService.Grpc;

/// <summary>The gRPC calls: each reads the order, sends it to the desk, and writes what comes back.</summary>
[BindServiceMethod(typeof(OrderBinding), nameof(OrderBinding.Bind))]
internal sealed class OrderCalls(OrderDesk desk, OrderDispatcher work, QuoteStream stream, Faults faults)
    : V1.CushionService.CushionServiceBase
{
    [RequiresScope(Scopes.Estimate)]
    public override Task<ValidateResponse> Validate(ValidateRequest request, ServerCallContext context) =>
        WorkAsync<ValidationAnswer, ValidateResponse>(
            request.Order,
            (reading, cancellation) => reading.Validate(desk, cancellation),
            context
        );

    [RequiresScope(Scopes.Quote)]
    public override Task<ListPiecesResponse> ListPieces(ListPiecesRequest request, ServerCallContext context) =>
        Send<PiecesAnswer, ListPiecesResponse>(
            request.Order,
            static (desk, order, cancellation) => desk.ListPieces(order, cancellation),
            context
        );

    [RequiresScope(Scopes.Quote)]
    public override Task<LayOutResponse> LayOut(LayOutRequest request, ServerCallContext context) =>
        Send<LayoutsAnswer, LayOutResponse>(request.Order, static (desk, order, cancellation) => desk.LayOut(order, cancellation), context);

    [RequiresScope(Scopes.Estimate)]
    public override Task<EstimateYardageResponse> EstimateYardage(EstimateYardageRequest request, ServerCallContext context) =>
        Send<YardageAnswer, EstimateYardageResponse>(
            request.Order,
            static (desk, order, cancellation) => desk.EstimateYardage(order, cancellation),
            context
        );

    [RequiresScope(Scopes.Quote)]
    public override Task<QuoteResponse> Quote(QuoteRequest request, ServerCallContext context) =>
        Send<QuoteAnswer, QuoteResponse>(request.Order, static (desk, order, cancellation) => desk.Quote(order, cancellation), context);

    [RequiresScope(Scopes.Quote)]
    public override Task<CompareResponse> Compare(CompareRequest request, ServerCallContext context) =>
        Send<ComparisonAnswer, CompareResponse>(
            request.Order,
            static (desk, order, cancellation) => desk.Compare(order, cancellation),
            context,
            Purpose.Comparing
        );

    [RequiresScope(Scopes.Quote)]
    public override Task<FitResponse> Fit(FitRequest request, ServerCallContext context) =>
        Send<FitAnswer, FitResponse>(
            request.Order,
            static (desk, order, cancellation) => desk.Fit(order, cancellation),
            context,
            Purpose.Fitting
        );

    [RequiresScope(Scopes.Batch)]
    public override async Task QuoteMany(
        IAsyncStreamReader<QuoteManyRequest> requests,
        IServerStreamWriter<QuoteManyResponse> responses,
        ServerCallContext context
    )
    {
        try
        {
            await stream.AnswerAsync(
                Caller.Of(context.GetHttpContext()),
                QuoteMessages.ReadAsync(requests),
                (quote, more, _) => QuoteMessages.WriteAsync(responses, quote, more),
                context.CancellationToken
            );
        }
        catch (Exception fault) when (fault is not RpcException)
        {
            throw faults.Told(fault, context);
        }
    }

    [RequiresScope(Scopes.Estimate)]
    public override Task<GetCatalogueResponse> GetCatalogue(GetCatalogueRequest request, ServerCallContext context) =>
        Task.FromResult(Answer<CatalogueAnswer, GetCatalogueResponse>(desk.GetCatalogue(), context));

    private Task<TResponse> Send<TAnswer, TResponse>(
        V1.Order? order,
        Func<OrderDesk, Contract.Orders.Order, CancellationToken, Outcome<TAnswer>> call,
        ServerCallContext context,
        Purpose purpose = Purpose.Making
    )
        where TAnswer : class
        where TResponse : class, IMessage<TResponse>, new() =>
        WorkAsync<TAnswer, TResponse>(order, (reading, cancellation) => reading.Send(desk, call, cancellation, purpose), context);

    private async Task<TResponse> WorkAsync<TAnswer, TResponse>(
        V1.Order? order,
        Func<ReceivedOrder, CancellationToken, Outcome<TAnswer>> ask,
        ServerCallContext context
    )
        where TAnswer : class
        where TResponse : class, IMessage<TResponse>, new()
    {
        try
        {
            ReceivedOrder reading = OrderMessage.Read(order);
            Outcome<TAnswer> outcome = await work.DoAsync(Caller.Of(context.GetHttpContext()), reading, ask, context.CancellationToken);
            return Answer<TAnswer, TResponse>(outcome, context);
        }
        catch (Exception fault) when (fault is not RpcException)
        {
            throw faults.Told(fault, context);
        }
    }

    private static TResponse Answer<TAnswer, TResponse>(Outcome<TAnswer> outcome, ServerCallContext context)
        where TAnswer : class
        where TResponse : class, IMessage<TResponse>, new() =>
        outcome.Answered
            ? MessageWriter<TAnswer, TResponse>.Write(outcome.Answer, "")
            : throw Refusals.ToException(outcome.Refusal, context);
}
