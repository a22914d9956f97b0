using System.Text.Json;
using System.Text.Json.Serialization.Metadata;
using CushionService.Access;
using CushionService.Contract;
using CushionService.Contract.Answers;
using CushionService.Engine.Messages;
using CushionService.Json;
using CushionService.Languages;
using CushionService.Rejections;
using CushionService.Streaming;
using Microsoft.AspNetCore.Http.Features;
using Microsoft.AspNetCore.Server.Kestrel.Core;
using Microsoft.AspNetCore.Server.Kestrel.Core.Features;

namespace CushionService.Rest;

/// <summary>The call that quotes any number of orders, a line each (newline-delimited JSON). Orders and answers flow at
/// the same time, over HTTP/1.1 too.</summary>
/// <param name="stream">Answers the orders.</param>
internal sealed class QuoteStreamEndpoint(QuoteStream stream)
{
    /// <summary>One JSON text on each line, and other names for the same. Answers come under the name that the caller
    /// accepts.</summary>
    public static readonly string[] MediaTypes = ["application/x-ndjson", "application/jsonl", "application/x-jsonlines"];

    // Answers that are ready together are sent together, up to this many bytes.
    private const int MostHeldBack = 32 * 1024;

    // A caller may pause between two orders, or before it reads on. One that has moved less than a byte a second after
    // five minutes is gone.
    private static readonly MinDataRate SlowestCaller = new(1, TimeSpan.FromMinutes(5));

    private static readonly JsonTypeInfo<QuoteAnswer> QuoteType =
        (JsonTypeInfo<QuoteAnswer>)ContractJson.Options.GetTypeInfo(typeof(QuoteAnswer));
    private static readonly JsonTypeInfo<Problem> ProblemType = (JsonTypeInfo<Problem>)ContractJson.Options.GetTypeInfo(typeof(Problem));

    /// <summary>Answers a request. What is wrong with the call itself is a problem; what is wrong with an order is a
    /// line of the answer.</summary>
    public async Task HandleAsync(HttpContext http)
    {
        int form = AcceptHeader.Choose(http.Request.Headers.Accept, MediaTypes);
        if (form < 0)
        {
            await Problems.WriteAsync(http, StatusCodes.Status406NotAcceptable, FormTexts.AnswersComeAs(MediaTypes));
        }
        else if (CallQuery.Read(http.Request.Query, QuoteType) is var query && query.Violations.Count > 0)
        {
            await Problems.WriteAsync(http, new Refusal(query.Violations));
        }
        else if (!Array.Exists(MediaTypes, type => OrderBody.IsOf(type, http.Request.ContentType)))
        {
            await Problems.WriteAsync(http, StatusCodes.Status415UnsupportedMediaType, FormTexts.LinesReadAs(MediaTypes));
        }
        else
        {
            LiftLimits(http);
            Language language = ReaderLanguage.Of(http);
            http.Response.ContentType = MediaTypes[form];
            // A caller may wait for the head of the answer before it sends its first order.
            await http.Response.Body.FlushAsync(http.RequestAborted);
            using Utf8JsonWriter writer = new(http.Response.BodyWriter, AnswerText.Writing);
            await stream.AnswerAsync(
                Caller.Of(http),
                Problems.TraceOf(http),
                language,
                OrderLines.ReadAsync(http.Request.BodyReader),
                (quote, more, cancellation) => WriteAsync(http, language, writer, quote with { Fields = query.Fields }, more, cancellation),
                http.RequestAborted
            );
        }
    }

    // One line: a quote, or a problem with the number of the order's line. It is sent when nothing more is ready, or
    // enough is waiting.
    private static async ValueTask WriteAsync(
        HttpContext http,
        Language language,
        Utf8JsonWriter writer,
        NumberedQuote quote,
        bool more,
        CancellationToken cancellation
    )
    {
        System.IO.Pipelines.PipeWriter body = http.Response.BodyWriter;
        writer.Reset();
        if (quote is { Outcome.Answer: { } answer, Fields: { } fields })
        {
            AnswerFields.Write(writer, answer, fields);
            writer.Flush();
        }
        else if (quote.Outcome.Answered)
        {
            JsonSerializer.Serialize(writer, quote.Outcome.Answer, QuoteType);
        }
        else
        {
            Problem problem = Problems.Of(quote.Outcome.Refusal, language, Problems.TraceOf(http));
            JsonSerializer.Serialize(
                writer,
                problem with
                {
                    Type = ProblemAddress.Of(problem.Code, http),
                    Line = quote.Number,
                },
                ProblemType
            );
        }

        body.GetSpan(1)[0] = (byte)'\n';
        body.Advance(1);
        if (!more || !body.CanGetUnflushedBytes || body.UnflushedBytes > MostHeldBack)
        {
            await body.FlushAsync(cancellation);
        }
    }

    // The limits of the server are for bodies that are read as a whole. A stream may be of any size and may pause; only
    // a line is limited. HTTP/2 has no minimum rate for one stream.
    private static void LiftLimits(HttpContext http)
    {
        if (http.Features.Get<IHttpMaxRequestBodySizeFeature>() is { IsReadOnly: false } size)
        {
            size.MaxRequestBodySize = null;
        }

        MinDataRate? slowest = HttpProtocol.IsHttp11(http.Request.Protocol) ? SlowestCaller : null;
        if (http.Features.Get<IHttpMinRequestBodyDataRateFeature>() is { } request)
        {
            request.MinDataRate = slowest;
        }

        if (http.Features.Get<IHttpMinResponseDataRateFeature>() is { } response)
        {
            response.MinDataRate = slowest;
        }
    }
}
