using System.Collections.Immutable;
using CushionService.Engine.Measures;
using CushionService.Engine.Specifications;
using CushionService.Engine.Specifications.Fillings;
using CushionService.Engine.Specifications.Outlines;
using CushionService.Engine.Specifications.Shapes;

namespace CushionService.Engine.Materials;

/// <summary>The foam of a cushion as it is built up: layers that are glued to each other, and a crown under the uppermost.</summary>
/// <remarks>A crown is a smaller slab, bevelled to nothing at its edges, in the middle of the foam (common practice, no source).</remarks>
public static class FoamBuildUp
{
    /// <summary>What is cut for one cushion, each layer as a plain box cushion of its own thickness: from top to bottom, a crown after
    /// the uppermost.</summary>
    /// <param name="cushion">A cushion that is filled with foam.</param>
    /// <returns>The cushion itself where its foam is one block.</returns>
    public static ImmutableArray<CushionSpecification> Layers(CushionSpecification cushion)
    {
        FillSpecification fill = cushion.Fill!;
        FoamLayerSpecification whole = new(fill.Item, cushion.Thickness, fill.Density, fill.Oversize);
        ImmutableArray<FoamLayerSpecification> layers = fill.Layers.IsEmpty ? [whole] : fill.Layers;
        if (fill.Crown == Length.Zero)
        {
            return fill.Layers.IsEmpty ? [cushion] : [.. layers.Select(layer => Plain(cushion, layer))];
        }

        // The crown is of the foam below it, which carries.
        CushionSpecification crown = Plain(
            cushion with
            {
                Outline = CrownOutline(cushion)!,
            },
            layers[^1] with
            {
                Thickness = fill.Crown,
                Oversize = Length.Zero,
            }
        );
        CushionSpecification[] flat = [.. layers.Select(layer => fill.Layers.IsEmpty ? Flat(cushion) : Plain(cushion, layer))];
        return flat.Length == 1 ? [crown, flat[0]] : [flat[0], crown, .. flat[1..]];
    }

    /// <summary>The outline of a crown; null where the cushion is too small for one, or its outline takes none.</summary>
    /// <param name="cushion">The cushion; the inset on each side is the workroom's.</param>
    /// <returns>A rectangle or a circle, smaller by the inset all round.</returns>
    public static Outline? CrownOutline(CushionSpecification cushion)
    {
        Length inset = 2 * cushion.Practice.Fills.CrownInset;
        return Length.Min(cushion.Width, cushion.Depth) <= 2 * inset
            ? null
            : cushion.Outline switch
            {
                RectangleOutline => new RectangleOutline(cushion.Width - inset, cushion.Depth - inset),
                CircleOutline circle => new CircleOutline(circle.Diameter - inset),
                _ => null,
            };
    }

    /// <summary>How many joints are glued between the layers of one cushion, a crown's among them.</summary>
    /// <param name="cushion">A cushion that is filled with foam.</param>
    /// <returns>Joints of the build-up alone; those of a layer that is itself glued from thinner stock come on
    /// top.</returns>
    public static int Joints(CushionSpecification cushion) =>
        Math.Max(cushion.Fill!.Layers.Length - 1, 0) + (cushion.Fill.Crown > Length.Zero ? 1 : 0);

    // A layer is reckoned like a cushion of its own, so that sheets, adhesive and weight follow the same rules as for one
    // block.
    private static CushionSpecification Plain(CushionSpecification cushion, FoamLayerSpecification layer) =>
        cushion with
        {
            Construction = Construction.Boxed,
            Thickness = layer.Thickness,
            Fill = new FillSpecification(FillKind.Foam, layer.Item, layer.Density, layer.Oversize, cushion.Fill!.Plumpness),
        };

    private static CushionSpecification Flat(CushionSpecification cushion) =>
        cushion with
        {
            Fill = cushion.Fill! with { Crown = Length.Zero },
        };
}
