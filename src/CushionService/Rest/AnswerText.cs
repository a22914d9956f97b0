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
        http.Response.ContentType = mediaType;
        // All at once: the answer is whole in memory anyway, and the serializer is slower where it may have to wait in between.
        using (Utf8JsonWriter writer = new(http.Response.BodyWriter, Writing))
        {
            if (fields is null)
            {
                JsonSerializer.Serialize(writer, answer, type);
            }
            else
            {
                AnswerFields.Write(writer, answer, fields);
            }
        }

        await http.Response.BodyWriter.FlushAsync(http.RequestAborted);
    }
}
