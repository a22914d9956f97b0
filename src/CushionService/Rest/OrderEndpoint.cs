using System.Text.Json.Serialization.Metadata;
using CushionService.Access;
using CushionService.Admission;
using CushionService.Contract;
using CushionService.Desk;
using CushionService.Json;
using CushionService.Rejections;
using CushionService.Rest.OpenApi;

namespace CushionService.Rest;

/// <summary>A call that takes an order: reads it, has it answered, writes the answer.</summary>
/// <typeparam name="TAnswer">The record that answers.</typeparam>
/// <param name="orders">Answers the order.</param>
/// <param name="purpose">What the order is sent for.</param>
/// <param name="other">The form that the answer may have instead of JSON; null for none.</param>
internal sealed class OrderEndpoint<TAnswer>(OrderDispatcher orders, Purpose<TAnswer> purpose, Representation<TAnswer>? other = null)
    where TAnswer : class
{
    private const string Json = "application/json";

    // Looked up once, and not for every answer.
    private readonly JsonTypeInfo<TAnswer> _type = (JsonTypeInfo<TAnswer>)ContractJson.Options.GetTypeInfo(typeof(TAnswer));

    /// <summary>The media types of the answer: JSON first.</summary>
    public string[] Forms { get; } = other is null ? [Json] : [Json, other.MediaType];

    /// <summary>The parameter that names a part of the answer; null for none.</summary>
    public PartParameter? Part => other?.Part;

    /// <summary>Answers a request: reads the order, has it answered, writes the answer. What is wrong with the call
    /// itself is reported before the body is read: 406 for a form that there is not, 422 for an unknown parameter, 415 for
    /// a body that is not JSON, then 413 for one that is too long.</summary>
    public async Task HandleAsync(HttpContext http)
    {
        int form = AcceptHeader.Choose(http.Request.Headers.Accept, Forms);
        if (form < 0)
        {
            await Problems.WriteAsync(http, StatusCodes.Status406NotAcceptable, $"Answers come as {string.Join(" or ", Forms)}.");
        }
        else if (CallQuery.Read(http.Request.Query, form == 0 ? _type : null, Part?.Name) is var query && query.Violations.Count > 0)
        {
            await Problems.WriteAsync(http, new Refusal(query.Violations));
        }
        else if (!OrderBody.IsOf(Json, http.Request.ContentType))
        {
            await Problems.WriteAsync(http, StatusCodes.Status415UnsupportedMediaType, $"Orders are read as {Json} in UTF-8.");
        }
        else if (await OrderBody.ReadAsync(http.Request, http.RequestAborted) is not { } order)
        {
            await Problems.WriteAsync(http, StatusCodes.Status413PayloadTooLarge, $"An order may have {Limits.OrderBytes} bytes at most.");
        }
        else
        {
            Outcome<TAnswer> outcome = await orders.HandleAsync(Caller.Of(http), order, purpose, http.RequestAborted);
            await (
                !outcome.Answered ? Problems.WriteAsync(http, outcome.Refusal)
                : form == 0 ? AnswerText.WriteAsync(http, outcome.Answer, _type, Json, query.Fields)
                : WriteAsync(http, outcome.Answer, other!)
            );
        }
    }

    // A form of one part needs its name, unless there is only one: without such a part there is nothing to write, which
    // is a 400.
    private static Task WriteAsync(HttpContext http, TAnswer answer, Representation<TAnswer> form)
    {
        string? part = form.Part is { } named ? http.Request.Query[named.Name] : default(string);
        if (form.Write(answer, part) is not { } text)
        {
            return Problems.WriteAsync(http, StatusCodes.Status400BadRequest, form.Part!.Missing);
        }

        http.Response.ContentType = form.MediaType + "; charset=utf-8";
        return http.Response.WriteAsync(text, http.RequestAborted);
    }
}
