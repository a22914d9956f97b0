using System.Collections.Frozen;
using System.Net;
using System.Reflection;
using System.Text.Json;
using System.Text.RegularExpressions;
using CushionService.Engine.Messages;
using CushionService.Languages;
using CushionService.Widget;

namespace CushionService.Rest.Pages;

/// <summary>The words of the pages in one language: those of the pages themselves, and the widget's names of sizes and kinds. What a
/// language lacks is English.</summary>
internal sealed partial class PageWords
{
    private const string OfPages = "Pages/Words/",
        Script = "js.";

    private static readonly Lazy<PageWords>[] All = [.. Enum.GetValues<Language>().Select(each => new Lazy<PageWords>(() => new(each)))];

    private readonly FrozenDictionary<string, string> _words;

    private PageWords(Language language)
    {
        Tag = LanguageTags.Of(language);
        Dictionary<string, string> words = Read(OfPages, LanguageTags.Of(Language.English));
        foreach ((string key, string word) in language == Language.English ? [] : WidgetParts.Words(Tag).Concat(Read(OfPages, Tag)))
        {
            words[key] = word;
        }

        _words = words.ToFrozenDictionary(StringComparer.Ordinal);
        Scripts = JsonSerializer.Serialize(
            _words
                .Where(word => word.Key.StartsWith(Script, StringComparison.Ordinal) || !word.Key.AsSpan().ContainsAny(".="))
                .ToDictionary(),
            JsonSerializerOptions.Web
        );
    }

    /// <summary>The tag of the language.</summary>
    public string Tag { get; }

    /// <summary>The words that the pages' scripts need, as JSON that may be inside an HTML element.</summary>
    public string Scripts { get; }

    /// <summary>The words of a language.</summary>
    public static PageWords In(Language language) => All[(int)language].Value;

    /// <summary>The word of a key; a key without one is made readable.</summary>
    public string this[string key] => _words.GetValueOrDefault(key) ?? Readable(key);

    /// <summary>Writes the words into the holes of a template, as text.</summary>
    /// <param name="template">HTML with holes such as {{foot}}.</param>
    /// <param name="others">What is not a word: paths, the language.</param>
    public string Fill(string template, IReadOnlyDictionary<string, string> others) =>
        Hole()
            .Replace(template, hole => WebUtility.HtmlEncode(others.GetValueOrDefault(hole.Groups[1].Value) ?? this[hole.Groups[1].Value]));

    private static Dictionary<string, string> Read(string folder, string tag)
    {
        using Stream stream = Assembly.GetExecutingAssembly().GetManifestResourceStream($"{folder}{tag}.json")!;
        return JsonSerializer.Deserialize<Dictionary<string, string>>(stream)!;
    }

    private static string Readable(string key)
    {
        string words = Capital().Replace(key.TrimStart('.', '='), " $0").Replace('-', ' ').ToLowerInvariant();
        return char.ToUpperInvariant(words[0]) + words[1..];
    }

    [GeneratedRegex(@"\{\{([\w.]+)\}\}")]
    private static partial Regex Hole();

    [GeneratedRegex("(?<=[a-z])[A-Z]")]
    private static partial Regex Capital();
}
