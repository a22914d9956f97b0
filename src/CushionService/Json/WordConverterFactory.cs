using System.Text.Json;
using System.Text.Json.Serialization;
using CushionService.Contract;

namespace CushionService.Json;

/// <summary>Reads and writes enumerations as the contract's words, spelled exactly; numbers and lists of words are
/// refused.</summary>
internal sealed class WordConverterFactory : JsonConverterFactory
{
    /// <summary>Every enumeration of the contract and of the engine is written as words.</summary>
    public override bool CanConvert(Type typeToConvert) => typeToConvert.IsEnum;

    /// <summary>The converter of one enumeration. The serializer keeps it.</summary>
    public override JsonConverter CreateConverter(Type typeToConvert, JsonSerializerOptions options) =>
        (JsonConverter)Activator.CreateInstance(typeof(WordConverter<>).MakeGenericType(typeToConvert))!;

    // One word or none: a word in another case is another word.
    private sealed class WordConverter<TEnum> : JsonConverter<TEnum>
        where TEnum : struct, Enum
    {
        public override TEnum Read(ref Utf8JsonReader reader, Type typeToConvert, JsonSerializerOptions options) =>
            reader.TokenType == JsonTokenType.String && Words<TEnum>.Named(reader.GetString()!) is { } member
                ? member
                : throw new JsonException($"Not one of {string.Join(", ", Words<TEnum>.All)}.");

        public override void Write(Utf8JsonWriter writer, TEnum value, JsonSerializerOptions options) =>
            writer.WriteStringValue(Words<TEnum>.Of(value));
    }
}
