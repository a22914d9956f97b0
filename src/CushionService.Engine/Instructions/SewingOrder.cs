using System.Collections.Immutable;
using CushionService.Engine.Cutting;
using CushionService.Engine.Layouts;
using CushionService.Engine.Materials;
using CushionService.Engine.Patterns.Constructions;
using CushionService.Engine.Patterns.Panels;
using CushionService.Engine.Specifications;
using CushionService.Engine.Specifications.Fabrics;
using CushionService.Engine.Specifications.Trimmings;

namespace CushionService.Engine.Instructions;

/// <summary>The steps of making the covers of an order: each follows from the pattern, and comes once everything that it needs is
/// done.</summary>
/// <remarks>Common practice, no source: what is whole is edged, what is edged is sewn, and nothing is shut that a later step must reach
/// into.</remarks>
public static class SewingOrder
{
    /// <summary>The steps for an order.</summary>
    /// <param name="order">The order.</param>
    /// <param name="patterns">The pattern of each cushion, in the order's order.</param>
    /// <param name="pieces">What is cut.</param>
    public static ImmutableArray<Step> Of(OrderSpecification order, IReadOnlyList<Pattern> patterns, IReadOnlyList<CutPiece> pieces)
    {
        var steps = ImmutableArray.CreateBuilder<Step>();
        bool chain = ClosureNeeds.IsChain(new Shop(order));
        foreach (FabricSpecification fabric in order.Fabrics)
        {
            ImmutableArray<string> cut = [.. pieces.Where(piece => piece.Fabric == fabric.Id).Select(piece => piece.Id)];
            int count = pieces.Where(piece => piece.Fabric == fabric.Id).Sum(piece => piece.Quantity);
            if (count > 0)
            {
                // A sample is washed and measured first: whoever cuts before cannot allow for the shrinkage any more.
                if (IsUnknown(order, fabric))
                {
                    steps.Add(new Step(StepTexts.WashSample(fabric.Name), []));
                }

                steps.Add(new Step(StepTexts.CutFabric(CareOf(fabric), fabric.Name, count), cut));
            }
        }

        for (var i = 0; i < patterns.Count; i++)
        {
            CushionSpecification cushion = order.Cushions[i];
            ImmutableArray<CutPiece> cut = [.. pieces.Where(piece => piece.IsFor(cushion.Id))];
            (Pattern cover, Pattern? inner) = InnerCover.Apart(patterns[i]);
            if (inner is not null)
            {
                // The inner cover is as plain as can be: no flange, no finished raw edges, and no inner cover of its own.
                CushionSpecification plain = InnerCover.Plain(cushion, ConstructionRegistry.Of(cushion.Construction)) with
                {
                    Flange = null,
                    EdgeFinish = RawEdgeFinish.None,
                    Fabrics = cushion.Fabrics with { InnerCover = null },
                };
                steps.AddRange(CoverSteps.Of(new CoverPlan(plain, inner, cut, order.Workroom, FabricCare.Press) { Stocks = order.Stocks }));
            }

            steps.AddRange(
                CoverSteps.Of(
                    new CoverPlan(cushion, cover, cut, order.Workroom, CareOf(order, cushion.Fabrics.Top))
                    {
                        Stocks = order.Stocks,
                        BuysChain = chain,
                        Printed = [.. cut.Where(piece => IsPrinted(order, piece)).Select(piece => piece.Part)],
                        EdgingCare = CareOf(
                            order,
                            cut.FirstOrDefault(piece => piece.Part.Kind is PartKind.Welt or PartKind.FlatPiping)?.Fabric
                        ),
                    }
                )
            );
        }

        return steps.ToImmutable();
    }

    /// <summary>Whether a cover that will be washed is made of a fabric whose shrinkage nobody has stated.</summary>
    /// <param name="order">The order.</param>
    /// <param name="fabric">A fabric of it.</param>
    /// <returns>False for a coated fabric, which is wiped, and for one that only covers use that cannot be washed.</returns>
    public static bool IsUnknown(OrderSpecification order, FabricSpecification fabric) =>
        !fabric.IsShrinkageKnown
        && !fabric.Coated
        && order.Cushions.Any(cushion => cushion.IsWashable && cushion.Fabrics.Shell.Contains(fabric.Id));

    private static bool IsPrinted(OrderSpecification order, CutPiece piece) =>
        order.Fabrics.FirstOrDefault(fabric => fabric.Id == piece.Fabric) is { Repeat: not null } fabric
        && MatchedAt.Of(fabric, piece) is { IsEverywhere: true };

    // A fabric that is not among those of the order is pressed, the care that most fabrics take.
    private static FabricCare CareOf(OrderSpecification order, string? id) =>
        order.Fabrics.FirstOrDefault(fabric => fabric.Id == id) is { } known ? CareOf(known) : FabricCare.Press;

    // A coating decides first, for it takes neither iron nor wash; a pile is never pressed flat from above (common practice, no source).
    private static FabricCare CareOf(FabricSpecification fabric) =>
        (fabric.Coated, fabric.Pile, fabric.LengthShrinkage.Numerator > 0 || fabric.WidthShrinkage.Numerator > 0) switch
        {
            (true, _, _) => FabricCare.Roll,
            (_, true, true) => FabricCare.WashPile,
            (_, true, _) => FabricCare.Steam,
            (_, _, true) => FabricCare.Wash,
            _ => FabricCare.Press,
        };
}
