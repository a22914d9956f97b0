namespace CushionService.MessageGenerator;

/// <summary>The text of a template, read sign by sign.</summary>
internal sealed class TemplateText(string text)
{
    /// <summary>How many signs are read.</summary>
    public int Position { get; private set; }

    /// <summary>The next sign; a null character at the end.</summary>
    public char Ahead => Position < text.Length ? text[Position] : '\0';

    /// <summary>Reads a sign.</summary>
    public char Next() => text[Position++];

    /// <summary>Reads the text up to one of some signs, which is left to read.</summary>
    /// <exception cref="MessageException">None of them follows.</exception>
    /// <param name="ends">The signs.</param>
    /// <returns>Without white space at either end.</returns>
    public string UpTo(params char[] ends)
    {
        int end = text.IndexOfAny(ends, Position);
        if (end < 0)
        {
            throw new MessageException("a brace is opened and not closed");
        }

        string word = text.Substring(Position, end - Position).Trim();
        Position = end;
        return word;
    }

    /// <summary>Reads what an apostrophe quotes: two are one, and one before a sign of the grammar quotes up to the next.</summary>
    /// <exception cref="MessageException">The quotation does not end.</exception>
    public string Quoted()
    {
        int start = Position;
        Position = text.IndexOf('\'', start) + 1;
        return Position == start + 1 ? "'"
            : Position > 0 ? text.Substring(start, Position - 1 - start)
            : throw new MessageException("an apostrophe before a brace or # begins a quotation that does not end");
    }

    /// <summary>Passes over white space.</summary>
    public void SkipSpace()
    {
        while (char.IsWhiteSpace(Ahead))
        {
            Position++;
        }
    }
}
