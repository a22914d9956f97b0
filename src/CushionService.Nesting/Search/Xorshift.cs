using System.Diagnostics;

namespace CushionService.Nesting.Search;

/// <summary>A small seeded generator (Marsaglia 2003, xorshift64*), so that a search takes the same path on every machine.</summary>
/// <param name="seed">Any number; 0 is replaced, for it would give nothing but 0.</param>
/// <remarks>A struct, so that a search keeps its own state; pass it by reference.</remarks>
internal struct Xorshift(ulong seed)
{
    private ulong _state = seed == 0 ? 0x9E3779B97F4A7C15UL : seed;

    /// <summary>A number from 0 up to but not including <paramref name="bound"/>, which is above 0.</summary>
    public int Next(int bound)
    {
        Debug.Assert(bound > 0, "There is no number to draw.");
        _state ^= _state >> 12;
        _state ^= _state << 25;
        _state ^= _state >> 27;
        uint high = (uint)((_state * 0x2545F4914F6CDD1DUL) >> 32);
        return (int)(((ulong)high * (uint)bound) >> 32);
    }
}
