using System.Collections.Immutable;
using System.Diagnostics;

namespace CushionService.Nesting.Rectangles.Skylines;

/// <summary>The copies to be laid as flat arrays. Copies of equal size and equal turns share a kind, whichever piece
/// they came from, so that a search never treats equal rectangles as different.</summary>
internal sealed class RectangleSet
{
    // So few are found faster one by one.
    private const int FewPieces = 16;

    private readonly int[] _piece;
    private readonly int[] _copy;
    private readonly bool[] _swapped;

    /// <summary>Reads the pieces; each fits <paramref name="width"/> in some allowed turn.</summary>
    public RectangleSet(ImmutableArray<NestingPiece> pieces, long width)
    {
        Width = width;
        var sizes = new List<(long Across, long Along, bool Turns)>(pieces.Length);
        var kindOf = new int[pieces.Length];
        var swapped = new bool[pieces.Length];
        var count = new List<int>(pieces.Length);
        var byKind = pieces.Length > FewPieces ? new Dictionary<(long, long, bool), int>() : null;
        for (var piece = 0; piece < pieces.Length; piece++)
        {
            var (across, along) = (pieces[piece].Width, pieces[piece].Length);
            bool mayTurn = pieces[piece].Rotations == Rotations.QuarterTurns && across != along;
            bool uprightFits = across <= width;
            bool turns = mayTurn && uprightFits && along <= width;

            // A rectangle that may turn is kept with its longer side along; one that fits in one turn only is kept in that turn.
            swapped[piece] = mayTurn && (turns ? across > along : !uprightFits);
            var size = swapped[piece] ? (along, across, turns) : (across, along, turns);
            int kind = byKind is null ? sizes.IndexOf(size) : byKind.GetValueOrDefault(size, -1);
            if (kind < 0 && pieces[piece].Quantity > 0)
            {
                kind = sizes.Count;
                sizes.Add(size);
                count.Add(0);
                byKind?.Add(size, kind);
            }

            kindOf[piece] = kind;
            if (kind >= 0)
            {
                count[kind] += pieces[piece].Quantity;
            }
        }

        Count = [.. count];
        Across = new long[sizes.Count];
        Along = new long[sizes.Count];
        Turns = new bool[sizes.Count];
        var next = new int[sizes.Count];
        for (var (kind, copies) = (0, 0); kind < sizes.Count; copies += Count[kind++])
        {
            (Across[kind], Along[kind], Turns[kind]) = sizes[kind];
            next[kind] = copies;
            Area += Across[kind] * Along[kind] * Count[kind];
        }

        // Kind by kind, and within a kind as the caller has them.
        int all = count.Sum();
        (KindOf, _piece, _copy, _swapped) = (new int[all], new int[all], new int[all], new bool[all]);
        for (var piece = 0; piece < pieces.Length; piece++)
        {
            for (var copy = 0; copy < pieces[piece].Quantity; copy++)
            {
                int at = next[kindOf[piece]]++;
                (KindOf[at], _piece[at], _copy[at], _swapped[at]) = (kindOf[piece], piece, copy, swapped[piece]);
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

    /// <summary>Number of copies of each kind.</summary>
    public int[] Count { get; }

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
    public Placement Place(int copy, RectanglePlace place, int sheet = 0) =>
        new(_piece[copy], _copy[copy], sheet, place.X, place.Y, place.Turned != _swapped[copy] ? 90 : 0);
}
