using System.Text.Json;
using System.Text.Json.Serialization.Metadata;
using CushionService.Contract;
using CushionService.Json;

namespace CushionService.Rest;

/// <summary>Writes an answer in JSON: all of it, or the fields that the caller asks for.</summary>
internal static class AnswerText
{
    /// <summary>How a writer of answers writes: without checking what the serializer does, which is always
    /// right.</summary>
    public static JsonWriterOptions Writing { get; } = new() { Encoder = ContractJson.Options.Encoder, SkipValidation = true };

    /// <summary>Writes the answer and its media type.</summary>
    /// <param name="http">The call.</param>
    /// <param name="answer">The answer.</param>
    /// <param name="type">How all of it is written.</param>
    /// <param name="mediaType">The media type.</param>
    /// <param name="fields">The fields that are asked for; null for all.</param>
    /// <typeparam name="TAnswer">The record that answers.</typeparam>
    public static async Task WriteAsync<TAnswer>(
        HttpContext http,
        TAnswer answer,
        JsonTypeInfo<TAnswer> type,
        string mediaType,
        FieldTree? fields
    )
        where TAnswer : class
    {
        if (fields is null)
        {
            await http.Response.WriteAsJsonAsync(answer, type, mediaType, http.RequestAborted);
            return;
        }

        http.Response.ContentType = mediaType;
        using (Utf8JsonWriter writer = new(http.Response.BodyWriter, Writing))
        {
            AnswerFields.Write(writer, answer, fields);
        }

        await http.Response.BodyWriter.FlushAsync(http.RequestAborted);
    }
}
