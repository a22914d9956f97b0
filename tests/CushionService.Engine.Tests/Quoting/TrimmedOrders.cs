using System.Collections.Immutable;
using CushionService.Engine.Measures;
using CushionService.Engine.Specifications;
using CushionService.Engine.Specifications.Fabrics;
using CushionService.Engine.Specifications.Outlines;
using CushionService.Engine.Specifications.Shapes;
using CushionService.Engine.Specifications.Trimmings;

namespace CushionService.Engine.Tests.Quoting;

/// <summary>Generated orders whose cushions bear every addition that goes with them; the same number always makes the same order.</summary>
internal static class TrimmedOrders
{
    public static OrderSpecification Order(int number)
    {
        OrderSpecification order = GeneratedOrders.Order(number);
        var random = new Random(number);
        return order with { Cushions = [.. order.Cushions.Select(cushion => Trimmed(cushion, random))] };
    }

    private static CushionSpecification Trimmed(CushionSpecification cushion, Random random)
    {
        bool boxed = cushion.Construction == Construction.Boxed,
            flaps = cushion.Closure.Side == Side.Bottom;
        var button = In(random.Next(2, 8) / 8m);
        Length shorter = Length.Min(cushion.Width, cushion.Depth);
        int most = (int)Math.Max(1, shorter.Nanometres / (2 * button.Nanometres));
        bool deep = boxed && random.Next(2) == 0;
        bool tufted = !flaps && most > 1 && random.Next(4) == 0;
        return cushion with
        {
            Trim = new TrimSpecification
            {
                Edging = Edging(boxed, random),
                Ties =
                    random.Next(3) == 0
                        ? new TieSpecification(random.Next(1, 4), Any(random), In(random.Next(16, 28) / 2m), In(0.5m), Make(random))
                        : null,
                Straps =
                    !flaps && random.Next(4) == 0 ? new StrapSpecification(random.Next(1, 4), In(1), cushion.Width, Make(random)) : null,
                Tufts = tufted
                    ? new TuftSpecification(
                        random.Next(1, Math.Min(most, 4)),
                        random.Next(1, Math.Min(most, 5)),
                        (TuftGrid)random.Next(2),
                        button,
                        random.Next(3) == 0,
                        deep ? Length.FromNanometres(cushion.Thickness.Nanometres / 3) : Length.Zero
                    )
                    : null,
                Base = !flaps && random.Next(5) == 0 ? BaseKind.AntiSlip : BaseKind.Plain,
                FaceJoins = (FaceJoins)random.Next(2),
            },
        };
    }

    private static EdgingSpecification? Edging(bool boxed, Random random)
    {
        ImmutableArray<EdgingPlace> places = boxed
            ? random.Next(3) switch
            {
                0 => [EdgingPlace.Top],
                1 => [EdgingPlace.Bottom],
                _ => [EdgingPlace.Top, EdgingPlace.Bottom],
            }
            : [EdgingPlace.Top];
        return random.Next(5) switch
        {
            0 => null,
            1 => new RuffleSpecification(
                places,
                Fraction.Of(random.Next(11, 40), 10),
                In(random.Next(4, 32) / 8m),
                (RuffleLining)random.Next(2)
            ),
            _ => new WeltSpecification(places, In(random.Next(2, 17) / 32m), (WeltCut)random.Next(3)),
        };
    }

    private static Side Any(Random random) => (Side)random.Next(4);

    private static StrapMake Make(Random random) => (StrapMake)random.Next(2);
}
