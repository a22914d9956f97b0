using System.Text.Json.Serialization.Metadata;
using CushionService.Access;
using CushionService.Admission;
using CushionService.Contract;
using CushionService.Contract.Orders;
using CushionService.Desk;
using CushionService.Documents;
using CushionService.Json;
using CushionService.Languages;
using CushionService.Rejections;
using CushionService.Rest.OpenApi;

namespace CushionService.Rest;

/// <summary>A call that takes an order: reads it, has it answered, writes the answer.</summary>
/// <typeparam name="TAnswer">The record that answers.</typeparam>
/// <param name="orders">Answers the order.</param>
/// <param name="purpose">What the order is sent for; null for a call that has no answer in JSON.</param>
/// <param name="others">The forms that the answer may have instead of JSON.</param>
internal sealed class OrderEndpoint<TAnswer>(OrderDispatcher orders, Purpose<TAnswer>? purpose, params Representation[] others)
    where TAnswer : class
{
    private const string Json = "application/json";

    // Looked up once, and not for every answer.
    private readonly JsonTypeInfo<TAnswer> _type = (JsonTypeInfo<TAnswer>)ContractJson.Options.GetTypeInfo(typeof(TAnswer));

    // Null for JSON, which comes first.
    private readonly Representation?[] _forms = purpose is null ? [.. others] : [null, .. others];

    /// <summary>The media types of the answer: JSON first, where there is it.</summary>
    public string[] Forms { get; } = [.. purpose is null ? (string[])[] : [Json], .. others.Select(other => other.MediaType)];

    // In JSON they change nothing.
    private readonly string[] _known = [.. others.SelectMany(other => other.Parameters).Select(part => part.Name)];

    /// <summary>The parameters that say which part of the answer, or how.</summary>
    public PartParameter[] Parts { get; } = [.. others.SelectMany(other => other.Parameters).Distinct()];

    /// <summary>Answers a request: reads the order, has it answered, writes the answer. What is wrong with the call
    /// itself is reported before the body is read: 406 for a form that there is not, 422 for an unknown parameter, 415 for
    /// a body that is not JSON, then 413 for one that is too long.</summary>
    public async Task HandleAsync(HttpContext http)
    {
        int form = AcceptHeader.Choose(http.Request.Headers.Accept, Forms);
        if (form < 0)
        {
            await Problems.WriteAsync(http, StatusCodes.Status406NotAcceptable, FormTexts.AnswersComeAs(Forms));
        }
        else if (CallQuery.Read(http.Request.Query, _forms[form] is null ? _type : null, _known) is var query && query.Violations.Count > 0)
        {
            await Problems.WriteAsync(http, new Refusal(query.Violations));
        }
        else if (!OrderBody.IsOf(Json, http.Request.ContentType))
        {
            await Problems.WriteAsync(http, StatusCodes.Status415UnsupportedMediaType, FormTexts.OrdersReadAs(Json));
        }
        else if (_forms[form] is { } asked && Unreadable(http.Request.Query, asked) is { } wrong)
        {
            await Problems.WriteAsync(http, StatusCodes.Status400BadRequest, wrong.Missing);
        }
        else if (await OrderBody.ReadAsync(http.Request, http.RequestAborted) is not { } received)
        {
            await Problems.WriteAsync(http, StatusCodes.Status413PayloadTooLarge, FormTexts.OrderTooLong(Limits.OrderBytes));
        }
        else if (_forms[form] is { } printed)
        {
            await PrintAsync(http, received with { Language = ReaderLanguage.Of(http) }, printed);
        }
        else
        {
            ReceivedOrder order = received with { Language = ReaderLanguage.Of(http) };
            Outcome<TAnswer> outcome = await orders.HandleAsync(Caller.Of(http), order, purpose!, http.RequestAborted);
            await (
                outcome.Answered
                    ? AnswerText.WriteAsync(http, outcome.Answer, _type, Json, query.Fields)
                    : Problems.WriteAsync(http, outcome.Refusal)
            );
        }
    }

    private static string? Value(IQueryCollection query, PartParameter parameter) =>
        query[parameter.Name].ToString() is { Length: > 0 } value ? value : null;

    private static PartParameter? Unreadable(IQueryCollection query, Representation form) =>
        form.Parameters.FirstOrDefault(parameter => Value(query, parameter) is { } value && parameter.Accepts?.Invoke(value) == false);

    // A form of one part needs its name, unless there is only one: without such a part there is nothing to write, which
    // is a 400.
    private async Task PrintAsync(HttpContext http, ReceivedOrder order, Representation form)
    {
        string?[] values = [.. form.Parameters.Select(parameter => Value(http.Request.Query, parameter))];
        Outcome<PrintedDocument> outcome = await orders.HandleAsync(Caller.Of(http), order, form.Purpose(values), http.RequestAborted);
        if (!outcome.Answered)
        {
            await Problems.WriteAsync(http, outcome.Refusal);
        }
        else if (outcome.Answer.LacksPart)
        {
            await Problems.WriteAsync(http, StatusCodes.Status400BadRequest, outcome.Answer.Lacking ?? form.Parameters[^1].Missing);
        }
        else if (outcome.Answer.Refused is { } refused)
        {
            await Problems.WriteAsync(http, new Refusal([refused]));
        }
        else
        {
            http.Response.ContentType = form.IsText ? form.MediaType + "; charset=utf-8" : form.MediaType;
            http.Response.ContentLength = outcome.Answer.Bytes.Length;
            await http.Response.Body.WriteAsync(outcome.Answer.Bytes, http.RequestAborted);
        }
    }
}
