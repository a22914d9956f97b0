using System.Collections.Immutable;
using CushionService.Engine.Measures;

namespace CushionService.Engine.Patterns.Panels;

/// <summary>A stretch of a strip, along x, that lies on one side of the cushion.</summary>
/// <param name="Length">Finished length.</param>
/// <param name="IsFront">Whether it is the front, where no join should show.</param>
public readonly record struct StripStretch(Length Length, bool IsFront)
{
    /// <summary>Where the front lies along a strip: from the first stretch in front to the end of the last one.</summary>
    /// <param name="stretches">The strip's stretches, from its start.</param>
    /// <returns>Distances from the strip's start; null where no stretch is in front.</returns>
    public static (Length From, Length To)? Front(ImmutableArray<StripStretch> stretches)
    {
        (Length from, Length to, Length at) = (Length.Zero, Length.Zero, Length.Zero);
        foreach (StripStretch stretch in stretches)
        {
            from = stretch.IsFront && to == Length.Zero ? at : from;
            at += stretch.Length;
            to = stretch.IsFront ? at : to;
        }

        return to > Length.Zero ? (from, to) : null;
    }

    /// <summary>The stretch that a strip is matched on: the longest in front, or the longest of all where none is.</summary>
    /// <param name="stretches">The strip's stretches, from its start; at least one.</param>
    /// <returns>Distances from the strip's start.</returns>
    public static (Length From, Length To, bool IsFront) Longest(ImmutableArray<StripStretch> stretches)
    {
        bool hasFront = stretches.Any(stretch => stretch.IsFront);
        (Length from, Length to, Length at) = (Length.Zero, Length.Zero, Length.Zero);
        foreach (StripStretch stretch in stretches)
        {
            (Length start, at) = (at, at + stretch.Length);
            (from, to) = stretch.IsFront == hasFront && stretch.Length > to - from ? (start, at) : (from, to);
        }

        return (from, to, hasFront);
    }
}
