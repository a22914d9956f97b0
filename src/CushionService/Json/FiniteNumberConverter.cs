using System.Text.Json;
using System.Text.Json.Serialization;

namespace CushionService.Json;

/// <summary>Reads numbers that are finite. A number like 1e999, which the serializer would read as infinite, is
/// refused, and so is one in text.</summary>
internal sealed class FiniteNumberConverter : JsonConverter<double>
{
    /// <summary>Reads a number.</summary>
    /// <exception cref="JsonException">It is not a number, or not finite.</exception>
    public override double Read(ref Utf8JsonReader reader, Type typeToConvert, JsonSerializerOptions options) =>
        reader.TokenType == JsonTokenType.Number && reader.TryGetDouble(out double number) && double.IsFinite(number)
            ? number
            : throw new JsonException("Not a finite number.");

    /// <summary>Writes a number with as many digits as it needs to be read back exactly.</summary>
    public override void Write(Utf8JsonWriter writer, double value, JsonSerializerOptions options) => writer.WriteNumberValue(value);
}
