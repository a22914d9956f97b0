using System.Collections.Immutable;
using CushionService.Engine.Measures;

namespace CushionService.Engine.Cutting;

/// <summary>Joins a strip that passes no front, such as the section of a zipper round three sides, at the corners that part it most evenly:
/// there a join is part of the turn (common practice, no source).</summary>
internal static class CornerJoins
{
    /// <summary>The joins, as finished distances from the strip's start; null where the corners alone do not do.</summary>
    /// <param name="corners">Where the strip turns, from its start to its end, both included.</param>
    /// <param name="most">The longest finished piece that the fabric gives.</param>
    /// <param name="pieces">How many pieces, at least one.</param>
    public static ImmutableArray<Length>? Of(Length[] corners, Length most, int pieces)
    {
        // The longest piece up to each corner in as many pieces, and the corner that the last of them starts at.
        var longest = new Length?[pieces + 1, corners.Length];
        var starts = new int[pieces + 1, corners.Length];
        longest[0, 0] = Length.Zero;
        for (var piece = 1; piece <= pieces; piece++)
        {
            for (var to = 1; to < corners.Length; to++)
            {
                for (var from = 0; from < to; from++)
                {
                    Length length = corners[to] - corners[from];
                    if (
                        length <= most
                        && longest[piece - 1, from] is { } before
                        && Length.Max(before, length) is var longer
                        && (longest[piece, to] is not { } known || longer < known)
                    )
                    {
                        (longest[piece, to], starts[piece, to]) = (longer, from);
                    }
                }
            }
        }

        if (longest[pieces, corners.Length - 1] is null)
        {
            return null;
        }

        var joins = new Length[pieces - 1];
        for (int piece = pieces, at = corners.Length - 1; piece > 1; piece--)
        {
            at = starts[piece, at];
            joins[piece - 2] = corners[at];
        }

        return [.. joins];
    }
}
