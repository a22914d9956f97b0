using System.Diagnostics;
using CushionService.Nesting.Rectangles.Skylines;
using CushionService.Nesting.Search;

namespace CushionService.Nesting.Rectangles.Repeats;

/// <summary>The free part of a strip as its maximal empty rectangles, which overlap each other (Lai and Chan 1997). Every position at
/// which a rectangle may lie is within one of them, so that whatever forbids a position, a copy or a flaw, is cut out once
/// and never compared again.</summary>
/// <param name="width">Width of the strip, in grid units.</param>
/// <param name="mostClosed">Beyond this many, holes that are closed on all sides are forgotten: a layout of thousands has holes enough, and
/// each copy looks at all of them.</param>
/// <remarks>Invariant: no rectangle of the list lies within another, and none meets what was taken.
/// After n takes there are O(n) of them in practice, O(n²) at worst, so that the closed ones are
/// capped.</remarks>
internal sealed class FreeSpace(long width, int mostClosed = FreeSpace.MostClosed)
{
    /// <summary>The most that any layout keeps.</summary>
    public const int MostClosed = 256;

    private readonly FreeList _met = new();

    // What is left of those that a take has cut; grows, and is kept.
    private FreeRectangle[] _cut = new FreeRectangle[64];
    private int _cuts;

    // Which of these parts lie within no other.
    private int[] _whole = new int[64];

    /// <summary>The maximal empty rectangles.</summary>
    public FreeList All { get; } = new();

    /// <summary>An empty strip.</summary>
    public void Clear()
    {
        All.Clear();
        All.Add(new FreeRectangle(0, 0, width, Skyline.Wall));
    }

    /// <summary>Cuts a rectangle out.</summary>
    /// <param name="taken">The rectangle; it may stick out of the strip.</param>
    /// <param name="leastAcross">What is narrower is of no use any more.</param>
    /// <param name="leastAlong">What is lower is of no use any more.</param>
    /// <param name="budget">Pays a step for each four rectangles that are looked at.</param>
    public void Take(in FreeRectangle taken, long leastAcross, long leastAlong, StepBudget budget)
    {
        int looks = All.Steps;
        _cuts = 0;
        All.MoveMet(taken, _met);
        for (var index = 0; index < _met.Count; index++)
        {
            FreeRectangle free = _met[index];
            Cut(free with { Right = taken.Left }, leastAcross, leastAlong);
            Cut(free with { Left = taken.Right }, leastAcross, leastAlong);
            Cut(free with { Upper = taken.Lower }, leastAcross, leastAlong);
            Cut(free with { Lower = taken.Upper }, leastAcross, leastAlong);
        }

        // Each rectangle is looked at once, and each cut part beside all that are kept and all other parts.
        budget.Spend(looks + (long)_cuts * (All.Steps + _cuts));
        Restore();
        Debug.Assert(!Meets(taken), "What is taken is still free.");
    }

    // What is left of the cut rectangles is free, but for what lies within another one. Nothing is added before all have been looked at.
    private void Restore()
    {
        var whole = 0;
        for (var index = 0; index < _cuts; index++)
        {
            if (!All.Covers(_cut[index]) && !IsCoveredByPart(index))
            {
                _whole[whole++] = index;
            }
        }

        for (var at = 0; at < whole; at++)
        {
            FreeRectangle part = _cut[_whole[at]];
            if (All.Count < mostClosed || part.Upper == Skyline.Wall)
            {
                All.Add(part);
            }
        }
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
            Array.Resize(ref _whole, 2 * _cuts);
        }

        _cut[_cuts++] = part;
    }

    // Whether a part lies within another part; of two that are equal, the later does.
    private bool IsCoveredByPart(int index)
    {
        ref readonly var part = ref _cut[index];
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
        for (var index = 0; index < All.Count; index++)
        {
            if (All[index].Meets(taken))
            {
                return true;
            }
        }

        return false;
    }
}
