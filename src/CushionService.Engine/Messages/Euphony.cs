using System.Text;

namespace CushionService.Engine.Messages;

/// <summary>Small words that change before the sound that follows: French <c>de env.</c> is <c>d’env.</c>; Spanish <c>y</c> is
/// <c>e</c> before the sound of i, and <c>o</c> is <c>u</c> before that of o.</summary>
/// <remarks>Real Academia Española, Diccionario panhispánico de dudas, <i>y</i> and <i>o</i>: not before a diphthong (<c>agua y
/// hielo</c>), and <c>u</c> before 8 and 11 too.</remarks>
internal static class Euphony
{
    private const string Vowels = "aeiouàâéèêîôûáíóú";

    /// <summary>Mends the word before a value that was written just now.</summary>
    /// <param name="text">The text up to the value's end.</param>
    /// <param name="start">Where the value begins.</param>
    /// <param name="language">The language of the sentence.</param>
    public static void Mend(StringBuilder text, int start, Language language)
    {
        if (start < 2 || start >= text.Length || text[start - 1] != ' ' || language is not (Language.French or Language.Spanish))
        {
            return;
        }

        if (language == Language.French)
        {
            if (text[start - 2] == 'e' && Letter(text, start - 3) == 'd' && BeginsAt(text, start - 3) && IsVowel(text, start))
            {
                text.Remove(start - 2, 2).Insert(start - 2, '’');
            }
        }
        else if (BeginsAt(text, start - 2))
        {
            text[start - 2] = text[start - 2] switch
            {
                'y' when SoundsAsI(text, start) => 'e',
                'o' when SoundsAsO(text, start) => 'u',
                var other => other,
            };
        }
    }

    private static bool BeginsAt(StringBuilder text, int word) => word == 0 || !char.IsLetterOrDigit(text[word - 1]);

    private static bool SoundsAsI(StringBuilder text, int start)
    {
        int sound = Letter(text, start) == 'h' ? start + 1 : start;
        return Letter(text, sound) is 'i' or 'í' && !(Letter(text, sound) == 'i' && IsVowel(text, sound + 1));
    }

    private static bool SoundsAsO(StringBuilder text, int start)
    {
        int sound = Letter(text, start) == 'h' ? start + 1 : start;
        return Letter(text, sound) is 'o' or 'ó'
            || Letter(text, start) == '8'
            || (Letter(text, start) == '1' && Letter(text, start + 1) == '1' && !char.IsAsciiDigit(Letter(text, start + 2)));
    }

    private static bool IsVowel(StringBuilder text, int place) => Vowels.Contains(Letter(text, place), StringComparison.Ordinal);

    private static char Letter(StringBuilder text, int place) =>
        place >= 0 && place < text.Length ? char.ToLowerInvariant(text[place]) : '\0';
}
