using CushionService.Contract.Answers;
using CushionService.Grpc.Mapping;
using CushionService.Grpc.V1;
using CushionService.Streaming;
using CushionService.Validation;
using Google.Protobuf;
using Grpc.Core;

namespace CushionService.Grpc;

/// <summary>The gRPC calls: each reads the order, sends it to the desk, and writes what comes back.</summary>
internal sealed class OrderCalls(OrderDesk desk, QuoteStream stream) : V1.CushionService.CushionServiceBase
{
    public override Task<ValidateResponse> Validate(ValidateRequest request, ServerCallContext context)
    {
        Outcome<ValidationAnswer> outcome = OrderMessage.Read(request.Order).Validate(desk, context.CancellationToken);
        return Answer<ValidationAnswer, ValidateResponse>(outcome, context);
    }

    public override Task<ListPiecesResponse> ListPieces(ListPiecesRequest request, ServerCallContext context) =>
        Send<PiecesAnswer, ListPiecesResponse>(request.Order, static (desk, order, cancellation) => desk.ListPieces(order, cancellation), context);

    public override Task<LayOutResponse> LayOut(LayOutRequest request, ServerCallContext context) =>
        Send<LayoutsAnswer, LayOutResponse>(request.Order, static (desk, order, cancellation) => desk.LayOut(order, cancellation), context);

    public override Task<EstimateYardageResponse> EstimateYardage(EstimateYardageRequest request, ServerCallContext context) =>
        Send<YardageAnswer, EstimateYardageResponse>(request.Order, static (desk, order, cancellation) => desk.EstimateYardage(order, cancellation), context);

    public override Task<QuoteResponse> Quote(QuoteRequest request, ServerCallContext context) =>
        Send<QuoteAnswer, QuoteResponse>(request.Order, static (desk, order, cancellation) => desk.Quote(order, cancellation), context);

    public override Task<CompareResponse> Compare(CompareRequest request, ServerCallContext context) =>
        Send<ComparisonAnswer, CompareResponse>(request.Order, static (desk, order, cancellation) => desk.Compare(order, cancellation), context, Purpose.Comparing);

    public override Task<FitResponse> Fit(FitRequest request, ServerCallContext context) =>
        Send<FitAnswer, FitResponse>(request.Order, static (desk, order, cancellation) => desk.Fit(order, cancellation), context, Purpose.Fitting);

    public override Task QuoteMany(IAsyncStreamReader<QuoteManyRequest> requests, IServerStreamWriter<QuoteManyResponse> responses, ServerCallContext context) =>
        stream.AnswerAsync(QuoteMessages.ReadAsync(requests), (quote, more, _) => QuoteMessages.WriteAsync(responses, quote, more), context.CancellationToken);

    public override Task<GetCatalogueResponse> GetCatalogue(GetCatalogueRequest request, ServerCallContext context) =>
        Answer<CatalogueAnswer, GetCatalogueResponse>(desk.GetCatalogue(), context);

    private Task<TResponse> Send<TAnswer, TResponse>(
        V1.Order? order, Func<OrderDesk, Contract.Orders.Order, CancellationToken, Outcome<TAnswer>> call, ServerCallContext context, Purpose purpose = Purpose.Making)
        where TAnswer : class
        where TResponse : class, IMessage<TResponse>, new() =>
        Answer<TAnswer, TResponse>(OrderMessage.Read(order).Send(desk, call, context.CancellationToken, purpose), context);

    private static Task<TResponse> Answer<TAnswer, TResponse>(Outcome<TAnswer> outcome, ServerCallContext context)
        where TAnswer : class
        where TResponse : class, IMessage<TResponse>, new() =>
        outcome.Answered
            ? Task.FromResult(MessageWriter<TAnswer, TResponse>.Write(outcome.Answer, ""))
            : throw Refusals.ToException(outcome.Refusal, context);
}
