using CushionService.Engine.Specifications;

namespace CushionService.Engine.Patterns;

/// <summary>Adds to a drafted cover what it bears whatever its construction.</summary>
public static class Trim
{
    /// <summary>The cover with its additions.</summary>
    /// <param name="pattern">The cover as its construction drafts it.</param>
    /// <param name="cushion">The cushion, whose additions its construction offers.</param>
    /// <exception cref="InvalidPatternException">The result does not close.</exception>
    public static Pattern AddTo(Pattern pattern, CushionSpecification cushion)
    {
        Pattern trimmed = cushion.Trim.Edging is RuffleSpecification ruffle ? Ruffle.AddTo(pattern, cushion, ruffle) : pattern;
        return ReferenceEquals(trimmed, pattern) ? pattern : trimmed.Closed();
    }
}
