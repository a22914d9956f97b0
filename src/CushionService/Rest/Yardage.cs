using CushionService.Access;
using CushionService.Admission;
using CushionService.Contract.Answers;
using CushionService.Contract.Orders;
using CushionService.Desk;

namespace CushionService.Rest;

/// <summary>The call for yardage.</summary>
internal static class Yardage
{
    private static readonly OrderCall<YardageAnswer> Call = new(
        (OrderDesk desk, Order order, CancellationToken cancellation) => desk.EstimateYardage(order, cancellation)
    );

    public static void MapYardage(this IEndpointRouteBuilder v1) => v1.MapPost("/yardage", EstimateYardage).TakesOrder<YardageAnswer>();

    /// <summary>Say how much fabric to buy</summary>
    /// <remarks>The length of each fabric to buy, and nothing else.</remarks>
    [RequiresScope(Scopes.Estimate)]
    private static Task EstimateYardage(HttpContext http, OrderDesk desk, OrderDispatcher work) => Call.AnswerAsync(http, desk, work);
}
