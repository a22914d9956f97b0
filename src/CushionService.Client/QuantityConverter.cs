using System.Text.Json;
using System.Text.Json.Serialization;

namespace CushionService.Client;

/// <summary>Writes an amount as the contract has it: a number, or a text.</summary>
public sealed class QuantityConverter : JsonConverter<Quantity>
{
    /// <inheritdoc />
    public override Quantity Read(ref Utf8JsonReader reader, Type typeToConvert, JsonSerializerOptions options) =>
        reader.TokenType == JsonTokenType.String ? reader.GetString()! : reader.GetDecimal();

    /// <inheritdoc />
    public override void Write(Utf8JsonWriter writer, Quantity value, JsonSerializerOptions options)
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
