using System.Globalization;
using CushionService.Engine.Messages;
using Microsoft.Extensions.Primitives;

namespace CushionService.Languages;

/// <summary>Chooses the reader's language by the header <c>Accept-Language</c> (RFC 9110, section 12.5.4), as RFC 4647 looks it up,
/// section 3.4: what is more particular than a language of the service is that language. Allocates nothing.</summary>
internal static class LanguageRanges
{
    /// <summary>The language that a caller prefers. Of equals, the first in the header.</summary>
    /// <param name="header">The header; what cannot be parsed in it is passed over.</param>
    /// <returns>English where none is asked for, or only such as the service does not write.</returns>
    public static Language Choose(StringValues header)
    {
        Span<double> qualities = stackalloc double[LanguageTags.All.Count];
        // Below zero for a language that the header does not name; a named one with the quality 0 is refused and stays
        // out of the star.
        qualities.Fill(-1);
        (Language Language, double Quality) best = (Language.English, 0);
        double others = 0;
        foreach (string? line in header)
        {
            ReadOnlySpan<char> text = line;
            foreach (Range entry in text.Split(','))
            {
                if (!TryRead(text[entry], out ReadOnlySpan<char> range, out double quality))
                {
                    continue;
                }

                if (range is "*")
                {
                    others = quality;
                }
                else if (LanguageTags.OfRange(range) is { } language)
                {
                    qualities[(int)language] = Math.Max(qualities[(int)language], quality);
                    best = quality > best.Quality ? (language, quality) : best;
                }
            }
        }

        // A star means every language that is not named.
        for (int i = 0; i < qualities.Length && others > best.Quality; i++)
        {
            best = qualities[i] < 0 ? ((Language)i, others) : best;
        }

        return best.Language;
    }

    // de-AT;q=0.8, with space round the signs.
    // A quality that cannot be read, or one above 1, passes over its entry: the header is a wish, never a reason to
    // refuse a call.
    private static bool TryRead(ReadOnlySpan<char> entry, out ReadOnlySpan<char> range, out double quality)
    {
        int end = entry.IndexOf(';');
        range = (end < 0 ? entry : entry[..end]).Trim();
        quality = 1;
        if (end < 0)
        {
            return !range.IsEmpty;
        }

        ReadOnlySpan<char> weight = entry[(end + 1)..].Trim();
        return weight.StartsWith("q=", StringComparison.OrdinalIgnoreCase)
            && double.TryParse(weight[2..], NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out quality)
            && quality <= 1;
    }
}
