using System.Collections.Immutable;
using System.Diagnostics;

namespace CushionService.Nesting.Rectangles.Skylines;

/// <summary>The copies to be laid as flat arrays. Copies of equal size and equal turns share a kind, whichever piece
/// they came from, so that a search never treats equal rectangles as different.</summary>
internal sealed class RectangleSet
{
    private readonly int[] _piece;
    private readonly int[] _copy;
    private readonly bool[] _swapped;

    /// <summary>Reads the pieces; each fits <paramref name="width"/> in some allowed turn.</summary>
    public RectangleSet(ImmutableArray<NestingPiece> pieces, long width)
    {
        Width = width;
        var kinds = new PieceKinds(pieces, width);
        (Count, Across, Along, Turns) = (kinds.Count, kinds.Across, kinds.Along, kinds.Turns);
        MayTurn = Array.IndexOf(Turns, true) >= 0;
        var next = new int[Count.Length];
        for (var (kind, copies) = (0, 0); kind < Count.Length; copies += Count[kind++])
        {
            next[kind] = copies;
            Area += Across[kind] * Along[kind] * Count[kind];
        }

        // Kind by kind, and within a kind as the caller has them.
        int all = Count.Sum();
        (KindOf, _piece, _copy, _swapped) = (new int[all], new int[all], new int[all], new bool[all]);
        for (var piece = 0; piece < pieces.Length; piece++)
        {
            for (var copy = 0; copy < pieces[piece].Quantity; copy++)
            {
                int kind = kinds.Of[piece];
                int at = next[kind]++;
                (KindOf[at], _piece[at], _copy[at], _swapped[at]) = (kind, piece, copy, kinds.IsSwapped[piece]);
            }
        }

        Debug.Assert(KindOf.AsSpan().SequenceEqual(KindOf.Order().ToArray()), "Copies of a kind are not neighbours.");
        Debug.Assert(Across.All(across => across > 0 && across <= width), "A kind does not fit the strip as it is kept.");
    }

    /// <summary>Width of the strip.</summary>
    public long Width { get; }

    /// <summary>Sum of the areas of all copies.</summary>
    public long Area { get; }

    /// <summary>Number of copies.</summary>
    public int Copies => KindOf.Length;

    /// <summary>Number of kinds.</summary>
    public int Kinds => Across.Length;

    /// <summary>Kind of each copy; copies of a kind are neighbours.</summary>
    public int[] KindOf { get; }

    /// <summary>Extent across the strip of each kind, unturned.</summary>
    public long[] Across { get; }

    /// <summary>Extent along the strip of each kind, unturned.</summary>
    public long[] Along { get; }

    /// <summary>Whether the kind may be laid in both turns.</summary>
    public bool[] Turns { get; }

    /// <summary>Whether any kind may be laid in both turns.</summary>
    public bool MayTurn { get; }

    /// <summary>Number of copies of each kind.</summary>
    public int[] Count { get; }

    /// <summary>Whether a kind fits a strip up to a length as it is kept.</summary>
    public bool FitsUpright(int kind, long length) => Across[kind] <= Width && Along[kind] <= length;

    /// <summary>Whether a kind may turn and then fits a strip up to a length.</summary>
    public bool FitsTurned(int kind, long length) => Turns[kind] && Along[kind] <= Width && Across[kind] <= length;

    /// <summary>A length that the longest copy takes in any of its turns.</summary>
    public long LongestAtLeast()
    {
        long longest = 0;
        for (var kind = 0; kind < Kinds; kind++)
        {
            longest = Math.Max(longest, Turns[kind] ? Math.Min(Across[kind], Along[kind]) : Along[kind]);
        }

        return longest;
    }

    /// <summary>Index of the caller's piece of which this is a copy.</summary>
    public int PieceOf(int copy) => _piece[copy];

    /// <summary>Where a copy lies, in the caller's terms.</summary>
    /// <param name="copy">Index into the copies.</param>
    /// <param name="place">Where it lies, as the set keeps it.</param>
    /// <param name="sheet">Which sheet it lies on.</param>
    /// <remarks>A turn counts from the piece as drawn, so that it is undone where the set keeps the
    /// piece with its sides exchanged.</remarks>
    public Placement Place(int copy, RectanglePlace place, int sheet = 0) =>
        new(_piece[copy], _copy[copy], sheet, place.X, place.Y, place.Turned != _swapped[copy] ? 90 : 0);
}
