using System.Buffers;
using System.Text;
using System.Text.Json;
using System.Text.Json.Serialization;

namespace CushionService.Contract;

/// <summary>Reads a <see cref="Quantity"/> from a JSON number or string without losing a digit.</summary>
internal sealed class QuantityConverter : JsonConverter<Quantity>
{
    public override Quantity Read(ref Utf8JsonReader reader, Type typeToConvert, JsonSerializerOptions options) =>
        reader.TokenType switch
        {
            JsonTokenType.String => Quantity.Of(reader.GetString()!),
            JsonTokenType.Number => new Quantity(
                Encoding.UTF8.GetString(reader.HasValueSequence ? reader.ValueSequence.ToArray() : reader.ValueSpan),
                true
            ),
            _ => throw new JsonException("A quantity is a number or a string."),
        };

    public override void Write(Utf8JsonWriter writer, Quantity value, JsonSerializerOptions options)
    {
        if (value.IsNumber)
        {
            writer.WriteRawValue(value.Text);
        }
        else
        {
            writer.WriteStringValue(value.Text);
        }
    }
}
