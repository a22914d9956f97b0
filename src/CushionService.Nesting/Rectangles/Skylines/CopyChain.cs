namespace CushionService.Nesting.Rectangles.Skylines;

/// <summary>Copies in order as a linked list over an array, so that one is taken out in constant time. The list's head lies behind the last
/// copy, so that it needs no case of its own.</summary>
/// <param name="copies">Number of copies.</param>
internal sealed class CopyChain(int copies)
{
    /// <summary>What comes before the first copy and behind the last.</summary>
    public int Head { get; } = copies;

    /// <summary>What follows each copy, and the head.</summary>
    public int[] Next { get; } = new int[copies + 1];

    /// <summary>Takes up copies, those to be considered first in front.</summary>
    /// <param name="order">The copies, each once; at least one.</param>
    public void Begin(ReadOnlySpan<int> order)
    {
        int previous = Head;
        foreach (int copy in order)
        {
            Next[previous] = copy;
            previous = copy;
        }

        Next[previous] = Head;
    }

    /// <summary>Takes out the copy that follows another one, or the list's head; returns it.</summary>
    /// <param name="previous">A copy, or the number of all copies for the head.</param>
    public int TakeAfter(int previous)
    {
        int copy = Next[previous];
        Next[previous] = Next[copy];
        return copy;
    }

    /// <summary>Writes the copies that are left, in order.</summary>
    /// <param name="rest">As many places as copies are left.</param>
    public void CopyRest(Span<int> rest)
    {
        for (int copy = Next[Head], at = 0; copy != Head; copy = Next[copy])
        {
            rest[at++] = copy;
        }
    }
}
