using System.Collections.Immutable;
using CushionService.Engine.Messages;
using CushionService.Engine.Specifications;
using CushionService.Engine.Specifications.Closures;
using CushionService.Engine.Specifications.Fabrics;

namespace CushionService.Engine.Instructions;

/// <summary>How covers are cleaned, by their closures and fabrics (common practice, no source).</summary>
public static class Care
{
    /// <summary>A sentence for each kind of cover in an order; none for an order without cushions.</summary>
    /// <param name="order">The order; covers that are cleaned the same way share a sentence.</param>
    public static ImmutableArray<Message> For(OrderSpecification order) =>
        [.. order.Cushions.Select(cushion => Of(order, cushion)).Distinct()];

    // A coating rules out washing whatever the closure is; then a cover must come off to be washed. What neither holds for is sponged.
    private static Message Of(OrderSpecification order, CushionSpecification cushion)
    {
        // An inner cover and ties are left out: what is outside decides how the cover is cleaned.
        FabricSpecification[] shell = [.. order.Fabrics.Where(fabric => cushion.Fabrics.Shell.Contains(fabric.Id))];
        return shell.Any(fabric => fabric.Coated) ? CareTexts.Wipe
            : cushion.Trim.Tufts is not null ? CareTexts.Tufted(cushion.Closure is HandSewnClosure)
            : cushion.IsWashable ? CareTexts.Wash(shell.Any(fabric => !fabric.IsShrinkageKnown))
            : CareTexts.Sponge;
    }
}
