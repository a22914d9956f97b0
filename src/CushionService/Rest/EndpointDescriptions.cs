using CushionService.Contract.Orders;
using CushionService.Rejections;

namespace CushionService.Rest;

/// <summary>What the OpenAPI document is told of an endpoint beside its XML documentation.</summary>
internal static class EndpointDescriptions
{
    /// <summary>A call that takes an order and answers with one record, or with a text of other types.</summary>
    public static void TakesOrder<TAnswer>(this RouteHandlerBuilder endpoint, params string[] otherForms) =>
        endpoint
            .Accepts<Order>("application/json")
            .Produces<TAnswer>(StatusCodes.Status200OK, "application/json", otherForms)
            .TurnsAway()
            .Refuses(
                StatusCodes.Status400BadRequest,
                StatusCodes.Status406NotAcceptable,
                StatusCodes.Status413PayloadTooLarge,
                StatusCodes.Status415UnsupportedMediaType,
                StatusCodes.Status422UnprocessableEntity,
                StatusCodes.Status500InternalServerError
            );

    /// <summary>The statuses of calls that are turned away, whatever the call.</summary>
    public static RouteHandlerBuilder TurnsAway(this RouteHandlerBuilder endpoint) =>
        endpoint.Refuses(
            StatusCodes.Status401Unauthorized,
            StatusCodes.Status403Forbidden,
            StatusCodes.Status429TooManyRequests,
            StatusCodes.Status503ServiceUnavailable
        );

    /// <summary>The statuses that come with a problem.</summary>
    public static RouteHandlerBuilder Refuses(this RouteHandlerBuilder endpoint, params ReadOnlySpan<int> statuses)
    {
        foreach (int status in statuses)
        {
            endpoint.Produces<Problem>(status, Problem.MediaType);
        }

        return endpoint;
    }
}
