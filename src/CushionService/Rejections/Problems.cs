using System.Diagnostics;
using System.Globalization;
using System.Text.Json;
using System.Text.Json.Serialization.Metadata;
using CushionService.Contract;
using CushionService.Contract.Answers;
using CushionService.Engine.Measures;
using CushionService.Engine.Messages;
using CushionService.Json;
using CushionService.Languages;
using CushionService.Wording;
using Microsoft.AspNetCore.Diagnostics;
using Microsoft.AspNetCore.WebUtilities;

namespace CushionService.Rejections;

/// <summary>Writes problems (RFC 9457): of an order that is refused, of a call that is wrong in itself, and of failures
/// of the service.</summary>
internal static class Problems
{
    private static readonly JsonTypeInfo<Problem> ProblemType = (JsonTypeInfo<Problem>)ContractJson.Options.GetTypeInfo(typeof(Problem));

    /// <summary>Makes a problem of every error status without a body and of every exception.</summary>
    public static void UseProblems(this IApplicationBuilder app)
    {
        // The framework would log the exception's text, which may quote the order: ExceptionLogger logs what may be
        // logged.
        app.UseExceptionHandler(
            new ExceptionHandlerOptions { ExceptionHandler = InternalAsync, SuppressDiagnosticsCallback = static _ => true }
        );
        app.UseMiddleware<ExceptionLogger>();
        app.UseStatusCodePages(context => WriteAsync(context.HttpContext, context.HttpContext.Response.StatusCode));
    }

    /// <summary>The problem of a refused order, with the status of its gravest violation.</summary>
    /// <param name="refusal">Why the order gets no answer.</param>
    /// <param name="language">The reader's language.</param>
    /// <param name="traceId">Names the call in the service's logs.</param>
    public static Problem Of(Refusal refusal, Language language, string traceId) =>
        Of(
            Statuses.Of(refusal).Http,
            Statuses.Kind(refusal),
            new MessageWriter(language, refusal.Unit).Text(Statuses.Title(refusal)),
            ViolationWording.Of(refusal, language),
            traceId
        );

    /// <summary>Writes the problem of a refused order, with <c>Retry-After</c> where the same order may be sent
    /// again.</summary>
    /// <param name="http">The call, whose answer has not begun.</param>
    /// <param name="refusal">Why the order gets no answer.</param>
    public static Task WriteAsync(HttpContext http, Refusal refusal)
    {
        if (refusal.RetryAfterSeconds is { } seconds)
        {
            http.Response.Headers.RetryAfter = seconds.ToString(CultureInfo.InvariantCulture);
        }

        return WriteAsync(http, Of(refusal, ReaderLanguage.Of(http), TraceOf(http)));
    }

    /// <summary>Writes a problem of the call, not of an order. Its code is the name of the status, as
    /// <c>not-acceptable</c>.</summary>
    /// <param name="http">The call, whose answer has not begun.</param>
    /// <param name="status">The HTTP status, 400 to 599.</param>
    /// <param name="title">Says what would be right; the name of the status when left out.</param>
    /// <param name="code">Another code, where callers must tell the problem from others of its status.</param>
    public static Task WriteAsync(HttpContext http, int status, Message? title = null, string? code = null)
    {
        string phrase = ReasonPhrases.GetReasonPhrase(status);
        code ??= CodeRegister.OfStatus(status);
        title ??= ProblemTexts.Find(code) ?? ProblemTexts.Other(phrase.Length == 0 ? $"{status}" : phrase);
        string text = new MessageWriter(ReaderLanguage.Of(http), LengthUnit.Inch).Text(title);
        return WriteAsync(http, Of(status, code, text, [], TraceOf(http)));
    }

    /// <summary>Tells every caller the trace of its call, in the header <c>traceresponse</c> (W3C Trace Context, level
    /// 2).</summary>
    public static void UseTraceHeader(this IApplicationBuilder app) =>
        app.Use(
            static (http, next) =>
            {
                string trace = TraceOf(http);
                // At the last moment: the answer to a failure begins without the headers set before.
                http.Response.OnStarting(() =>
                {
                    http.Response.Headers["traceresponse"] = trace;
                    return Task.CompletedTask;
                });
                return next(http);
            }
        );

    // A body that the server could not read is the caller's error, and has its own status. Of any other exception the
    // caller learns the trace to ask about, and nothing else.
    private static Task InternalAsync(HttpContext http)
    {
        switch (http.Features.Get<IExceptionHandlerFeature>()?.Error)
        {
            case BadHttpRequestException bad:
                return WriteAsync(http, bad.StatusCode);
            case OutOfMemoryException:
                // There may be room again as soon as other answers are sent.
                int seconds = http.RequestServices.GetRequiredService<RetryDelay>().NextSeconds();
                http.Response.Headers.RetryAfter = seconds.ToString(CultureInfo.InvariantCulture);
                return WriteAsync(http, StatusCodes.Status503ServiceUnavailable, ProblemTexts.NoMemory, "busy");
            default:
                return WriteAsync(http, Statuses.Of("internal").Http, ProblemTexts.Failed, "internal");
        }
    }

    private static Problem Of(int status, string code, string title, IReadOnlyList<ViolationAnswer> violations, string traceId) =>
        new()
        {
            Type = ProblemAddress.Of(code),
            Title = title,
            Status = status,
            Code = code,
            Violations = violations,
            TraceId = traceId,
        };

    /// <summary>Names the call in the service's logs: the trace of the caller where it sent one (W3C Trace Context),
    /// else one of ours.</summary>
    public static string TraceOf(HttpContext http) => Activity.Current?.Id ?? http.TraceIdentifier;

    private static Task WriteAsync(HttpContext http, Problem problem)
    {
        http.Response.StatusCode = problem.Status;
        http.Response.ContentType = Problem.MediaType;
        // What is wrong now may be right the next time: no cache keeps it.
        http.Response.Headers.CacheControl = "no-store";
        Problem placed = problem with { Type = ProblemAddress.Of(problem.Code, http) };
        // A problem is short. A caller that hangs up meanwhile must not make a fault of ours of it.
        return JsonSerializer.SerializeAsync(http.Response.BodyWriter, placed, ProblemType, CancellationToken.None);
    }
}
