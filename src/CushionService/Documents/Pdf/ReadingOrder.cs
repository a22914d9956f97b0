using System.Globalization;

namespace CushionService.Documents.Pdf;

/// <summary>Puts a line of text into the order in which a page shows it from left to right, since a PDF knows no direction of
/// writing.</summary>
/// <remarks>A short form of the Unicode bidirectional algorithm (UAX 9) for one line that reads left to right: each run of right-to-left
/// letters, with the spaces and signs inside it, is turned round; digits and Latin words in it are not. An isolate is put into order by
/// itself, and lies in the line as one sign. Arabic letters are not joined.</remarks>
internal static class ReadingOrder
{
    private const string Brackets = "()[]{}<>«»‹›";

    private enum Kind
    {
        Sign,
        Digit,
        LeftToRight,
        RightToLeft,
    }

    /// <summary>The text as it lies on the page, without the signs of isolates.</summary>
    /// <param name="text">One line, in the order in which it is read aloud.</param>
    public static string Of(string text) =>
        text.Any(Isolation.IsRightToLeft)
            ? Line(Parts(Isolation.Paired(text)))
            : string.Concat(text.Where(letter => !Isolation.IsSign(letter)));

    // What a reader takes for letters, so that accents stay with theirs; an isolate is one sign, in order already.
    private static List<(string Text, Kind Kind)> Parts(string text)
    {
        List<(string Text, Kind Kind)> parts = [];
        int at = 0;
        while (at < text.Length)
        {
            if (text[at] == Isolation.Start)
            {
                int end = EndOf(text, at);
                List<(string Text, Kind Kind)> inside = Parts(text[(at + 1)..end]);
                Kind first = inside.Find(part => part.Kind is Kind.LeftToRight or Kind.RightToLeft).Kind;
                parts.Add((first == Kind.RightToLeft ? Turned(inside) : Line(inside), Kind.Sign));
                at = end + 1;
            }
            else
            {
                string letter = StringInfo.GetNextTextElement(text, at);
                // No accent is on a sign of an isolate.
                int sign = letter.AsSpan().IndexOfAny(Isolation.Start, Isolation.End);
                letter = sign > 0 ? letter[..sign] : letter;
                parts.Add((letter, KindOf(letter)));
                at += letter.Length;
            }
        }

        return parts;
    }

    private static int EndOf(string text, int start)
    {
        int depth = 0;
        int at = start;
        do
        {
            depth += text[at] switch
            {
                Isolation.Start => 1,
                Isolation.End => -1,
                _ => 0,
            };
            at++;
        } while (depth > 0);

        return at - 1;
    }

    private static Kind KindOf(string letter) =>
        Isolation.IsRightToLeft(letter[0]) ? Kind.RightToLeft
        : char.IsLetter(letter, 0) ? Kind.LeftToRight
        : char.IsDigit(letter, 0) ? Kind.Digit
        : Kind.Sign;

    private static string Line(List<(string Text, Kind Kind)> parts)
    {
        List<string> line = [];
        int i = 0;
        while (i < parts.Count)
        {
            int end = i + 1;
            if (parts[i].Kind == Kind.RightToLeft)
            {
                end = Reach(parts, i, Kind.LeftToRight, Kind.RightToLeft);
                line.Add(Turned(parts[i..end]));
            }
            else
            {
                line.Add(parts[i].Text);
            }

            i = end;
        }

        return string.Concat(line);
    }

    // Numbers and Latin words keep their order inside the turned run, and brackets still open towards what they are about.
    private static string Turned(List<(string Text, Kind Kind)> run)
    {
        List<string> turned = [];
        int i = 0;
        while (i < run.Count)
        {
            int end = run[i].Kind switch
            {
                Kind.LeftToRight => Reach(run, i, Kind.RightToLeft, Kind.LeftToRight),
                Kind.Digit => EndOfNumber(run, i),
                _ => i + 1,
            };
            turned.Add(end == i + 1 ? Mirrored(run[i].Text) : string.Concat(run[i..end].Select(part => part.Text)));
            i = end;
        }

        turned.Reverse();
        return string.Concat(turned);
    }

    // Past the last letter of a kind, or number, that comes before the first letter of the other kind.
    private static int Reach(List<(string Text, Kind Kind)> parts, int from, Kind until, Kind kind)
    {
        int end = from + 1;
        for (int i = from; i < parts.Count && parts[i].Kind != until; i++)
        {
            end = parts[i].Kind == kind || parts[i].Kind == Kind.Digit ? i + 1 : end;
        }

        return end;
    }

    // One sign between two digits is a part of the number: 0.643, 1/2.
    private static int EndOfNumber(List<(string Text, Kind Kind)> parts, int from)
    {
        int end = from + 1;
        while (end < parts.Count)
        {
            if (parts[end].Kind == Kind.Digit)
            {
                end++;
            }
            else if (parts[end].Text is "." or "," or "/" or ":" && end + 1 < parts.Count && parts[end + 1].Kind == Kind.Digit)
            {
                end += 2;
            }
            else
            {
                break;
            }
        }

        return end;
    }

    private static string Mirrored(string sign) =>
        sign.Length == 1 && Brackets.IndexOf(sign[0], StringComparison.Ordinal) is var at and >= 0 ? Brackets[at ^ 1].ToString() : sign;
}
