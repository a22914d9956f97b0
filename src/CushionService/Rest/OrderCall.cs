using System.Text.Json.Serialization.Metadata;
using CushionService.Access;
using CushionService.Admission;
using CushionService.Contract;
using CushionService.Contract.Orders;
using CushionService.Desk;
using CushionService.Intake;
using CushionService.Json;
using CushionService.Rejections;

namespace CushionService.Rest;

/// <summary>A call that takes an order: reads it, sends it to the desk, writes what comes back.</summary>
/// <typeparam name="TAnswer">The record that answers.</typeparam>
internal sealed class OrderCall<TAnswer>
    where TAnswer : class
{
    private const string JsonMediaType = "application/json";

    private readonly Func<ReceivedOrder, OrderDesk, CancellationToken, Outcome<TAnswer>> _ask;
    private readonly JsonTypeInfo<TAnswer> _type = (JsonTypeInfo<TAnswer>)ContractJson.Options.GetTypeInfo(typeof(TAnswer));
    private readonly Representation<TAnswer>? _form;
    private readonly string[] _offered;

    /// <summary>A call that hands a sound order to the desk.</summary>
    public OrderCall(
        Func<OrderDesk, Order, CancellationToken, Outcome<TAnswer>> ask,
        Representation<TAnswer>? form = null,
        Purpose purpose = Purpose.Making
    )
        : this((ReceivedOrder reading, OrderDesk desk, CancellationToken cancellation) => reading.Send(desk, ask, cancellation, purpose)) =>
        (_form, _offered) = (form, form is null ? _offered : [JsonMediaType, form.MediaType]);

    /// <summary>A call that has its own way with an order at fault.</summary>
    public OrderCall(Func<ReceivedOrder, OrderDesk, CancellationToken, Outcome<TAnswer>> ask) => (_ask, _offered) = (ask, [JsonMediaType]);

    /// <summary>Answers a request.</summary>
    /// <param name="http">The request and its response.</param>
    /// <param name="desk">The desk.</param>
    /// <param name="work">Where the order is worked on.</param>
    /// <param name="part">The part of the answer that the call names, for a form of one part.</param>
    public async Task AnswerAsync(HttpContext http, OrderDesk desk, OrderDispatcher work, string? part = null)
    {
        int chosen = AcceptHeader.Choose(http.Request.Headers.Accept, _offered);
        if (chosen < 0)
        {
            await Problems.WriteAsync(http, StatusCodes.Status406NotAcceptable, $"Answers come as {string.Join(" or ", _offered)}.");
        }
        else if (!OrderBody.IsOf(JsonMediaType, http.Request.ContentType))
        {
            await Problems.WriteAsync(http, StatusCodes.Status415UnsupportedMediaType, $"Orders are read as {JsonMediaType} in UTF-8.");
        }
        else if (await OrderBody.ReadAsync(http.Request, http.RequestAborted) is not { } reading)
        {
            await Problems.WriteAsync(http, StatusCodes.Status413PayloadTooLarge, $"An order may have {Limits.OrderBytes} bytes at most.");
        }
        else
        {
            Outcome<TAnswer> outcome = await work.DoAsync(
                Caller.Of(http),
                reading,
                (read, cancellation) => _ask(read, desk, cancellation),
                http.RequestAborted
            );
            await (
                !outcome.Answered ? Problems.WriteAsync(http, outcome.Refusal)
                : chosen == 0 ? http.Response.WriteAsJsonAsync(outcome.Answer, _type, JsonMediaType, http.RequestAborted)
                : WriteAsync(http, outcome.Answer, _form!, part)
            );
        }
    }

    private static Task WriteAsync(HttpContext http, TAnswer answer, Representation<TAnswer> form, string? part)
    {
        if (form.Write(answer, part) is not { } text)
        {
            return Problems.WriteAsync(http, StatusCodes.Status400BadRequest, form.WithoutPart);
        }

        http.Response.ContentType = form.MediaType + "; charset=utf-8";
        return http.Response.WriteAsync(text, http.RequestAborted);
    }
}
