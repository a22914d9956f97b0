using CushionService.Access;
using CushionService.Admission;
using CushionService.Contract.Answers;
using CushionService.Contract.Orders;
using CushionService.Desk;

namespace CushionService.Rest;

/// <summary>The call for cut pieces.</summary>
internal static class Pieces
{
    private static readonly OrderCall<PiecesAnswer> Call = new(
        (OrderDesk desk, Order order, CancellationToken cancellation) => desk.ListPieces(order, cancellation)
    );

    public static void MapPieces(this IEndpointRouteBuilder v1) => v1.MapPost("/pieces", ListPieces).TakesOrder<PiecesAnswer>();

    /// <summary>List the pieces to cut</summary>
    /// <remarks>The cut pieces with their derivations, marks and seams.</remarks>
    [RequiresScope(Scopes.Quote)]
    private static Task ListPieces(HttpContext http, OrderDesk desk, OrderDispatcher work) => Call.AnswerAsync(http, desk, work);
}
