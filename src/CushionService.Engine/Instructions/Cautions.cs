using System.Collections.Immutable;
using CushionService.Engine.Specifications;
using CushionService.Engine.Specifications.Closures;
using CushionService.Engine.Specifications.Fillings;
using CushionService.Engine.Specifications.Shapes;

namespace CushionService.Engine.Instructions;

/// <summary>Every caution that the service gives, and when. General in kind: none of them states the law of a place.</summary>
public static class Cautions
{
    // In the order in which people read them: who is at risk, what burns, what comes loose, then the workroom and the law. The codes are
    // part of the contract; a new caution gets a code of its own.
    private static readonly ImmutableArray<(Func<OrderSpecification, bool> Applies, Caution Caution)> All =
    [
        (order => order.Cushions.Length > 0, new("infants", CautionTexts.Infants)),
        (order => order.Cushions.Any(cushion => cushion.Fill is not null), new("flammability", CautionTexts.Flammability)),
        (order => order.Cushions.Any(cushion => cushion.Fill?.Kind == FillKind.Foam), new("foam", CautionTexts.Foam)),
        (order => order.Cushions.Any(cushion => cushion.Closure.Kind == ClosureKind.Zipper), new("small-parts", CautionTexts.SmallParts)),
        (
            order => order.Cushions.Any(cushion => cushion.Trim.Tufts is not null || cushion.Closure is ButtonClosure),
            new("buttons", CautionTexts.Buttons)
        ),
        (
            order =>
                order.Cushions.Any(cushion =>
                    cushion.Trim.Ties is not null
                    || cushion.Trim.Straps is not null
                    || cushion.Closure is TieClosure
                    // A cord is wound round each end.
                    || cushion.Ends is { Kind: BolsterEndKind.Tied }
                ),
            new("ties-and-cords", CautionTexts.TiesAndCords)
        ),
        (order => order.Cushions.Any(cushion => cushion.Handle is not null), new("handle-load", CautionTexts.HandleLoad)),
        (_ => true, new("blades-and-irons", CautionTexts.BladesAndIrons)),
        (_ => true, new("local-codes", CautionTexts.LocalCodes)),
    ];

    /// <summary>The cautions that apply to an order.</summary>
    /// <param name="order">The order, whole.</param>
    /// <returns>Never empty: blades, irons and local codes concern every order.</returns>
    public static ImmutableArray<Caution> For(OrderSpecification order) =>
        [.. All.Where(entry => entry.Applies(order)).Select(entry => entry.Caution)];
}
