using System.Text.Json;
using System.Text.Json.Serialization;

namespace CushionService.Json;

/// <summary>Refuses numbers such as 1e999, which would otherwise be read as infinite.</summary>
internal sealed class FiniteNumberConverter : JsonConverter<double>
{
    public override double Read(ref Utf8JsonReader reader, Type typeToConvert, JsonSerializerOptions options) =>
        reader.TokenType == JsonTokenType.Number && reader.TryGetDouble(out double number) && double.IsFinite(number)
            ? number
            : throw new JsonException("Not a finite number.");

    public override void Write(Utf8JsonWriter writer, double value, JsonSerializerOptions options) => writer.WriteNumberValue(value);
}
