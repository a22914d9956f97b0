using CushionService.Contract.Answers;
using CushionService.Contract.Orders;

namespace CushionService.Rest;

/// <summary>The call for everything at once.</summary>
internal static class Quotes
{
    private static readonly OrderCall<QuoteAnswer> Call = new((OrderDesk desk, Order order, CancellationToken cancellation) => desk.Quote(order, cancellation));

    public static void MapQuotes(this IEndpointRouteBuilder v1) => v1.MapPost("/quotes", Quote).TakesOrder<QuoteAnswer>();

    /// <summary>Quote an order</summary>
    /// <remarks>Pieces, seams, layouts, yardage, materials, cost, steps and cautions.</remarks>
    private static Task Quote(HttpContext http, OrderDesk desk) => Call.AnswerAsync(http, desk);
}
