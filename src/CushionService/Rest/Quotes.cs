using CushionService.Access;
using CushionService.Admission;
using CushionService.Contract.Answers;
using CushionService.Contract.Orders;
using CushionService.Desk;
using CushionService.Documents.CutSheets;

namespace CushionService.Rest;

/// <summary>The call for everything at once.</summary>
internal static class Quotes
{
    private static readonly OrderCall<QuoteAnswer> Call = new(
        (OrderDesk desk, Order order, CancellationToken cancellation) => desk.Quote(order, cancellation),
        new Representation<QuoteAnswer>("text/html", (quote, _) => CutSheet.Write(quote))
    );

    public static void MapQuotes(this IEndpointRouteBuilder v1) => v1.MapPost("/quotes", Quote).TakesOrder<QuoteAnswer>("text/html");

    /// <summary>Quote an order</summary>
    /// <remarks>Pieces, seams, layouts, yardage, materials, cost, steps and cautions; as HTML the cut sheet to print.</remarks>
    [RequiresScope(Scopes.Quote)]
    private static Task Quote(HttpContext http, OrderDesk desk, OrderDispatcher work) => Call.AnswerAsync(http, desk, work);
}
