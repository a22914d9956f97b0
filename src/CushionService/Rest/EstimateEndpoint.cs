using System.Text.Json.Serialization.Metadata;
using CushionService.Access;
using CushionService.Admission;
using CushionService.Contract;
using CushionService.Contract.Answers;
using CushionService.Contract.Orders;
using CushionService.Desk;
using CushionService.Engine.Messages;
using CushionService.Engine.Specifications;
using CushionService.Json;
using CushionService.Languages;
using CushionService.Rejections;
using CushionService.Rest.Estimating;
using CushionService.Wording;
using Microsoft.AspNetCore.ResponseCompression;
using Microsoft.Extensions.Primitives;
using Microsoft.Net.Http.Headers;

namespace CushionService.Rest;

/// <summary>The call for the fabric of one cushion, from a query that a page or a cache can hold.</summary>
/// <param name="orders">Answers the order.</param>
internal sealed class EstimateEndpoint(OrderDispatcher orders)
{
    // The form for programs, which comes first, and that for people without scripts.
    private const string MediaType = "application/json",
        Html = "text/html";

    // The same query gets the same answer until the engine changes; a day bounds how long a page may show the old one.
    private const string Caching = "max-age=86400";

    private static readonly JsonTypeInfo<EstimateAnswer> AnswerType =
        (JsonTypeInfo<EstimateAnswer>)ContractJson.Options.GetTypeInfo(typeof(EstimateAnswer));

    /// <summary>Answers a request: 304 to a caller that holds the answer, the tag alone to HEAD, else the
    /// estimate.</summary>
    [LanguageParameter]
    public async Task HandleAsync(HttpContext http)
    {
        http.Response.Headers.AppendCommaSeparatedValues(HeaderNames.Vary, HeaderNames.Accept);
        int form = AcceptHeader.Choose(http.Request.Headers.Accept, [MediaType, Html]);
        if (form < 0)
        {
            await Problems.WriteAsync(http, StatusCodes.Status406NotAcceptable, FormTexts.AnswersComeAs([MediaType, Html]));
            return;
        }

        if (form == 1)
        {
            await PageAsync(http);
            return;
        }

        Language language = ReaderLanguage.Of(http);
        FlatOrder flat = new(
            http.Request.Query.Where(parameter => parameter.Key is not (CallQuery.Fields or LanguageParameterAttribute.Name)),
            language
        );
        (FieldTree? fields, IReadOnlyList<Violation> unknown) = FieldsOf(http.Request.Query);
        Violation[] wrong = [.. CallQuery.LanguageIn(http.Request.Query), .. unknown];
        string? tag = wrong.Length > 0 ? null : EstimateTag.Of(flat, language, fields);
        IList<EntityTagHeaderValue> held = HeldBy(http.Request);
        // Only a sound order was ever given its tag: for a caller that holds it there is nothing to check.
        if (tag is not null && held.Any(one => EstimateTag.IsOf(one.Tag, tag)))
        {
            WriteHead(http, tag, StatusCodes.Status304NotModified);
            return;
        }

        ReceivedOrder order = flat.Order with { Violations = [.. wrong, .. flat.Order.Violations], Language = language };
        if (held.Contains(EntityTagHeaderValue.Any))
        {
            await CheckAsync(http, order, tag, StatusCodes.Status304NotModified);
        }
        else if (HttpMethods.IsHead(http.Request.Method))
        {
            await CheckAsync(http, order, tag, StatusCodes.Status200OK);
        }
        else
        {
            await EstimateAsync(http, order, tag, fields);
        }
    }

    // The parameters of the order are read by themselves.
    private static (FieldTree? Fields, IReadOnlyList<Violation> Violations) FieldsOf(IQueryCollection query) =>
        query.TryGetValue(CallQuery.Fields, out StringValues given)
            ? CallQuery.Read(new QueryCollection(new Dictionary<string, StringValues> { [CallQuery.Fields] = given }), AnswerType)
            : (null, []);

    // Whether there is an answer shows before anything is laid out.
    private async Task CheckAsync(HttpContext http, ReceivedOrder order, string? tag, int status)
    {
        Outcome<ValidationAnswer> checks = await orders.HandleAsync(Caller.Of(http), order, Purposes.Check, http.RequestAborted);
        if (!checks.Answered)
        {
            await Problems.WriteAsync(http, checks.Refusal);
        }
        else
        {
            WriteHead(http, tag, status);
        }
    }

    // A refusal names the parameters, since the desk has placed its violations.
    private async Task EstimateAsync(HttpContext http, ReceivedOrder order, string? tag, FieldTree? fields)
    {
        Outcome<EstimateAnswer> outcome = await orders.HandleAsync(Caller.Of(http), order, Purposes.Estimate, http.RequestAborted);
        if (!outcome.Answered)
        {
            await Problems.WriteAsync(http, outcome.Refusal);
        }
        else
        {
            WriteHead(http, tag, StatusCodes.Status200OK);
            await AnswerText.WriteAsync(http, outcome.Answer, AnswerType, MediaType, fields);
        }
    }

    // A form that was not yet filled in is no order.
    private async Task PageAsync(HttpContext http)
    {
        Language language = ReaderLanguage.Of(http);
        var filled = EstimateForm.Filled(
            http.Request.Query.Where(parameter => parameter.Key is not (CallQuery.Fields or LanguageParameterAttribute.Name))
        );
        EstimateAnswer? answer = null;
        IReadOnlyList<ViolationAnswer> violations = [];
        if (filled.Count > 0)
        {
            ReceivedOrder order = new FlatOrder(filled, language).Order with { Language = language };
            Outcome<EstimateAnswer> outcome = await orders.HandleAsync(Caller.Of(http), order, Purposes.Estimate, http.RequestAborted);
            answer = outcome.Answer;
            violations = outcome.Refusal is { } refusal ? ViolationWording.Of(refusal, language) : [];
        }

        http.Response.ContentType = Html + "; charset=utf-8";
        http.Response.Headers.CacheControl = "no-cache";
        await http.Response.WriteAsync(new EstimateForm(language).Page(filled, answer, violations), http.RequestAborted);
    }

    // 304 has the headers of the answer that the caller holds, and no body (RFC 9110, section 15.4.5).
    private static void WriteHead(HttpContext http, string? tag, int status)
    {
        http.Response.StatusCode = status;
        http.Response.Headers.ETag = tag is null ? null : EstimateTag.In(EncodingOf(http), tag);
        http.Response.Headers.CacheControl = CacheScope.Of(http, Caching);
        // Sent compressed to those that accept it, also where this caller does not.
        http.Response.Headers.AppendCommaSeparatedValues(HeaderNames.Vary, HeaderNames.AcceptEncoding);
        http.Response.ContentType = status == StatusCodes.Status200OK ? MediaType : null;
    }

    // Null for none. The framework compresses every answer for callers that accept it.
    private static string? EncodingOf(HttpContext http) =>
        http.RequestServices.GetRequiredService<IResponseCompressionProvider>().GetCompressionProvider(http)?.EncodingName;

    // If-None-Match compares weakly, and a star means any answer that there is (RFC 9110, section 13.1.2).
    private static IList<EntityTagHeaderValue> HeldBy(HttpRequest request) =>
        EntityTagHeaderValue.TryParseList(request.Headers.IfNoneMatch, out IList<EntityTagHeaderValue>? held) ? held : [];
}
