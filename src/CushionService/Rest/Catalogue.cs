using CushionService.Access;
using CushionService.Contract.Answers;
using CushionService.Desk;
using CushionService.Json;
using CushionService.Rejections;

namespace CushionService.Rest;

/// <summary>The call for what can be ordered.</summary>
internal static class Catalogue
{
    public static void MapCatalogue(this IEndpointRouteBuilder v1) =>
        v1.MapGet("/catalogue", GetCatalogue)
            .Produces<CatalogueAnswer>()
            .TurnsAway()
            .Refuses(StatusCodes.Status406NotAcceptable, StatusCodes.Status500InternalServerError);

    /// <summary>List what can be ordered</summary>
    /// <remarks>The constructions with what they combine with, and every field of an order with its range: enough to draw a form from.</remarks>
    [RequiresScope(Scopes.Estimate)]
    private static Task GetCatalogue(HttpContext http, OrderDesk desk) =>
        AcceptHeader.Choose(http.Request.Headers.Accept, ["application/json"]) < 0
            ? Problems.WriteAsync(http, StatusCodes.Status406NotAcceptable, "The catalogue comes as application/json.")
            : http.Response.WriteAsJsonAsync(desk.GetCatalogue(), ContractJson.Options, "application/json", http.RequestAborted);
}
