using System.Text.Json;
using System.Text.Json.Serialization;

namespace CushionService.Client;

/// <summary>Writes a length as the contract has it: a number, or a text.</summary>
public sealed class LengthConverter : JsonConverter<Length>
{
    /// <inheritdoc />
    public override Length Read(ref Utf8JsonReader reader, Type typeToConvert, JsonSerializerOptions options) =>
        reader.TokenType == JsonTokenType.String ? Length.Of(reader.GetString()!) : reader.GetDecimal();

    /// <inheritdoc />
    public override void Write(Utf8JsonWriter writer, Length value, JsonSerializerOptions options)
    {
        if (value.Text is { } text)
        {
            writer.WriteStringValue(text);
        }
        else
        {
            writer.WriteNumberValue(value.Number);
        }
    }
}
