using System.Diagnostics;
using CushionService.Nesting.Rectangles.Skylines;
using CushionService.Nesting.Search;

namespace CushionService.Nesting.Rectangles.Repeats;

/// <summary>The free part of a strip as its maximal empty rectangles, which overlap each other (Lai and Chan 1997). Every position at
/// which a rectangle may lie is within one of them, so that whatever forbids a position, a copy or a flaw, is cut out once
/// and never compared again.</summary>
/// <param name="width">Width of the strip, in grid units.</param>
/// <remarks>Invariant: no rectangle of the list lies within another, and none meets what was taken.
/// After n takes there are O(n) of them in practice, O(n²) at worst, so that the closed ones are
/// capped.</remarks>
internal sealed class FreeSpace(long width)
{
    // Beyond this many, holes that are closed on all sides are forgotten: a layout of thousands has holes enough.
    private const int MostClosed = 256;

    // The rectangles, and what is left of those that a take has cut. Both grow, are kept, and so
    // allocate only until they have met their largest order.
    private FreeRectangle[] _all = new FreeRectangle[64];
    private FreeRectangle[] _cut = new FreeRectangle[64];
    private int _count;
    private int _cuts;

    /// <summary>The maximal empty rectangles.</summary>
    public ReadOnlySpan<FreeRectangle> All => _all.AsSpan(0, _count);

    /// <summary>An empty strip.</summary>
    public void Clear()
    {
        _all[0] = new FreeRectangle(0, 0, width, Skyline.Wall);
        _count = 1;
    }

    /// <summary>Cuts a rectangle out.</summary>
    /// <param name="taken">The rectangle; it may stick out of the strip.</param>
    /// <param name="leastAcross">What is narrower is of no use any more.</param>
    /// <param name="leastAlong">What is lower is of no use any more.</param>
    /// <param name="budget">Pays a step for each rectangle that is looked at.</param>
    public void Take(in FreeRectangle taken, long leastAcross, long leastAlong, StepBudget budget)
    {
        var kept = 0;
        _cuts = 0;
        for (var index = 0; index < _count; index++)
        {
            var free = _all[index];
            if (!free.Meets(taken))
            {
                _all[kept++] = free;
                continue;
            }

            Cut(free with { Right = taken.Left }, leastAcross, leastAlong);
            Cut(free with { Left = taken.Right }, leastAcross, leastAlong);
            Cut(free with { Upper = taken.Lower }, leastAcross, leastAlong);
            Cut(free with { Lower = taken.Upper }, leastAcross, leastAlong);
        }

        // Each rectangle is looked at once, and each cut part beside all that are kept and all other
        // parts.
        budget.Spend(_count + (long)_cuts * (kept + _cuts));
        _count = kept;
        for (var index = 0; index < _cuts; index++)
        {
            if (!IsCovered(index, kept) && (_count < MostClosed || _cut[index].Upper == Skyline.Wall))
            {
                if (_count == _all.Length)
                {
                    Array.Resize(ref _all, 2 * _count);
                }

                _all[_count++] = _cut[index];
            }
        }

        Debug.Assert(!Meets(taken), "What is taken is still free.");
    }

    /// <summary>Notes a part of a cut rectangle, unless it is too narrow or too low for all that is to
    /// come.</summary>
    /// <param name="part">What is left of a free rectangle.</param>
    /// <param name="leastAcross">The least width of any use.</param>
    /// <param name="leastAlong">The least height of any use.</param>
    private void Cut(FreeRectangle part, long leastAcross, long leastAlong)
    {
        if (part.Right - part.Left < leastAcross || part.Upper - part.Lower < leastAlong)
        {
            return;
        }

        Debug.Assert(part.Left >= 0 && part.Right <= width, "A free rectangle lies outside the strip.");
        if (_cuts == _cut.Length)
        {
            Array.Resize(ref _cut, 2 * _cuts);
        }

        _cut[_cuts++] = part;
    }

    /// <summary>Whether a cut part lies within another free rectangle; of two that are equal, the later does.</summary>
    /// <param name="index">The part.</param>
    /// <param name="kept">Free rectangles that were not cut.</param>
    private bool IsCovered(int index, int kept)
    {
        ref readonly var part = ref _cut[index];
        for (var other = 0; other < kept; other++)
        {
            if (_all[other].Holds(part))
            {
                return true;
            }
        }

        for (var other = 0; other < _cuts; other++)
        {
            if (other != index && _cut[other].Holds(part) && (other < index || _cut[other] != part))
            {
                return true;
            }
        }

        return false;
    }

    /// <summary>For assertions: whether anything that was taken is still free.</summary>
    private bool Meets(FreeRectangle taken)
    {
        foreach (ref readonly var free in All)
        {
            if (free.Meets(taken))
            {
                return true;
            }
        }

        return false;
    }
}
