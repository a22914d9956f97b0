using System.Runtime.CompilerServices;

namespace CushionService.Engine.Patterns;

/// <summary>The words for a broken invariant, put together only when it is broken: a sound pattern checks a hundred of them.</summary>
[InterpolatedStringHandler]
internal ref struct BrokenInvariant
{
    private DefaultInterpolatedStringHandler _words;

    /// <summary>Called by the compiler.</summary>
    public BrokenInvariant(int literalLength, int formattedCount, bool holds, out bool written)
    {
        written = !holds;
        _words = holds ? default : new DefaultInterpolatedStringHandler(literalLength, formattedCount);
    }

    /// <summary>Called by the compiler.</summary>
    public void AppendLiteral(string value) => _words.AppendLiteral(value);

    /// <summary>Called by the compiler.</summary>
    public void AppendFormatted<T>(T value) => _words.AppendFormatted(value);

    /// <summary>The words.</summary>
    public string ToStringAndClear() => _words.ToStringAndClear();
}
