using CushionService.Engine.Measures;
using CushionService.Engine.Specifications.Outlines;

namespace CushionService.Engine.Specifications.Closures;

/// <summary>Two hemmed strips of a boxing, or flaps of a divided face, that overlap.</summary>
/// <param name="Side">Where it is; a flap closure is at the bottom.</param>
/// <param name="Return">How far its section runs round each corner.</param>
/// <param name="Fold">Depth of each turn of the double-folded hems.</param>
/// <param name="Overlap">How far they overlap.</param>
public abstract record OverlappingClosure(Side Side, Length Return, Length Fold, Length Overlap) : ClosureSpecification(Side)
{
    /// <summary>How much of one strip shows from the face's seam to its hemmed edge: (H + o)/2.</summary>
    /// <param name="height">Finished height of the boxing, or finished size of the face across the overlap.</param>
    /// <param name="overlap">How far the two overlap.</param>
    public static Length VisibleHeight(Length height, Length overlap) => (height + overlap).HalfUp();

    /// <summary>How many fastenings a run of the overlap takes, evenly: no further apart than the usual spacing.</summary>
    /// <param name="run">Finished length of the overlap.</param>
    /// <param name="furthest">The usual spacing, above zero.</param>
    public static int FasteningsOn(Length run, Length furthest) =>
        (int)Math.Max(1, (run.Nanometres + furthest.Nanometres - 1) / furthest.Nanometres);
}
