using CushionService.Access;
using CushionService.Admission;
using CushionService.Contract;
using CushionService.Contract.Answers;
using CushionService.Desk;
using CushionService.Json;
using CushionService.Rejections;
using CushionService.Rest.Estimating;
using Microsoft.Extensions.Primitives;
using Microsoft.Net.Http.Headers;

namespace CushionService.Rest;

/// <summary>The call for the fabric of one cushion, from a query that a page or a cache can hold.</summary>
internal static class Estimates
{
    private const string MediaType = "application/json";

    // The same query gets the same answer until the engine changes; a day bounds how long a page may show the old one.
    private const string Caching = "public, max-age=86400";

    public static void MapEstimate(this IEndpointRouteBuilder v1)
    {
        v1.MapGet("/estimate", Estimate)
            .Produces<EstimateAnswer>()
            .TurnsAway()
            .Refuses(
                StatusCodes.Status400BadRequest,
                StatusCodes.Status406NotAcceptable,
                StatusCodes.Status422UnprocessableEntity,
                StatusCodes.Status500InternalServerError
            )
            .Produces(StatusCodes.Status304NotModified);
        v1.MapMethods("/estimate", [HttpMethods.Head], Estimate).ExcludeFromDescription();
    }

    /// <summary>Estimate the fabric for one cushion</summary>
    /// <remarks>One cushion of one fabric, from flat parameters. The answer carries a strong entity tag that is the same for every spelling of the same
    /// order, and may be kept by any cache; If-None-Match is answered with 304 before anything is laid out. When left out: effort is quick, the closure is
    /// a zipper where the construction takes one, and fabric is sold by 1/8 yd, or by 0.1 m in a metric order.</remarks>
    [RequiresScope(Scopes.Estimate)]
    private static async Task Estimate(HttpContext http, OrderDesk desk, OrderDispatcher work)
    {
        if (AcceptHeader.Choose(http.Request.Headers.Accept, [MediaType]) < 0)
        {
            await Problems.WriteAsync(http, StatusCodes.Status406NotAcceptable, $"Estimates come as {MediaType}.");
            return;
        }

        FlatOrder flat = new(http.Request.Query);
        string? tag = EstimateTag.Of(flat);
        // Only a sound order was ever given its tag: for one who holds it there is nothing to check.
        if (tag is not null && Holds(http.Request, tag))
        {
            Answer(http, tag, StatusCodes.Status304NotModified);
        }
        else if (
            tag is null
            || flat.Order is not { Order: not null, Violations.Count: 0 }
            || HttpMethods.IsHead(http.Request.Method)
            || HoldsAny(http.Request)
        )
        {
            Outcome<ValidationAnswer> checks = await work.DoAsync(
                Caller.Of(http),
                flat.Order,
                (read, cancellation) => read.Validate(desk, FlatOrder.Flat, cancellation),
                http.RequestAborted
            );
            if (!checks.Answered || !checks.Answer.Valid)
            {
                await Problems.WriteAsync(http, checks.Refusal ?? new Refusal(checks.Answer!.Violations));
            }
            else
            {
                Answer(http, tag!, HoldsAny(http.Request) ? StatusCodes.Status304NotModified : StatusCodes.Status200OK);
            }
        }
        else
        {
            Outcome<YardageAnswer> outcome = await work.DoAsync(
                Caller.Of(http),
                flat.Order,
                (read, cancellation) => desk.EstimateYardage(read.Order!, cancellation),
                http.RequestAborted
            );
            if (!outcome.Answered)
            {
                await Problems.WriteAsync(http, new Refusal([.. outcome.Refusal.Violations.Select(FlatOrder.Flat)]));
            }
            else
            {
                Answer(http, tag, StatusCodes.Status200OK);
                await http.Response.WriteAsJsonAsync(Of(outcome.Answer), ContractJson.Options, MediaType, http.RequestAborted);
            }
        }
    }

    private static void Answer(HttpContext http, string tag, int status)
    {
        http.Response.StatusCode = status;
        http.Response.Headers.ETag = tag;
        http.Response.Headers.CacheControl = Caching;
        http.Response.ContentType = status == StatusCodes.Status200OK ? MediaType : null;
    }

    // If-None-Match compares weakly, and a star stands for anything that there is (RFC 9110, section 13.1.2).
    private static bool Holds(HttpRequest request, string tag)
    {
        StringValues header = request.Headers.IfNoneMatch;
        if (header.Count == 1 && header[0] == tag)
        {
            return true;
        }

        return EntityTagHeaderValue.TryParseList(header, out IList<EntityTagHeaderValue>? held)
            && held.Any(one => one.Compare(EntityTagHeaderValue.Parse(tag), useStrongComparison: false));
    }

    private static bool HoldsAny(HttpRequest request) =>
        EntityTagHeaderValue.TryParseList(request.Headers.IfNoneMatch, out IList<EntityTagHeaderValue>? held)
        && held.Any(one => one.Equals(EntityTagHeaderValue.Any));

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
