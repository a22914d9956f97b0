using System.Collections.Immutable;
using CushionService.Engine.Layouts;

namespace CushionService.Engine.Fitting;

/// <summary>Counts copies over all offcuts.</summary>
internal static class CopyNumbers
{
    /// <summary>The pieces of each offcut, the copies of a piece numbered from 1 over all of them.</summary>
    /// <param name="laid">What lies on each offcut, its copies numbered in any way.</param>
    /// <returns>The same pieces in the same order; each search numbers its own copies from 1, so that two offcuts would both have a first
    /// one.</returns>
    public static ImmutableArray<LaidPiece>[] Over(ImmutableArray<LaidPiece>[] laid)
    {
        var counts = new Dictionary<string, int>();
        var numbered = new ImmutableArray<LaidPiece>[laid.Length];
        for (var i = 0; i < laid.Length; i++)
        {
            numbered[i] = [.. laid[i].Select(one => one with { Copy = counts[one.Piece.Id] = counts.GetValueOrDefault(one.Piece.Id) + 1 })];
        }

        return numbered;
    }
}
