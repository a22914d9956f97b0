using System.Diagnostics;

namespace CushionService.Nesting.Rectangles.Proofs;

/// <summary>Writes numbers of given widths one behind the other, from the lowest bit of the first word up.</summary>
/// <param name="words">Takes the words; large enough for all that is written.</param>
internal ref struct BitWriter(Span<ulong> words)
{
    /// <summary>Bits of a word.</summary>
    public const int WordBits = 64;

    private readonly Span<ulong> _words = words;
    private ulong _word;
    private int _bits;
    private int _count;

    /// <summary>Writes a number.</summary>
    /// <param name="value">At least 0, and below 2 to the power of the bits.</param>
    /// <param name="bits">Its width, from 1 to 32.</param>
    public void Write(int value, int bits)
    {
        Debug.Assert(value >= 0 && value >> (bits - 1) <= 1, "A number is wider than its place: two states could look the same.");
        _word |= (ulong)value << _bits;
        _bits += bits;
        if (_bits >= WordBits)
        {
            _words[_count++] = _word;
            _bits -= WordBits;
            _word = _bits == 0 ? 0 : (ulong)value >> (bits - _bits);
        }
    }

    /// <summary>Ends the last word; the number of words.</summary>
    public int Close()
    {
        if (_bits > 0)
        {
            _words[_count++] = _word;
        }

        return _count;
    }
}
