using CushionService.Access;
using CushionService.Admission;
using CushionService.Contract.Answers;
using CushionService.Contract.Orders;
using CushionService.Desk;
using CushionService.Documents.Drawings;

namespace CushionService.Rest;

/// <summary>The call for layouts.</summary>
internal static class Layouts
{
    private static readonly OrderCall<LayoutsAnswer> Call = new(
        (OrderDesk desk, Order order, CancellationToken cancellation) => desk.LayOut(order, cancellation),
        new Representation<LayoutsAnswer>(
            "image/svg+xml",
            Draw,
            "A drawing is of one fabric: name one that the order uses, as in ?fabric=main."
        )
    );

    public static void MapLayouts(this IEndpointRouteBuilder v1) =>
        v1.MapPost("/layouts", LayOut).TakesOrder<LayoutsAnswer>("image/svg+xml");

    /// <summary>Lay the pieces out</summary>
    /// <remarks>A layout for each fabric that is used, with a length that no layout can beat; as SVG the drawing of one fabric.</remarks>
    /// <param name="http">The request and its response.</param>
    /// <param name="desk">The desk.</param>
    /// <param name="work">Where the order is worked on.</param>
    /// <param name="fabric">For a drawing: the fabric's id; may be left out when one fabric is used.</param>
    [RequiresScope(Scopes.Quote)]
    private static Task LayOut(HttpContext http, OrderDesk desk, OrderDispatcher work, string? fabric) =>
        Call.AnswerAsync(http, desk, work, fabric);

    private static string? Draw(LayoutsAnswer answer, string? fabric) =>
        answer.Layouts.Where(layout => fabric is null || layout.Fabric == fabric).ToArray() is [LayoutAnswer only]
            ? LayoutDrawing.Draw(only, answer.Pieces, answer.Units)
            : null;
}
