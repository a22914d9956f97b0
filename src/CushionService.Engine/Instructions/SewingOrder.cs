using System.Collections.Immutable;
using CushionService.Engine.Cutting;
using CushionService.Engine.Patterns.Constructions;
using CushionService.Engine.Patterns.Panels;
using CushionService.Engine.Specifications;
using CushionService.Engine.Specifications.Fabrics;

namespace CushionService.Engine.Instructions;

/// <summary>The steps of making the covers of an order. They follow from the edges and seams of each pattern, in the order in which the
/// pattern lists them (common practice, no source: wash, square, cut, mark, hem, close, join, sew, turn, fill, check).</summary>
public static class SewingOrder
{
    /// <summary>The steps for an order.</summary>
    /// <param name="order">The order.</param>
    /// <param name="patterns">The pattern of each cushion, in the order's order.</param>
    /// <param name="pieces">What is cut.</param>
    public static ImmutableArray<Step> Of(OrderSpecification order, IReadOnlyList<Pattern> patterns, IReadOnlyList<CutPiece> pieces)
    {
        var steps = ImmutableArray.CreateBuilder<Step>();
        foreach (FabricSpecification fabric in order.Fabrics)
        {
            ImmutableArray<CutPiece> cut = [.. pieces.Where(piece => piece.Fabric == fabric.Id)];
            if (cut.Length > 0)
            {
                string wash = fabric.LengthShrinkage.Numerator > 0 || fabric.WidthShrinkage.Numerator > 0 ? "Wash, dry and press" : "Press";
                steps.Add(
                    new Step(
                        $"{wash} the fabric {fabric.Id}, square its end, and cut its {cut.Sum(piece => piece.Quantity)} pieces as laid out; mark each piece.",
                        [.. cut.Select(piece => piece.Id)]
                    )
                );
            }
        }

        for (var i = 0; i < patterns.Count; i++)
        {
            CushionSpecification cushion = order.Cushions[i];
            ImmutableArray<CutPiece> cut = [.. pieces.Where(piece => piece.Cushion?.Id == cushion.Id)];
            (Pattern cover, Pattern? inner) = InnerCover.Apart(patterns[i]);
            if (inner is not null)
            {
                CushionSpecification plain = InnerCover.Plain(cushion, ConstructionRegistry.Of(cushion.Construction));
                new CoverSteps(
                    order.Unit,
                    plain with
                    {
                        Flange = null,
                        Fabrics = cushion.Fabrics with { InnerCover = null },
                    },
                    inner,
                    cut,
                    order.Workroom.EdgeDistance,
                    steps
                ).Add();
            }

            new CoverSteps(order.Unit, cushion, cover, cut, order.Workroom.EdgeDistance, steps).Add();
        }

        return steps.ToImmutable();
    }
}
