namespace CushionService.Documents;

/// <summary>The signs of isolates, between which messages put names that have letters from right to left, so that such a name does not
/// turn the figures beside it (Unicode Standard Annex 9, section 2.4).</summary>
internal static class Isolation
{
    /// <summary>Begins an isolate, whose direction is that of its first letter.</summary>
    public const char Start = '\u2068';

    /// <summary>Ends an isolate.</summary>
    public const char End = '\u2069';

    /// <summary>Whether a character is a sign of an isolate, which has no width.</summary>
    public static bool IsSign(char letter) => letter is Start or End;

    /// <summary>Whether a letter is written from right to left.</summary>
    public static bool IsRightToLeft(char letter) =>
        letter is (>= '\u0590' and <= '\u08FF') or (>= '\uFB1D' and <= '\uFDFF') or (>= '\uFE70' and <= '\uFEFE');

    /// <summary>The text with those signs alone that make pairs round letters from right to left. A pair of a caller's own does no more
    /// than one of ours: it bounds what is in it.</summary>
    /// <param name="text">Any text.</param>
    public static string Paired(string text)
    {
        if (text.AsSpan().IndexOfAny(Start, End) < 0)
        {
            return text;
        }

        bool[] kept = new bool[text.Length];
        Stack<(int At, int Letters)> open = [];
        int letters = 0;
        for (int i = 0; i < text.Length; i++)
        {
            letters += IsRightToLeft(text[i]) ? 1 : 0;
            if (text[i] == Start)
            {
                open.Push((i, letters));
            }
            else if (text[i] == End && open.TryPop(out (int At, int Letters) start))
            {
                kept[start.At] = kept[i] = letters > start.Letters;
            }
        }

        return string.Concat(text.Where((letter, i) => kept[i] || !IsSign(letter)));
    }

    /// <summary>One line of a text that was broken: isolates that are open where it ends are closed there, and those of the line before go
    /// on.</summary>
    /// <param name="line">The line, as it was cut from the text.</param>
    /// <param name="depth">How many isolates are open where the line begins; afterwards, where it ends.</param>
    public static string Line(string line, ref int depth)
    {
        string begun = new(Start, depth);
        foreach (char letter in line)
        {
            depth =
                letter == Start ? depth + 1
                : letter == End ? Math.Max(0, depth - 1)
                : depth;
        }

        return depth == 0 && begun.Length == 0 ? line : begun + line + new string(End, depth);
    }
}
