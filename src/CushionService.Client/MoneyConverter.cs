using System.Globalization;
using System.Text.Json;
using System.Text.Json.Serialization;

namespace CushionService.Client;

/// <summary>Amounts of money are decimal strings in the contract, so that no program rounds them.</summary>
internal sealed class MoneyConverter : JsonConverter<decimal>
{
    /// <inheritdoc />
    public override decimal Read(ref Utf8JsonReader reader, Type typeToConvert, JsonSerializerOptions options) =>
        decimal.Parse(reader.GetString()!, NumberStyles.Number, CultureInfo.InvariantCulture);

    /// <inheritdoc />
    public override void Write(Utf8JsonWriter writer, decimal value, JsonSerializerOptions options) =>
        writer.WriteStringValue(value.ToString(CultureInfo.InvariantCulture));
}
