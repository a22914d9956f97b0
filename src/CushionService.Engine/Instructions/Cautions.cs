using System.Collections.Immutable;
using CushionService.Engine.Specifications;
using CushionService.Engine.Specifications.Closures;
using CushionService.Engine.Specifications.Fillings;

namespace CushionService.Engine.Instructions;

/// <summary>Every caution that the service gives, and when. General in kind: none of them states the law of a place.</summary>
public static class Cautions
{
    private static readonly ImmutableArray<(Func<OrderSpecification, bool> Applies, Caution Caution)> All =
    [
        (
            order => order.Cushions.Length > 0,
            new("infants", "Soft cushions are not for an infant's sleep; keep them out of cots and cribs.")
        ),
        (
            order => order.Cushions.Any(cushion => cushion.Fill is not null),
            new(
                "flammability",
                "Fillings and covers can burn. Ask for materials that meet the flammability rules of the place where the cushion is sold or used, and label it as they require."
            )
        ),
        (
            order => order.Cushions.Any(cushion => cushion.Fill?.Kind == FillKind.Foam),
            new(
                "foam",
                "Keep foam away from heat and flame. Cut it with a guarded blade and a cut-resistant glove; if layers are glued, use a water-based adhesive in moving air."
            )
        ),
        (
            order => order.Cushions.Any(cushion => cushion.Closure.Kind == ClosureKind.Zipper),
            new("small-parts", "A zipper's slider and pull are small parts: do not use them on goods for children under three.")
        ),
        (
            order => order.Cushions.Any(cushion => cushion.Trim.Tufts is not null || cushion.Closure is ButtonClosure),
            new("buttons", "Buttons can come off and are small parts: do not use them on goods for infants or for children under three.")
        ),
        (
            order =>
                order.Cushions.Any(cushion =>
                    cushion.Trim.Ties is not null || cushion.Trim.Straps is not null || cushion.Closure is TieClosure
                ),
            new("ties-and-cords", "Ties, straps and cords can strangle: keep them short and away from infants and young children.")
        ),
        (
            order => order.Cushions.Any(cushion => cushion.Handle is not null),
            new("handle-load", "A handle is for carrying the cushion alone; it is not rated for a load.")
        ),
        (
            _ => true,
            new(
                "blades-and-irons",
                "Cut away from the body and close the blade's guard; test the iron on a scrap first, and keep it off foam, vinyl and pile."
            )
        ),
        (_ => true, new("local-codes", "These cautions are general. Local codes and licensed practice come first.")),
    ];

    /// <summary>The cautions that apply to an order.</summary>
    public static ImmutableArray<Caution> For(OrderSpecification order) =>
        [.. All.Where(entry => entry.Applies(order)).Select(entry => entry.Caution)];
}
