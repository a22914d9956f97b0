using System.Collections.Immutable;

namespace CushionService.Nesting.Rectangles;

/// <summary>The copies to be laid as flat arrays. Copies of equal size and equal turns share a kind, whichever piece
/// they came from, so that a search never tells equal rectangles apart.</summary>
internal sealed class RectangleSet
{
    private readonly int[] _piece;
    private readonly int[] _copy;
    private readonly bool[] _swapped;

    /// <summary>Reads the pieces; each fits <paramref name="width"/> in some allowed turn.</summary>
    public RectangleSet(ImmutableArray<NestingPiece> pieces, long width)
    {
        Width = width;
        var byKind = new Dictionary<(long, long, bool), int>();
        var copies = new List<(int Kind, int Piece, int Copy, bool Swapped)>();
        for (var piece = 0; piece < pieces.Length; piece++)
        {
            if (pieces[piece].Quantity == 0)
            {
                continue;
            }

            var (across, along) = (pieces[piece].Width, pieces[piece].Length);
            bool mayTurn = pieces[piece].Rotations == Rotations.QuarterTurns && across != along;
            bool uprightFits = across <= width;
            bool turns = mayTurn && uprightFits && along <= width;

            // A rectangle that may turn is kept with its longer side along; one that fits in one turn only is kept in that turn.
            bool swapped = mayTurn && (turns ? across > along : !uprightFits);
            var key = swapped ? (along, across, turns) : (across, along, turns);
            if (!byKind.TryGetValue(key, out int kind))
            {
                byKind[key] = kind = byKind.Count;
            }

            for (var copy = 0; copy < pieces[piece].Quantity; copy++)
            {
                copies.Add((kind, piece, copy, swapped));
            }
        }

        copies.Sort();
        KindOf = [.. copies.Select(copy => copy.Kind)];
        _piece = [.. copies.Select(copy => copy.Piece)];
        _copy = [.. copies.Select(copy => copy.Copy)];
        _swapped = [.. copies.Select(copy => copy.Swapped)];
        Across = new long[byKind.Count];
        Along = new long[byKind.Count];
        Turns = new bool[byKind.Count];
        Count = new int[byKind.Count];
        foreach (var ((across, along, turns), kind) in byKind)
        {
            (Across[kind], Along[kind], Turns[kind]) = (across, along, turns);
        }

        foreach (int kind in KindOf)
        {
            Count[kind]++;
            Area += Across[kind] * Along[kind];
        }
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
    public Placement Place(int copy, long x, long y, bool turned, int sheet = 0) =>
        new(_piece[copy], _copy[copy], sheet, x, y, turned != _swapped[copy] ? 90 : 0);
}
