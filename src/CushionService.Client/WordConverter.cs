using System.Reflection;
using System.Text.Json;
using System.Text.Json.Serialization;

namespace CushionService.Client;

/// <summary>Reads and writes the words of an enumeration. A word of a later release is read as the enumeration's zero,
/// <c>Unknown</c>.</summary>
/// <typeparam name="T">The enumeration.</typeparam>
public sealed class WordConverter<T> : JsonConverter<T>
    where T : struct, Enum
{
    private static readonly Dictionary<T, string> Words = typeof(T)
        .GetFields(BindingFlags.Public | BindingFlags.Static)
        .Where(field => field.IsDefined(typeof(WordAttribute)))
        .ToDictionary(field => (T)field.GetValue(null)!, field => field.GetCustomAttribute<WordAttribute>()!.Word);

    private static readonly Dictionary<string, T> Members = Words.ToDictionary(entry => entry.Value, entry => entry.Key);

    /// <inheritdoc />
    public override T Read(ref Utf8JsonReader reader, Type typeToConvert, JsonSerializerOptions options) =>
        Members.GetValueOrDefault(reader.GetString() ?? "");

    /// <inheritdoc />
    /// <exception cref="JsonException">The value is <c>Unknown</c>, or no member.</exception>
    public override void Write(Utf8JsonWriter writer, T value, JsonSerializerOptions options) =>
        writer.WriteStringValue(WordOf(value) ?? throw new JsonException($"{value} is not a word of {typeof(T).Name}."));

    /// <summary>The word of a member; null for <c>Unknown</c>, and for what is no member.</summary>
    internal static string? WordOf(T value) => Words.GetValueOrDefault(value);
}
