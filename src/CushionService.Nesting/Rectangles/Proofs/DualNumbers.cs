using CushionService.Nesting.Rectangles.Skylines;

namespace CushionService.Nesting.Rectangles.Proofs;

/// <summary>What functions of one axis make of each kind in either turn, and of the whole. Functions that say the same of all, or that no
/// kind counts at all, are left out: pairs with them say nothing new.</summary>
/// <param name="functions">The functions; those that stay are moved to the front.</param>
/// <param name="set">All copies.</param>
/// <param name="rows">As much room as <see cref="SizeFor"/> says.</param>
internal ref struct DualNumbers(Span<DualFunction> functions, RectangleSet set, Span<long> rows)
{
    private readonly Span<DualFunction> _functions = functions;
    private readonly Span<long> _rows = rows;
    private readonly int _kinds = set.Kinds;
    private readonly int _row = (set.MayTurn ? 2 * set.Kinds : set.Kinds) + 1;

    /// <summary>How many functions stay.</summary>
    public int Count { get; private set; }

    /// <summary>How many numbers there are at most.</summary>
    /// <param name="functions">Number of functions.</param>
    /// <param name="set">All copies.</param>
    public static int SizeFor(int functions, RectangleSet set) => functions * ((2 * set.Kinds) + 1);

    /// <summary>A function that stays.</summary>
    public readonly DualFunction Function(int at) => _functions[at];

    /// <summary>What it makes of the whole.</summary>
    public readonly long Whole(int at) => _rows[((at + 1) * _row) - 1];

    /// <summary>What it makes of each kind as it is kept; of one that only fits turned, as in <see cref="Turned"/>.</summary>
    public readonly ReadOnlySpan<long> Upright(int at) => _rows.Slice(at * _row, _kinds);

    /// <summary>What it makes of each kind when that is turned; of one that only fits as it is kept, as in <see cref="Upright"/>. Only
    /// where any kind turns.</summary>
    public readonly ReadOnlySpan<long> Turned(int at) => _rows.Slice((at * _row) + _kinds, _kinds);

    /// <summary>Works the numbers out.</summary>
    /// <param name="length">Length of the strip, in grid units.</param>
    /// <param name="ofLength">Whether the functions are of the length, and not of the width.</param>
    public void Number(long length, bool ofLength)
    {
        Span<long> extents = stackalloc long[_row - 1];
        Read(length, ofLength, extents);
        long whole = ofLength ? length : set.Width;
        Count = 0;
        foreach (DualFunction function in _functions)
        {
            Span<long> row = _rows.Slice(Count * _row, _row);
            function.Of(extents, whole, row);
            row[^1] = function.Of(whole, whole);
            if (row[..^1].ContainsAnyExcept(0) && !IsThere(row))
            {
                _functions[Count++] = function;
            }
        }
    }

    // What each kind takes of the axis in either turn; one that fits in one turn only has that turn's in both places.
    private readonly void Read(long length, bool ofLength, Span<long> extents)
    {
        var (upright, turned) = ofLength ? (set.Along, set.Across) : (set.Across, set.Along);
        for (var kind = 0; kind < _kinds; kind++)
        {
            bool fits = set.FitsUpright(kind, length);
            extents[kind] = fits ? upright[kind] : turned[kind];
            if (set.MayTurn)
            {
                extents[_kinds + kind] = fits && !set.FitsTurned(kind, length) ? upright[kind] : turned[kind];
            }
        }
    }

    private readonly bool IsThere(ReadOnlySpan<long> row)
    {
        for (var at = 0; at < Count; at++)
        {
            if (_rows.Slice(at * _row, _row).SequenceEqual(row))
            {
                return true;
            }
        }

        return false;
    }
}
