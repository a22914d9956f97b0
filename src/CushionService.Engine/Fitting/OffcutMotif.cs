using CushionService.Engine.Cutting;
using CushionService.Engine.Layouts;
using CushionService.Engine.Specifications;
using CushionService.Engine.Specifications.Fabrics;

namespace CushionService.Engine.Fitting;

/// <summary>Says that the place of a motif is not known where pieces are matched to it on offcuts.</summary>
public static class OffcutMotif
{
    /// <summary>The note; null where nothing is matched, or only across at a known place. What is known along the bolt is not known of an
    /// offcut.</summary>
    /// <param name="fabric">A fabric on hand.</param>
    /// <param name="pieces">Its pieces.</param>
    public static Violation? Of(FabricSpecification fabric, IEnumerable<CutPiece> pieces) =>
        fabric.Repeat is { } repeat
        && (repeat.IsUnknownAcross || repeat.Length is not null)
        && pieces.Any(piece => FabricNesting.IsMatched(fabric, piece))
            ? new Violation(
                $"{fabric.Pointer}/repeat",
                "motif-unknown",
                FitTexts.MotifUnknown(
                    fabric.Name,
                    repeat.Length,
                    repeat.IsUnknownAcross,
                    repeat is { IsUnknownAcross: false, IsUnknownAlong: false }
                )
            )
            : null;
}
