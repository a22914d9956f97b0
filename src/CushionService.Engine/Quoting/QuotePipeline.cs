using System.Collections.Immutable;
using CushionService.Engine.Costing;
using CushionService.Engine.Cutting;
using CushionService.Engine.Instructions;
using CushionService.Engine.Layouts;
using CushionService.Engine.Materials;
using CushionService.Engine.Specifications;
using CushionService.Engine.Specifications.Fabrics;

namespace CushionService.Engine.Quoting;

/// <summary>The one pipeline from a drafting to a quote.</summary>
public static class QuotePipeline
{
    /// <summary>Lays the pieces of every fabric that is used, in the order's order of fabrics.</summary>
    /// <param name="drafting">A drafting without violations.</param>
    /// <param name="cancellation">Gives up the search.</param>
    /// <exception cref="OperationCanceledException">The caller cancelled.</exception>
    public static ImmutableArray<Yardage> LayOut(Drafting drafting, CancellationToken cancellation) =>
        LayOut(drafting, new AnswerSteps(drafting), cancellation);

    private static ImmutableArray<Yardage> LayOut(Drafting drafting, AnswerSteps steps, CancellationToken cancellation)
    {
        var yardages = ImmutableArray.CreateBuilder<Yardage>();
        foreach (FabricSpecification fabric in drafting.Order.Fabrics)
        {
            ImmutableArray<CutPiece> pieces = [.. drafting.Pieces.Where(piece => piece.Fabric == fabric.Id)];
            if (pieces.Length > 0)
            {
                var yardage = new Yardage(FabricNesting.LayOut(fabric, pieces, drafting.Order.Effort, steps.Fabric, cancellation));
                yardages.Add(yardage with { StraightWelt = StraightWelt.Of(drafting, fabric, steps.Beside(cancellation)) });
            }
        }

        return yardages.ToImmutable();
    }

    /// <summary>Quotes an order.</summary>
    /// <param name="drafting">A drafting without violations.</param>
    /// <param name="cancellation">Gives up the search.</param>
    /// <param name="sharedBy">How many quotes share the effort's steps, at least 1: those of cushions that are cut apart.</param>
    /// <exception cref="OperationCanceledException">The caller cancelled.</exception>
    public static Quote Of(Drafting drafting, CancellationToken cancellation, int sharedBy = 1)
    {
        OrderSpecification order = drafting.Order;
        var steps = new AnswerSteps(drafting, sharedBy);
        ImmutableArray<Yardage> yardages = LayOut(drafting, steps, cancellation);
        ImmutableArray<Material> materials = BillOfMaterials.Of(order, drafting.Patterns, yardages, steps.Beside(cancellation));
        return new Quote(
            drafting,
            yardages,
            materials,
            order.Currency is { } currency ? Cost.Of(order, yardages, materials, currency) : null,
            SewingOrder.Of(order, drafting.Patterns, drafting.Pieces),
            Cautions.For(order)
        )
        {
            Care = Care.For(order),
        };
    }
}
