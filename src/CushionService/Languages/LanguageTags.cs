using CushionService.Engine.Messages;

namespace CushionService.Languages;

/// <summary>The tags of the service's languages (BCP 47).</summary>
internal static class LanguageTags
{
    private static readonly string[] Tags = ["en", "de", "fr", "es"];

    /// <summary>Every tag, English first.</summary>
    public static IReadOnlyList<string> All => Tags;

    /// <summary>The tag of a language.</summary>
    /// <param name="language">The tags are listed in the order of its values.</param>
    public static string Of(Language language) => Tags[(int)language];

    /// <summary>The language of a tag, spelled exactly; null for any other text.</summary>
    /// <param name="tag">A value of the parameter <c>language</c>; null where it is left out.</param>
    public static Language? Named(string? tag) => Array.IndexOf(Tags, tag) is >= 0 and int index ? (Language)index : null;

    /// <summary>The language of a range by its first subtag, so that <c>de-AT</c> is German; null for any other.</summary>
    /// <param name="range">A language range (RFC 4647), in any case of letters.</param>
    public static Language? OfRange(ReadOnlySpan<char> range)
    {
        int end = range.IndexOf('-');
        ReadOnlySpan<char> first = end < 0 ? range : range[..end];
        for (int i = 0; i < Tags.Length; i++)
        {
            if (first.Equals(Tags[i], StringComparison.OrdinalIgnoreCase))
            {
                return (Language)i;
            }
        }

        return null;
    }
}
