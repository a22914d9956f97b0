using System.Text.Json.Serialization.Metadata;
using CushionService.Contract.Orders;
using Microsoft.Net.Http.Headers;

namespace CushionService.Rest;

/// <summary>A call that takes an order: reads it, sends it to the desk, writes what comes back.</summary>
/// <typeparam name="TAnswer">The record that answers.</typeparam>
internal sealed class OrderCall<TAnswer>
    where TAnswer : class
{
    private const string JsonMediaType = "application/json";

    private readonly Func<Reading, OrderDesk, CancellationToken, Outcome<TAnswer>> _ask;
    private readonly JsonTypeInfo<TAnswer> _type = (JsonTypeInfo<TAnswer>)Json.Options.GetTypeInfo(typeof(TAnswer));
    private readonly string[] _offered = [JsonMediaType];

    /// <summary>A call that hands a sound order to the desk.</summary>
    public OrderCall(Func<OrderDesk, Order, CancellationToken, Outcome<TAnswer>> ask)
        : this((Reading reading, OrderDesk desk, CancellationToken cancellation) => reading.Send(desk, ask, cancellation))
    {
    }

    /// <summary>A call that has its own way with an order at fault.</summary>
    public OrderCall(Func<Reading, OrderDesk, CancellationToken, Outcome<TAnswer>> ask) => _ask = ask;

    /// <summary>Answers a request.</summary>
    public async Task AnswerAsync(HttpContext http, OrderDesk desk)
    {
        if (Accepted.Choose(http.Request.Headers.Accept, _offered) < 0)
        {
            await Problems.WriteAsync(http, StatusCodes.Status406NotAcceptable, $"Answers come as {string.Join(" or ", _offered)}.");
        }
        else if (!IsJson(http.Request.ContentType))
        {
            await Problems.WriteAsync(http, StatusCodes.Status415UnsupportedMediaType, $"Orders are read as {JsonMediaType} in UTF-8.");
        }
        else if (await OrderBody.ReadAsync(http.Request, http.RequestAborted) is not { } reading)
        {
            await Problems.WriteAsync(http, StatusCodes.Status413PayloadTooLarge, $"An order may have {Limits.OrderBytes} bytes at most.");
        }
        else
        {
            Outcome<TAnswer> outcome = _ask(reading, desk, http.RequestAborted);
            await (outcome.Answered
                ? http.Response.WriteAsJsonAsync(outcome.Answer, _type, JsonMediaType, http.RequestAborted)
                : Problems.WriteAsync(http, outcome.Refusal));
        }
    }

    private static bool IsJson(string? contentType) =>
        contentType == JsonMediaType
        || (MediaTypeHeaderValue.TryParse(contentType, out MediaTypeHeaderValue? type)
            && type.MediaType.Equals(JsonMediaType, StringComparison.OrdinalIgnoreCase)
            && (!type.Charset.HasValue || type.Charset.Equals("utf-8", StringComparison.OrdinalIgnoreCase)));
}
