using CushionService.Contract.Answers;
using CushionService.Contract.Orders;

namespace CushionService.Rest;

/// <summary>The call for layouts.</summary>
internal static class Layouts
{
    private static readonly OrderCall<LayoutsAnswer> Call = new((OrderDesk desk, Order order, CancellationToken cancellation) => desk.LayOut(order, cancellation));

    public static void MapLayouts(this IEndpointRouteBuilder v1) => v1.MapPost("/layouts", LayOut).TakesOrder<LayoutsAnswer>();

    /// <summary>Lay the pieces out</summary>
    /// <remarks>A layout for each cloth that is used, with a length that no layout can beat.</remarks>
    private static Task LayOut(HttpContext http, OrderDesk desk) => Call.AnswerAsync(http, desk);
}
