using CushionService.Engine.Patterns.Panels;
using CushionService.Engine.Specifications;
using CushionService.Engine.Specifications.Closures;
using CushionService.Engine.Specifications.Trimmings;

namespace CushionService.Engine.Patterns.Additions;

/// <summary>Adds to a drafted cover what it carries whatever its construction.</summary>
public static class Trim
{
    /// <summary>The cover with its additions.</summary>
    /// <param name="pattern">The cover as its construction drafts it.</param>
    /// <param name="cushion">The cushion, whose additions its construction offers.</param>
    /// <exception cref="InvalidPatternException">The result does not close, or an addition finds no panel.</exception>
    public static Pattern AddTo(Pattern pattern, CushionSpecification cushion)
    {
        TrimSpecification trim = cushion.Trim;
        // Welts, flat piping and bought trims are strips without a place in the seams: cutting and materials add them by
        // the edging's loop.
        Pattern trimmed = trim.Edging switch
        {
            RuffleSpecification ruffle => Ruffle.AddTo(pattern, cushion, ruffle),
            FlangeStripSpecification flange => FlangeStrip.AddTo(pattern, cushion, flange),
            _ => pattern,
        };
        trimmed = trim.Ties is { } ties ? Ties.AddTo(trimmed, cushion, ties) : trimmed;
        trimmed = trim.Straps is { } straps ? CrossStraps.AddTo(trimmed, cushion, straps) : trimmed;
        trimmed = trim.Pocket is { } pocket ? PatchPocket.AddTo(trimmed, cushion, pocket) : trimmed;
        trimmed = trim.Vents > 0 ? Vents.AddTo(trimmed, cushion) : trimmed;
        trimmed = trim.Tufts is { } tufts ? Tufting.AddTo(trimmed, cushion, tufts) : trimmed;
        trimmed = cushion.Closure is ButtonClosure or TieClosure
            ? Fastenings.AddTo(trimmed, cushion, (OverlappingClosure)cushion.Closure)
            : trimmed;
        return ReferenceEquals(trimmed, pattern) ? pattern : trimmed.Closed();
    }
}
