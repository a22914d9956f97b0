using System.Text.Json;
using System.Text.Json.Serialization;
using CushionService.Contract;

namespace CushionService.Json;

/// <summary>Reads and writes enumerations as the contract's words, spelled exactly; numbers and lists of words are refused.</summary>
internal sealed class WordConverterFactory : JsonConverterFactory
{
    public override bool CanConvert(Type typeToConvert) => typeToConvert.IsEnum;

    public override JsonConverter CreateConverter(Type typeToConvert, JsonSerializerOptions options) =>
        (JsonConverter)Activator.CreateInstance(typeof(WordConverter<>).MakeGenericType(typeToConvert))!;

    private sealed class WordConverter<TEnum> : JsonConverter<TEnum>
        where TEnum : struct, Enum
    {
        private static readonly JsonEncodedText[] Encoded = [.. Words<TEnum>.All.Select(word => JsonEncodedText.Encode(word))];
        private static readonly TEnum[] Values = Enum.GetValues<TEnum>();

        public override TEnum Read(ref Utf8JsonReader reader, Type typeToConvert, JsonSerializerOptions options)
        {
            if (reader.TokenType == JsonTokenType.String)
            {
                for (int i = 0; i < Encoded.Length; i++)
                {
                    if (reader.ValueTextEquals(Encoded[i].EncodedUtf8Bytes))
                    {
                        return Values[i];
                    }
                }
            }

            throw new JsonException($"Not one of {string.Join(", ", Words<TEnum>.All)}.");
        }

        public override void Write(Utf8JsonWriter writer, TEnum value, JsonSerializerOptions options) =>
            writer.WriteStringValue(Encoded[Array.IndexOf(Values, value)]);
    }
}
