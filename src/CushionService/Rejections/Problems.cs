using System.Diagnostics;
using System.Globalization;
using System.Text.Json;
using System.Text.Json.Serialization.Metadata;
using CushionService.Contract;
using CushionService.Contract.Answers;
using CushionService.Json;
using CushionService.Wording;
using Microsoft.AspNetCore.Diagnostics;
using Microsoft.AspNetCore.WebUtilities;

namespace CushionService.Rejections;

/// <summary>Writes problems: of orders, of calls, and of ours.</summary>
internal static class Problems
{
    private const string TypeBase = "https://cushionservice.example/problems/";

    private static readonly JsonTypeInfo<Problem> ProblemType = (JsonTypeInfo<Problem>)ContractJson.Options.GetTypeInfo(typeof(Problem));

    /// <summary>Makes a problem of every error status without a body and of every exception.</summary>
    public static void UseProblems(this IApplicationBuilder app)
    {
        // The framework would log the exception's text, which may quote the order: ExceptionLogger logs what may be logged.
        app.UseExceptionHandler(
            new ExceptionHandlerOptions { ExceptionHandler = InternalAsync, SuppressDiagnosticsCallback = static _ => true }
        );
        app.UseMiddleware<ExceptionLogger>();
        app.UseStatusCodePages(context => WriteAsync(context.HttpContext, context.HttpContext.Response.StatusCode));
    }

    /// <summary>Why an order gets no answer.</summary>
    public static Problem Of(Refusal refusal, string traceId) =>
        Of(Statuses.Of(refusal).Http, Statuses.Kind(refusal), Statuses.Title(refusal), ViolationWording.Of(refusal), traceId);

    /// <summary>Writes why an order gets no answer.</summary>
    public static Task WriteAsync(HttpContext http, Refusal refusal)
    {
        if (refusal.RetryAfterSeconds is { } seconds)
        {
            http.Response.Headers.RetryAfter = seconds.ToString(CultureInfo.InvariantCulture);
        }

        return WriteAsync(http, Of(refusal, TraceOf(http)));
    }

    /// <summary>Writes a problem that is the call's, not the order's.</summary>
    public static Task WriteAsync(HttpContext http, int status, string? title = null)
    {
        string phrase = ReasonPhrases.GetReasonPhrase(status);
        string code = phrase.Length == 0 ? "error" : phrase.ToLowerInvariant().Replace(' ', '-');
        return WriteAsync(http, Of(status, code, title ?? phrase, [], TraceOf(http)));
    }

    // The caller learns the trace to ask about, and nothing else.
    private static Task InternalAsync(HttpContext http) =>
        http.Features.Get<IExceptionHandlerFeature>()?.Error is BadHttpRequestException bad
            ? WriteAsync(http, bad.StatusCode)
            : WriteAsync(
                http,
                Of(Statuses.Of("internal").Http, "internal", "The service failed; the fault is not the order's.", [], TraceOf(http))
            );

    private static Problem Of(int status, string code, string title, IReadOnlyList<ViolationAnswer> violations, string traceId) =>
        new()
        {
            Type = TypeBase + code,
            Title = title,
            Status = status,
            Code = code,
            Violations = violations,
            TraceId = traceId,
        };

    /// <summary>Names the call in the service's logs.</summary>
    public static string TraceOf(HttpContext http) => Activity.Current?.Id ?? http.TraceIdentifier;

    private static Task WriteAsync(HttpContext http, Problem problem)
    {
        http.Response.StatusCode = problem.Status;
        http.Response.ContentType = Problem.MediaType;
        return JsonSerializer.SerializeAsync(http.Response.BodyWriter, problem, ProblemType, http.RequestAborted);
    }
}
