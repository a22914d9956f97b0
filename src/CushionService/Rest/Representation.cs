using CushionService.Desk;
using CushionService.Documents;
using CushionService.Engine.Messages;
using CushionService.Rest.OpenApi;

namespace CushionService.Rest;

/// <summary>A form that an answer comes in instead of JSON: a drawing, or a document to print. It is made on a worker, within the
/// deadline of its order.</summary>
/// <param name="MediaType">Its media type, which callers name in <c>Accept</c>.</param>
/// <param name="IsText">Whether it is text, which is sent in UTF-8.</param>
/// <param name="Purpose">What the order is sent for; it gets the values of the parameters in their order, null for one left out.</param>
/// <param name="Parameters">What a call may say about the form.</param>
internal sealed record Representation(
    string MediaType,
    bool IsText,
    Func<string?[], Purpose<PrintedDocument>> Purpose,
    params PartParameter[] Parameters
)
{
    /// <summary>A form of text that is made from the answer alone, so that it shows what the JSON says and nothing else.</summary>
    /// <param name="mediaType">Its media type.</param>
    /// <param name="purpose">What the order is sent for.</param>
    /// <param name="write">Writes the answer in a language, or the part of it that the call names; null when there is no such part.</param>
    /// <param name="parameters">What a call may say about it.</param>
    public static Representation Of<TAnswer>(
        string mediaType,
        Purpose<TAnswer> purpose,
        Func<TAnswer, string?[], Language, string?> write,
        params PartParameter[] parameters
    )
        where TAnswer : class =>
        new(
            mediaType,
            true,
            values => new Purpose<PrintedDocument>(
                purpose.Rules,
                (order, cancellation) =>
                    write(purpose.Answer(order, cancellation), values, order.Language) is { } text
                        ? PrintedDocument.Of(text)
                        : PrintedDocument.Missing
            ),
            parameters
        );
}
