namespace CushionService.Intake;

/// <summary>Orders JSON pointers (RFC 6901) as a reader counts: entry 2 of a list before entry 10, all else as UTF-16, so that every
/// machine sorts them the same way.</summary>
internal sealed class PointerOrder : IComparer<string>
{
    /// <summary>The order.</summary>
    public static PointerOrder Instance { get; } = new();

    /// <inheritdoc/>
    public int Compare(string? x, string? y)
    {
        if (x is null || y is null)
        {
            return string.CompareOrdinal(x, y);
        }

        int i = 0,
            j = 0;
        while (i < x.Length && j < y.Length)
        {
            int order = char.IsAsciiDigit(x[i]) && char.IsAsciiDigit(y[j]) ? Numbers(x, ref i, y, ref j) : x[i++].CompareTo(y[j++]);
            if (order != 0)
            {
                return order;
            }
        }

        return (x.Length - i).CompareTo(y.Length - j);
    }

    // Indexes have no leading zeros, so that the longer one is the greater.
    private static int Numbers(string x, ref int i, string y, ref int j)
    {
        ReadOnlySpan<char> one = Number(x, ref i),
            other = Number(y, ref j);
        return one.Length != other.Length ? one.Length.CompareTo(other.Length) : one.SequenceCompareTo(other);
    }

    private static ReadOnlySpan<char> Number(string text, ref int at)
    {
        int from = at;
        while (at < text.Length && char.IsAsciiDigit(text[at]))
        {
            at++;
        }

        return text.AsSpan(from, at - from);
    }
}
