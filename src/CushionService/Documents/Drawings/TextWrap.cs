namespace CushionService.Documents.Drawings;

/// <summary>Breaks a text into lines between words.</summary>
internal static class TextWrap
{
    /// <summary>Lines of at most <paramref name="ems"/>; a word that is wider is cut short.</summary>
    /// <param name="text">The text; signs that cannot be printed are left out.</param>
    /// <param name="ems">The room, in heights of the type.</param>
    public static List<string> Lines(string text, double ems)
    {
        List<string> lines = [];
        string line = "";
        foreach (string word in PrintableText.Of(text).Split(' ', StringSplitOptions.RemoveEmptyEntries))
        {
            string longer = line.Length == 0 ? word : $"{line} {word}";
            if (TextWidth.Of(longer) <= ems)
            {
                line = longer;
                continue;
            }

            if (line.Length > 0)
            {
                lines.Add(line);
            }

            line = TextWidth.Shorten(word, ems);
        }

        if (line.Length > 0)
        {
            lines.Add(line);
        }

        int depth = 0;
        return [.. lines.Select(each => Isolation.Line(each, ref depth))];
    }
}
