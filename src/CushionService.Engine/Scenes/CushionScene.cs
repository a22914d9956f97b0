using System.Collections.Immutable;
using CushionService.Engine.Patterns.Additions;
using CushionService.Engine.Patterns.Constructions;
using CushionService.Engine.Patterns.Panels;
using CushionService.Engine.Specifications;

namespace CushionService.Engine.Scenes;

/// <summary>The finished cushion as its pattern makes it: every panel where it lies, every seam where it runs. Front at y = 0, underside at
/// z = 0; a cover without sides has its seam there.</summary>
/// <param name="Cushion">The cushion.</param>
/// <param name="Pattern">Its pattern, strips joined.</param>
/// <param name="Parts">Its panels, but for an inner cover, and for additions that are marks on other panels: ties, straps, handles,
/// pockets, buttons and welts.</param>
/// <param name="Seams">Every seam of the cover, once, in sewing order.</param>
public sealed record CushionScene(
    CushionSpecification Cushion,
    Pattern Pattern,
    ImmutableArray<ScenePart> Parts,
    ImmutableArray<SceneSeam> Seams
)
{
    /// <summary>The scene of a cushion.</summary>
    /// <param name="cushion">A cushion of a drafting.</param>
    /// <param name="pattern">Its pattern there.</param>
    /// <exception cref="KeyNotFoundException">A seam joins an edge of a panel that no placing covers: a construction was
    /// added without its placing.</exception>
    public static CushionScene Of(CushionSpecification cushion, Pattern pattern)
    {
        // Places are found on the pattern as drafted: a strip that is joined from parts has a place as a whole, and its
        // parts lie on it.
        Pattern whole = Trim.AddTo(ConstructionRegistry.Of(cushion.Construction).Draft(cushion), cushion);
        var places = Placings.Of(cushion, whole);
        ImmutableArray<ScenePart> parts =
        [
            .. pattern.Panels.Where(panel => !panel.Part.IsInner).Select(panel => places.Of(panel, pattern.Panels)).OfType<ScenePart>(),
        ];
        Dictionary<PartName, ScenePart> byName = parts.ToDictionary(part => part.Panel.Part);
        return new CushionScene(
            cushion,
            pattern,
            parts,
            [.. pattern.Seams.Where(seam => !seam.One[0].Part.IsInner).Select(seam => new SceneSeam(seam, Lines(byName, seam.One)))]
        );
    }

    /// <summary>The part of that name; null where it has no place of its own.</summary>
    /// <param name="part">A part of the pattern, strips joined.</param>
    public ScenePart? this[PartName part] => Parts.FirstOrDefault(known => known.Panel.Part == part);

    /// <summary>Edges as they lie in the scene.</summary>
    /// <param name="edges">Edges of the pattern; those of panels without a place are left out.</param>
    public ImmutableArray<SceneLine> Lines(IEnumerable<EdgeRef> edges) =>
        [.. edges.Where(edge => this[edge.Part] is not null).Select(edge => this[edge.Part]!.LineOf(edge))];

    private static ImmutableArray<SceneLine> Lines(Dictionary<PartName, ScenePart> parts, ImmutableArray<EdgeRef> edges) =>
        [.. edges.Select(edge => parts[edge.Part].LineOf(edge))];
}
