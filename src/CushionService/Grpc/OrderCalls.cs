using CushionService.Access;
using CushionService.Admission;
using CushionService.Contract;
using CushionService.Contract.Answers;
using CushionService.Contract.Orders;
using CushionService.Desk;
using CushionService.Engine.Messages;
using CushionService.Grpc.Mapping;
using CushionService.Grpc.V1;
using CushionService.Languages;
using CushionService.Rejections;
using CushionService.Streaming;
using CushionService.Wording;
using Google.Protobuf;
using Google.Protobuf.WellKnownTypes;
using Grpc.Core;
using Violation = CushionService.Engine.Specifications.Violation;

namespace CushionService.Grpc;

/// <summary>The calls over gRPC. Each names its scope and what the order is sent for; their rules, limits and answers
/// are those of REST.</summary>
/// <param name="orders">Answers orders.</param>
/// <param name="stream">Answers streams of orders.</param>
/// <param name="errors">Turns exceptions into statuses.</param>
[BindServiceMethod(typeof(OrderBinding), nameof(OrderBinding.Bind))]
internal sealed class OrderCalls(OrderDispatcher orders, QuoteStream stream, CallErrors errors) : V1.CushionService.CushionServiceBase
{
    // In bytes: about what one packet holds.
    private const int Small = 1_400;

    private static readonly WriteOptions Uncompressed = new(WriteFlags.NoCompress);

    /// <summary>Whether an order can be made. An order that breaks rules is answered: its violations are the
    /// answer.</summary>
    [RequiresScope(Scopes.Estimate)]
    public override Task<ValidateResponse> Validate(ValidateRequest request, ServerCallContext context) =>
        AnswerAsync<ValidationAnswer, ValidateResponse>(request.Order, request.Fields, Purposes.Validation, context);

    /// <summary>What to cut, mark and sew together.</summary>
    [RequiresScope(Scopes.Quote)]
    public override Task<ListPiecesResponse> ListPieces(ListPiecesRequest request, ServerCallContext context) =>
        AnswerAsync<PiecesAnswer, ListPiecesResponse>(request.Order, request.Fields, Purposes.Pieces, context);

    /// <summary>A layout for each fabric.</summary>
    [RequiresScope(Scopes.Quote)]
    public override Task<LayOutResponse> LayOut(LayOutRequest request, ServerCallContext context) =>
        AnswerAsync<LayoutsAnswer, LayOutResponse>(request.Order, request.Fields, Purposes.Layout, context);

    /// <summary>How much of each fabric to buy.</summary>
    [RequiresScope(Scopes.Estimate)]
    public override Task<EstimateYardageResponse> EstimateYardage(EstimateYardageRequest request, ServerCallContext context) =>
        AnswerAsync<YardageAnswer, EstimateYardageResponse>(request.Order, request.Fields, Purposes.Yardage, context);

    /// <summary>Everything at once.</summary>
    [RequiresScope(Scopes.Quote)]
    public override Task<QuoteResponse> Quote(QuoteRequest request, ServerCallContext context) =>
        AnswerAsync<QuoteAnswer, QuoteResponse>(request.Order, request.Fields, Purposes.Quote, context);

    /// <summary>The order with other fabrics instead of its own, cheapest first.</summary>
    [RequiresScope(Scopes.Quote)]
    public override Task<CompareResponse> Compare(CompareRequest request, ServerCallContext context) =>
        AnswerAsync<ComparisonAnswer, CompareResponse>(request.Order, request.Fields, Purposes.Comparison, context);

    /// <summary>Whether the order can be cut from the fabric on hand.</summary>
    [RequiresScope(Scopes.Quote)]
    public override Task<FitResponse> Fit(FitRequest request, ServerCallContext context) =>
        AnswerAsync<FitAnswer, FitResponse>(request.Order, request.Fields, Purposes.Fit, context);

    /// <summary>Quotes any number of orders, in order. A refused order is a message of the stream and does not end
    /// it.</summary>
    [RequiresScope(Scopes.Batch)]
    public override async Task QuoteMany(
        IAsyncStreamReader<QuoteManyRequest> requests,
        IServerStreamWriter<QuoteManyResponse> responses,
        ServerCallContext context
    )
    {
        try
        {
            Language language = ReaderLanguage.Of(context.GetHttpContext());
            await stream.AnswerAsync(
                Caller.Of(context.GetHttpContext()),
                Problems.TraceOf(context.GetHttpContext()),
                language,
                QuoteMessages.ReadAsync(requests),
                (quote, more, _) => QuoteMessages.WriteAsync(responses, language, quote, more),
                context.CancellationToken
            );
        }
        catch (Exception exception) when (exception is not RpcException)
        {
            throw errors.StatusOf(exception, context);
        }
    }

    /// <summary>What can be ordered.</summary>
    [RequiresScope(Scopes.Estimate)]
    public override Task<GetCatalogueResponse> GetCatalogue(GetCatalogueRequest request, ServerCallContext context) =>
        Task.FromResult(
            Kept(
                MessageWriter<CatalogueAnswer, GetCatalogueResponse>.Write(
                    CatalogueWording.In(ReaderLanguage.Of(context.GetHttpContext())),
                    ""
                ),
                FieldsOf<GetCatalogueResponse>(request.Fields, context),
                context
            )
        );

    // Every call that takes one order: reads it, has it answered, writes the answer. Exceptions become a status.
    private async Task<TResponse> AnswerAsync<TAnswer, TResponse>(
        V1.Order? message,
        FieldMask? mask,
        Purpose<TAnswer> purpose,
        ServerCallContext context
    )
        where TAnswer : class
        where TResponse : class, IMessage<TResponse>, new()
    {
        try
        {
            Caller caller = Caller.Of(context.GetHttpContext());
            FieldTree? fields = FieldsOf<TResponse>(mask, context);
            ReceivedOrder order = OrderMessage.Read(message) with { Language = ReaderLanguage.Of(context.GetHttpContext()) };
            Outcome<TAnswer> outcome = await orders.HandleAsync(caller, order, purpose, context.CancellationToken);
            return outcome.Answered
                ? Kept(MessageWriter<TAnswer, TResponse>.Write(outcome.Answer, ""), fields, context)
                : throw Refusals.ToException(outcome.Refusal, context);
        }
        catch (Exception exception) when (exception is not RpcException)
        {
            throw errors.StatusOf(exception, context);
        }
    }

    // A mask that names a field which there is not is refused before anything is worked on.
    private static FieldTree? FieldsOf<TResponse>(FieldMask? mask, ServerCallContext context)
        where TResponse : IMessage, new()
    {
        (FieldTree? fields, IReadOnlyList<Violation> unknown) = AnswerMask.Read(mask, new TResponse().Descriptor);
        return unknown.Count == 0 ? fields : throw Refusals.ToException(new Contract.Refusal(unknown), context);
    }

    // What is left of the answer. A small one is sent as it is: compressing it would take longer than sending it.
    private static TResponse Kept<TResponse>(TResponse answer, FieldTree? fields, ServerCallContext context)
        where TResponse : IMessage
    {
        if (fields is not null)
        {
            AnswerMask.Keep(answer, fields);
        }

        if (answer.CalculateSize() < Small)
        {
            context.WriteOptions = Uncompressed;
        }

        return answer;
    }
}
