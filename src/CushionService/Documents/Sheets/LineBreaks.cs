namespace CushionService.Documents.Sheets;

/// <summary>Breaks paragraphs into lines between words; a word is broken only where it alone is wider than the line.</summary>
internal static class LineBreaks
{
    /// <summary>The lines, at least one.</summary>
    /// <param name="runs">The words.</param>
    /// <param name="width">Of a line, in ems.</param>
    public static IReadOnlyList<TextLine> Of(IReadOnlyList<Run> runs, double width)
    {
        List<TextLine> lines = [];
        List<(double At, Run Run)> parts = [];
        double used = 0;
        int depth = 0;
        foreach (Run run in runs)
        {
            double space = LetterWidth.Of(" ", run.Bold);
            foreach (string word in PrintableText.Of(run.Text).Split(' '))
            {
                double before = used == 0 ? 0 : space;
                foreach ((string part, double wide) in Fitting(word, run.Bold, width))
                {
                    if (used > 0 && used + before + wide > width)
                    {
                        End();
                        before = 0;
                    }

                    Add(run, part, before, wide);
                    before = 0;
                }
            }
        }

        if (parts.Count > 0 || lines.Count == 0)
        {
            End();
        }

        return lines;

        void End()
        {
            lines.Add(
                new TextLine([.. parts.Select(part => (part.At, part.Run with { Text = Isolation.Line(part.Run.Text, ref depth) }))], used)
            );
            (parts, used) = ([], 0);
        }

        // Words of one style are one part of the line, so that they can be searched for together.
        void Add(Run run, string word, double before, double wide)
        {
            if (parts.Count > 0 && before > 0 && parts[^1].Run is var last && last.Bold == run.Bold && last.Link == run.Link)
            {
                parts[^1] = (parts[^1].At, last with { Text = $"{last.Text} {word}" });
            }
            else
            {
                parts.Add((used + before, run with { Text = word }));
            }

            used += before + wide;
        }
    }

    /// <summary>Width of the widest word, in ems.</summary>
    /// <param name="text">One paragraph.</param>
    /// <param name="bold">Whether it is bold.</param>
    public static double Widest(string text, bool bold) => PrintableText.Of(text).Split(' ').Max(word => LetterWidth.Of(word, bold));

    // A word that is wider than the line is broken between what a reader takes for letters; each part but the last fills
    // its line.
    private static IEnumerable<(string Part, double Width)> Fitting(string word, bool bold, double width)
    {
        double whole = LetterWidth.Of(word, bold);
        if (whole <= width)
        {
            yield return (word, whole);
            yield break;
        }

        int[] starts = System.Globalization.StringInfo.ParseCombiningCharacters(word);
        int from = 0;
        for (int i = 1; i <= starts.Length; i++)
        {
            int end = i < starts.Length ? starts[i] : word.Length;
            bool isLast = i == starts.Length;
            int next = i + 1 < starts.Length ? starts[i + 1] : word.Length;
            if (isLast || LetterWidth.Of(word[from..next], bold) > width)
            {
                yield return (word[from..end], LetterWidth.Of(word[from..end], bold));
                from = end;
            }
        }
    }
}
