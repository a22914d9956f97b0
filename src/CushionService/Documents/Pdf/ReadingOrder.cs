using System.Globalization;
using System.Text;

namespace CushionService.Documents.Pdf;

/// <summary>Puts a line of text into the order in which a page shows it from left to right, since a PDF knows no direction of
/// writing.</summary>
/// <remarks>A short form of the Unicode bidirectional algorithm (UAX 9) for one line that reads left to right: each run of right-to-left
/// letters, with the spaces and signs inside it, is turned round; digits and Latin words in it are not. Arabic
/// letters are not joined.</remarks>
internal static class ReadingOrder
{
    /// <summary>The text as it lies on the page.</summary>
    /// <param name="text">One line, in the order in which it is read aloud.</param>
    public static string Of(string text)
    {
        if (!text.Any(IsRightToLeft))
        {
            return text;
        }

        var line = new StringBuilder(text.Length);
        int i = 0;
        while (i < text.Length)
        {
            if (!IsRightToLeft(text[i]))
            {
                line.Append(text[i++]);
                continue;
            }

            int last = i;
            for (int j = i; j < text.Length && !IsLeftToRight(text[j]); j++)
            {
                last = IsRightToLeft(text[j]) || char.IsDigit(text[j]) ? j : last;
            }

            line.Append(Turned(text[i..(last + 1)]));
            i = last + 1;
        }

        return line.ToString();
    }

    // Numbers keep their order inside the turned run, and signs stay with the letters that they are above.
    private static string Turned(string run)
    {
        List<string> parts = [];
        TextElementEnumerator elements = StringInfo.GetTextElementEnumerator(run);
        while (elements.MoveNext())
        {
            string element = elements.GetTextElement();
            if (char.IsDigit(element[0]) && parts.Count > 0 && char.IsDigit(parts[^1][0]))
            {
                parts[^1] += element;
            }
            else
            {
                parts.Add(element);
            }
        }

        parts.Reverse();
        return string.Concat(parts);
    }

    private static bool IsRightToLeft(char letter) =>
        letter is (>= '\u0590' and <= '\u08FF') or (>= '\uFB1D' and <= '\uFDFF') or (>= '\uFE70' and <= '\uFEFE');

    private static bool IsLeftToRight(char letter) => char.IsLetter(letter) && !IsRightToLeft(letter);
}
