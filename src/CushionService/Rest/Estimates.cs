using CushionService.Contract.Answers;
using CushionService.Rest.Estimating;
using Microsoft.Net.Http.Headers;

namespace CushionService.Rest;

/// <summary>The call for the cloth of one cushion, from a query that a page or a cache can hold.</summary>
internal static class Estimates
{
    private const string MediaType = "application/json";

    // The same query gets the same answer until the engine changes; a day bounds how long a page may show the old one.
    private const string Caching = "public, max-age=86400";

    public static void MapEstimate(this IEndpointRouteBuilder v1)
    {
        v1.MapGet("/estimate", Estimate).Produces<EstimateAnswer>().Refuses(
            StatusCodes.Status400BadRequest, StatusCodes.Status406NotAcceptable, StatusCodes.Status422UnprocessableEntity, StatusCodes.Status500InternalServerError)
            .Produces(StatusCodes.Status304NotModified);
        v1.MapMethods("/estimate", [HttpMethods.Head], Estimate).ExcludeFromDescription();
    }

    /// <summary>Estimate the cloth for one cushion</summary>
    /// <remarks>One cushion of one cloth, from flat parameters. The answer carries a strong entity tag that is the same for every spelling of the same
    /// order, and may be kept by any cache; If-None-Match is answered with 304 before anything is laid out. When left out: effort is quick, the closure is
    /// a zipper where the construction takes one, and cloth is sold by 1/8 yd, or by 0.1 m in a metric order.</remarks>
    private static Task Estimate(HttpContext http, OrderDesk desk)
    {
        if (Accepted.Choose(http.Request.Headers.Accept, [MediaType]) < 0)
        {
            return Problems.WriteAsync(http, StatusCodes.Status406NotAcceptable, $"Estimates come as {MediaType}.");
        }

        FlatOrder flat = FlatOrder.Read(http.Request.Query);
        Outcome<ValidationAnswer> checks = flat.Reading.Validate(desk, FlatOrder.Flat, http.RequestAborted);
        if (!checks.Answered || !checks.Answer.Valid)
        {
            return Problems.WriteAsync(http, checks.Refusal ?? new Refusal(checks.Answer!.Violations));
        }

        string tag = EstimateTag.Of(flat);
        http.Response.Headers.ETag = tag;
        http.Response.Headers.CacheControl = Caching;
        if (Holds(http.Request, tag))
        {
            http.Response.StatusCode = StatusCodes.Status304NotModified;
            return Task.CompletedTask;
        }

        if (HttpMethods.IsHead(http.Request.Method))
        {
            http.Response.ContentType = MediaType;
            return Task.CompletedTask;
        }

        YardageAnswer answer = desk.EstimateYardage(flat.Reading.Order!, http.RequestAborted).Answer!;
        return http.Response.WriteAsJsonAsync(Of(answer), Json.Options, MediaType, http.RequestAborted);
    }

    // If-None-Match compares weakly, and a star stands for anything that there is (RFC 9110, section 13.1.2).
    private static bool Holds(HttpRequest request, string tag)
    {
        var mine = EntityTagHeaderValue.Parse(tag);
        return EntityTagHeaderValue.TryParseList(request.Headers.IfNoneMatch, out IList<EntityTagHeaderValue>? held)
            && held.Any(one => one.Equals(EntityTagHeaderValue.Any) || one.Compare(mine, useStrongComparison: false));
    }

    private static EstimateAnswer Of(YardageAnswer answer)
    {
        YardageLine line = answer.Yardage.Single();
        return new EstimateAnswer
        {
            Units = answer.Units,
            Engine = answer.Engine,
            SoldLength = line.SoldLength,
            SoldUnit = line.SoldUnit,
            LayoutLength = line.LayoutLength,
            ProvenMinimal = line.ProvenMinimal,
            Because = line.Because,
            Warnings = [.. answer.Warnings.Select(FlatOrder.Flat)],
        };
    }
}
