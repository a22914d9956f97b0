using CushionService.Contract.Answers;
using CushionService.Contract.Orders;

namespace CushionService;

/// <summary>The one room behind both doors: checks an order by the validators, sends it through the engine, and words the answer
/// in the contract's records. REST and gRPC only carry orders in and answers out.</summary>
public sealed class OrderDesk
{
    public Outcome<ValidationAnswer> Validate(Order order, CancellationToken cancellation) => throw new NotImplementedException();

    public Outcome<PiecesAnswer> ListPieces(Order order, CancellationToken cancellation) => throw new NotImplementedException();

    public Outcome<LayoutsAnswer> LayOut(Order order, CancellationToken cancellation) => throw new NotImplementedException();

    public Outcome<YardageAnswer> EstimateYardage(Order order, CancellationToken cancellation) => throw new NotImplementedException();

    public Outcome<QuoteAnswer> Quote(Order order, CancellationToken cancellation) => throw new NotImplementedException();

    public CatalogueAnswer GetCatalogue() => throw new NotImplementedException();
}
