using CushionService.Access;
using CushionService.Contract.Orders;
using CushionService.Deprecations;
using CushionService.Rejections;
using Microsoft.AspNetCore.Http.Metadata;

namespace CushionService.Rest;

/// <summary>Maps routes to endpoints: with their scope, which access and admission look for, and with what the OpenAPI
/// document needs to know of them.</summary>
internal static class RouteMapping
{
    // What access and admission answer instead of the call, whatever the call.
    private static readonly int[] Rejections =
    [
        StatusCodes.Status401Unauthorized,
        StatusCodes.Status403Forbidden,
        StatusCodes.Status429TooManyRequests,
        StatusCodes.Status503ServiceUnavailable,
    ];

    // The server's limit is for bodies that are read as a whole.
    private sealed class Unlimited : IRequestSizeLimitMetadata
    {
        public long? MaxRequestBodySize => null;
    }

    /// <summary>Maps a call.</summary>
    /// <param name="v1">The group of all calls.</param>
    /// <param name="route">The call.</param>
    /// <param name="deprecation">Until when it is answered; null for a call that is not deprecated.</param>
    public static void Map(this IEndpointRouteBuilder v1, Route route, Deprecation? deprecation)
    {
        IEndpointConventionBuilder endpoint = v1.MapMethods(route.Path, [route.Method], route.Handler);
        // The document lists endpoints that know the method which answers them.
        endpoint.WithMetadata(new RequiresScopeAttribute(route.Scope), route.Text, route.Handler.Method);
        endpoint.WithMetadata([.. route.Parts]);

        if (route.OfPages is { } pages)
        {
            endpoint.WithMetadata(pages);
        }

        if (route.Body is not null)
        {
            endpoint.WithMetadata(new AcceptsMetadata(route.Body, typeof(Order)));
        }

        endpoint.WithMetadata(new ProducesResponseTypeMetadata(StatusCodes.Status200OK, route.Answer, route.Forms));
        foreach (int status in (int[])[.. Rejections, .. route.Problems])
        {
            endpoint.WithMetadata(new ProducesResponseTypeMetadata(status, typeof(Problem), [Problem.MediaType]));
        }

        if (route.Scope == Scopes.Batch)
        {
            // A stream may be of any size, compressed or not: its lines are limited.
            endpoint.WithMetadata(new Unlimited());
        }

        if (route.IsCached)
        {
            endpoint.WithMetadata(
                new PublicAnswerAttribute(),
                new ProducesResponseTypeMetadata(StatusCodes.Status304NotModified, typeof(void))
            );
        }

        if (deprecation is not null)
        {
            endpoint.WithMetadata(deprecation);
        }

        if (!route.IsListed)
        {
            endpoint.ExcludeFromDescription();
        }
    }
}
