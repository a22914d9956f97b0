using CushionService.Access;
using CushionService.Admission;
using CushionService.Contract.Answers;
using CushionService.Contract.Orders;
using CushionService.Desk;
using CushionService.Intake;

namespace CushionService.Rest;

/// <summary>The call that holds an order against the fabric on hand.</summary>
internal static class Fits
{
    private static readonly OrderCall<FitAnswer> Call = new(
        (OrderDesk desk, Order order, CancellationToken cancellation) => desk.Fit(order, cancellation),
        purpose: Purpose.Fitting
    );

    public static void MapFits(this IEndpointRouteBuilder v1) => v1.MapPost("/fits", Fit).TakesOrder<FitAnswer>();

    /// <summary>Fit an order onto the fabric on hand</summary>
    /// <remarks>Whether the pieces fit onto what `onHand` lists, all offcuts of a fabric together; how they lie, what is left, and the largest cushion that
    /// would fit. Fabrics without `onHand` are to be bought and are not looked at.</remarks>
    [RequiresScope(Scopes.Quote)]
    private static Task Fit(HttpContext http, OrderDesk desk, OrderDispatcher work) => Call.AnswerAsync(http, desk, work);
}
