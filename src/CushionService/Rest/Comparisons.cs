using CushionService.Access;
using CushionService.Admission;
using CushionService.Contract.Answers;
using CushionService.Contract.Orders;
using CushionService.Desk;
using CushionService.Intake;

namespace CushionService.Rest;

/// <summary>The call that compares fabrics.</summary>
internal static class Comparisons
{
    private static readonly OrderCall<ComparisonAnswer> Call = new(
        (OrderDesk desk, Order order, CancellationToken cancellation) => desk.Compare(order, cancellation),
        purpose: Purpose.Comparing
    );

    public static void MapComparisons(this IEndpointRouteBuilder v1) => v1.MapPost("/comparisons", Compare).TakesOrder<ComparisonAnswer>();

    /// <summary>Compare fabrics for an order</summary>
    /// <remarks>The order is quoted as given and with each of its `candidates` in place of one fabric: other fabrics, widths or rotations, and, where asked,
    /// with every cushion cut from a length of its own. Cheapest first; an option that cannot be made is listed with the reasons.</remarks>
    [RequiresScope(Scopes.Quote)]
    private static Task Compare(HttpContext http, OrderDesk desk, OrderDispatcher work) => Call.AnswerAsync(http, desk, work);
}
