using System.Collections.Immutable;
using CushionService.Engine.Patterns.Additions;
using CushionService.Engine.Scenes;
using CushionService.Engine.Specifications.Trimmings;

namespace CushionService.Documents.Pictures;

/// <summary>The seam line of an edging as it lies in the scene.</summary>
/// <param name="Edging">The edging.</param>
/// <param name="Place">Which seam.</param>
/// <param name="Lines">Its edges.</param>
internal sealed record EdgingLines(EdgingSpecification Edging, EdgingPlace Place, ImmutableArray<SceneLine> Lines)
{
    /// <summary>The edgings of a cushion.</summary>
    /// <param name="scene">The scene.</param>
    /// <returns>One entry for each place that the edging goes to; none for a plain cushion.</returns>
    public static IEnumerable<EdgingLines> Of(CushionScene scene) =>
        scene.Cushion.Trim.Edging is { } edging
            ? edging.At.Select(place => new EdgingLines(edging, place, scene.Lines(EdgingLoop.Of(scene.Pattern, place).Edges)))
            : [];
}
