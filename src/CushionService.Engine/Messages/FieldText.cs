using System.Collections.Frozen;
using System.Reflection;

namespace CushionService.Engine.Messages;

/// <summary>Fields of the contract in words. A caller finds one by its pointer; a person reads it in the language of the
/// sentence.</summary>
internal static class FieldText
{
    // The names are found by their English words, which are the property's own.
    private static readonly FrozenDictionary<string, MessageTemplate> Names = typeof(FieldNameTexts)
        .GetProperties(BindingFlags.Public | BindingFlags.Static)
        .Select(property => ((Message)property.GetValue(null)!).Template)
        .ToFrozenDictionary(name => Words(name, Language.English), StringComparer.OrdinalIgnoreCase);

    /// <summary>The words of a field in a language.</summary>
    /// <param name="language">The language.</param>
    /// <param name="words">Its English words: Seam allowance; within a sentence, seam allowance.</param>
    /// <returns>The English words where the language has none.</returns>
    public static string In(Language language, string words) =>
        language != Language.English && Names.TryGetValue(words, out MessageTemplate? name)
            ? Cased(Words(name, language), language, char.IsLower(words[0]))
            : words;

    // German nouns have a capital wherever they are.
    private static string Cased(string words, Language language, bool within) =>
        within && language != Language.German ? char.ToLowerInvariant(words[0]) + words[1..] : words;

    private static string Words(MessageTemplate name, Language language) => name.In(language)[0].Words;
}
