using System.Diagnostics;
using CushionService.Nesting.Outlines.Placing;
using CushionService.Nesting.Search;

namespace CushionService.Nesting.Outlines.Searching;

/// <summary>A small pool of arrangements that were nearly apart at one length, the least overlapping first. All room is made
/// once.</summary>
internal sealed class NearMisses
{
    // More are never picked: the worse half of a dozen hardly ever is.
    private const int Most = 12;

    private readonly Arrangement[] _kept;
    private readonly double[] _overlaps = new double[Most];

    /// <summary>Makes all room once.</summary>
    /// <param name="copies">The copies and flaws.</param>
    public NearMisses(Copies copies)
    {
        _kept = new Arrangement[Most];
        for (var index = 0; index < Most; index++)
        {
            _kept[index] = new Arrangement(copies);
        }
    }

    /// <summary>How many are kept.</summary>
    public int Count { get; private set; }

    /// <summary>Forgets all: the wanted length has changed.</summary>
    public void Clear() => Count = 0;

    /// <summary>Keeps an arrangement, instead of the worst where the pool is full and that one overlaps more.</summary>
    /// <param name="arrangement">Copied.</param>
    /// <param name="overlap">The sum of its depths, grid units, above 0.</param>
    public void Add(Arrangement arrangement, double overlap)
    {
        Debug.Assert(overlap > 0, "an arrangement without overlaps is no near miss");
        if (Count == Most && overlap >= _overlaps[Most - 1])
        {
            return;
        }

        var at = Count < Most ? Count++ : Most - 1;
        var freed = _kept[at];
        for (; at > 0 && _overlaps[at - 1] > overlap; at--)
        {
            (_kept[at], _overlaps[at]) = (_kept[at - 1], _overlaps[at - 1]);
        }

        freed.CopyFrom(arrangement);
        (_kept[at], _overlaps[at]) = (freed, overlap);
    }

    /// <summary>One of those kept; the less it overlaps, the likelier.</summary>
    /// <param name="random">Draws it; the square of a share favours the first.</param>
    /// <returns>Not a copy: it stays in the pool.</returns>
    public Arrangement Pick(ref Xorshift random)
    {
        Debug.Assert(Count > 0, "there must be one to pick");
        var share = random.Next(1 << 20) / (double)(1 << 20);
        return _kept[(int)(share * share * Count)];
    }
}
