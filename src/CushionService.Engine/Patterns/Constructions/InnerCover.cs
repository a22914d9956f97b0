using System.Collections.Immutable;
using CushionService.Engine.Patterns.Panels;
using CushionService.Engine.Specifications;
using CushionService.Engine.Specifications.Closures;
using CushionService.Engine.Specifications.Fabrics;
using CushionService.Engine.Specifications.Shapes;
using CushionService.Engine.Specifications.Trimmings;

namespace CushionService.Engine.Patterns.Constructions;

/// <summary>A cover for a loose fill within the cover: the same size and shape, closed by hand, of a fabric of its own (B. Johnston, NZ
/// Department of Agriculture, Making Cushions, Te Ao Hou, April 1956, page 60: a calico inner of the same size and shape).</summary>
internal static class InnerCover
{
    /// <summary>Adds the inner cover's panels and seams; nothing when the cushion has none.</summary>
    /// <param name="pattern">The cover.</param>
    /// <param name="construction">The cover's construction; a flange is left out of the inner cover.</param>
    /// <param name="cushion">The cushion.</param>
    public static Pattern AddTo(Pattern pattern, IConstruction construction, CushionSpecification cushion)
    {
        if (cushion.Fabrics.InnerCover is null)
        {
            return pattern;
        }

        IConstruction shape = construction.Offer.Takes(ConstructionField.Flange)
            ? ConstructionRegistry.Of(Construction.KnifeEdge)
            : construction;
        Pattern inner = shape.Draft(Plain(cushion, shape));
        return new Pattern(
            [
                .. pattern.Panels,
                .. inner.Panels.Select(panel =>
                    panel with
                    {
                        Part = panel.Part with { IsInner = true },
                        Role = FabricRole.InnerCover,
                        // Nobody sees it, so its print need not match.
                        Match = null,
                    }
                ),
            ],
            [.. pattern.Seams, .. inner.Seams.Select(seam => seam with { One = Named(seam.One), Other = Named(seam.Other) })]
        ).Closed();
    }

    /// <summary>The cover by itself, and the inner cover by itself; the latter is null when there is none.</summary>
    /// <param name="pattern">A pattern with its inner cover, if it has one.</param>
    public static (Pattern Cover, Pattern? Inner) Apart(Pattern pattern)
    {
        bool IsInner(EdgeRef edge) => pattern[edge.Part].Role == FabricRole.InnerCover;
        Pattern Of(bool inner) =>
            new(
                [.. pattern.Panels.Where(panel => (panel.Role == FabricRole.InnerCover) == inner)],
                [.. pattern.Seams.Where(seam => IsInner(seam.One[0]) == inner)]
            );
        return pattern.Panels.Any(panel => panel.Role == FabricRole.InnerCover) ? (Of(false), Of(true)) : (pattern, null);
    }

    /// <summary>The cushion without what only its outside has.</summary>
    /// <param name="cushion">The cushion.</param>
    /// <param name="shape">The construction of the inner cover; it must offer a closure that is sewn by hand.</param>
    public static CushionSpecification Plain(CushionSpecification cushion, IConstruction shape) =>
        cushion with
        {
            Construction = shape.Offer.Kind,
            Closure = new HandSewnClosure(shape.Offer.SidesFor(ClosureKind.HandSewn)[0]),
            Handle = null,
            Channels = null,
            CornerTaper = default,
            Trim = TrimSpecification.None,
        };

    private static ImmutableArray<EdgeRef> Named(ImmutableArray<EdgeRef> edges) =>
        [.. edges.Select(edge => edge with { Part = edge.Part with { IsInner = true } })];
}
