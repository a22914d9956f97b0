using System.Buffers;
using System.Text;
using System.Text.Json;
using System.Text.Json.Serialization;

namespace CushionService.Contract;

/// <summary>Reads a <see cref="Measure"/> from a JSON number or string without losing a digit.</summary>
internal sealed class MeasureConverter : JsonConverter<Measure>
{
    public override Measure Read(ref Utf8JsonReader reader, Type typeToConvert, JsonSerializerOptions options) =>
        reader.TokenType switch
        {
            JsonTokenType.String => Measure.Of(reader.GetString()!),
            JsonTokenType.Number => new Measure(
                Encoding.UTF8.GetString(reader.HasValueSequence ? reader.ValueSequence.ToArray() : reader.ValueSpan),
                true
            ),
            _ => throw new JsonException("A length is a number or a string."),
        };

    public override void Write(Utf8JsonWriter writer, Measure value, JsonSerializerOptions options)
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
