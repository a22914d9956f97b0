using System.Collections.Immutable;

namespace CushionService.Nesting.Rectangles.Skylines;

/// <summary>Sorts pieces by kind: pieces of equal size and equal turns are of one kind. A piece that may turn is kept with its longer side
/// along; one that fits the strip in one turn only is kept in that turn, and then does not turn.</summary>
internal sealed class PieceKinds
{
    // So few are found faster one by one.
    private const int FewPieces = 16;

    /// <summary>Sorts the pieces.</summary>
    /// <param name="pieces">Each fits the width in some allowed turn; a quantity of 0 makes no kind.</param>
    /// <param name="width">Width of the strip, in grid units.</param>
    public PieceKinds(ImmutableArray<NestingPiece> pieces, long width)
    {
        (Of, IsSwapped) = (new int[pieces.Length], new bool[pieces.Length]);
        var sizes = new List<(long Across, long Along, bool Turns)>(pieces.Length);
        var count = new List<int>(pieces.Length);
        var byKind = pieces.Length > FewPieces ? new Dictionary<(long, long, bool), int>() : null;
        for (var piece = 0; piece < pieces.Length; piece++)
        {
            var (across, along) = (pieces[piece].Width, pieces[piece].Length);
            bool mayTurn = pieces[piece].Rotations == Rotations.QuarterTurns && across != along;
            bool uprightFits = across <= width;
            bool turns = mayTurn && uprightFits && along <= width;
            IsSwapped[piece] = mayTurn && (turns ? across > along : !uprightFits);
            var size = IsSwapped[piece] ? (along, across, turns) : (across, along, turns);
            int kind = byKind is null ? sizes.IndexOf(size) : byKind.GetValueOrDefault(size, -1);
            if (kind < 0 && pieces[piece].Quantity > 0)
            {
                kind = sizes.Count;
                sizes.Add(size);
                count.Add(0);
                byKind?.Add(size, kind);
            }

            Of[piece] = kind;
            if (kind >= 0)
            {
                count[kind] += pieces[piece].Quantity;
            }
        }

        Count = [.. count];
        (Across, Along, Turns) = (new long[sizes.Count], new long[sizes.Count], new bool[sizes.Count]);
        for (var kind = 0; kind < sizes.Count; kind++)
        {
            (Across[kind], Along[kind], Turns[kind]) = sizes[kind];
        }
    }

    /// <summary>The kind of each piece; -1 for one that is wanted nowhere.</summary>
    public int[] Of { get; }

    /// <summary>Whether a piece is kept with its sides exchanged.</summary>
    public bool[] IsSwapped { get; }

    /// <summary>Extent across the strip of each kind as it is kept, in grid units.</summary>
    public long[] Across { get; }

    /// <summary>Extent along the strip of each kind as it is kept, in grid units.</summary>
    public long[] Along { get; }

    /// <summary>Whether the kind may be laid in both turns.</summary>
    public bool[] Turns { get; }

    /// <summary>Copies of each kind, at least 1.</summary>
    public int[] Count { get; }
}
