using System.Collections.Immutable;
using CushionService.Engine.Specifications.Trimmings;

namespace CushionService.Engine.Patterns.Constructions;

/// <summary>An edging, and the seams in which it may stand.</summary>
/// <param name="Kind">The edging.</param>
/// <param name="Places">The seams, at least one.</param>
public sealed record EdgingOffer(EdgingKind Kind, ImmutableArray<EdgingPlace> Places)
{
    /// <summary>The seams that are taken when none is named; all of them unless told otherwise.</summary>
    public ImmutableArray<EdgingPlace> Usual { get; init; } = Places;

    /// <summary>What follows a seam whatever the construction: a welt, flat piping, bought trims, topstitching.</summary>
    /// <param name="faces">The seams round faces, ends and side panels; the usual ones.</param>
    /// <param name="beside">Seams that take a welt besides.</param>
    public static ImmutableArray<EdgingOffer> Along(ImmutableArray<EdgingPlace> faces, params ImmutableArray<EdgingPlace> beside) =>
        [
            // A welt alone bends round a corner of the boxing; flat and bought trims follow a face.
            new(EdgingKind.Welt, [.. faces, .. beside]) { Usual = faces },
            .. (
                (EdgingKind[])[EdgingKind.FlatPiping, EdgingKind.LipCord, EdgingKind.Fringe, EdgingKind.Gimp, EdgingKind.Topstitched]
            ).Select(kind => new EdgingOffer(kind, faces)),
        ];
}
