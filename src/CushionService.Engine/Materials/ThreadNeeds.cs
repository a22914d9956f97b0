using CushionService.Engine.Measures;
using CushionService.Engine.Messages;
using CushionService.Engine.Patterns.Panels;
using CushionService.Engine.Specifications;
using CushionService.Engine.Specifications.Practices;
using CushionService.Engine.Specifications.Stocks;

namespace CushionService.Engine.Materials;

/// <summary>The thread that an order's stitching takes.</summary>
/// <param name="order">The order, for its stitch, ratio and waste.</param>
/// <param name="shop">How thread is sold.</param>
internal sealed class ThreadNeeds(OrderSpecification order, Shop shop)
{
    /// <summary>The item that thread is priced as where no stock is known.</summary>
    public const string Thread = "thread";

    /// <summary>Puts the thread of all cushions into the basket; by length it is sold in whole yards or metres.</summary>
    /// <param name="basket">Where the needs go, rounded up once for the whole order.</param>
    /// <param name="patterns">The pattern of each cushion, in the order's order.</param>
    public void AddTo(Basket basket, IReadOnlyList<Pattern> patterns)
    {
        WorkroomPractice workroom = order.Workroom;
        decimal ratio = Threading.Ratio(workroom);
        Goods goods = shop.ByLength(Thread, MaterialKind.Thread, shop.Stocked(MaterialKind.Thread), usualStep: 1);
        // What is sewn is said to the inch or to the centimetre; finer would pretend to know how a seam is started.
        Length step = order.Unit == LengthUnit.Inch ? Length.FromInches(1) : Length.FromMillimetres(10);
        Need[] needs =
        [
            .. order
                .Cushions.Zip(patterns, (cushion, pattern) => Sewn(cushion, pattern, step))
                .Where(one => one.Sewn > Length.Zero)
                .Select(one => new Need(
                    one.Cushion,
                    goods,
                    Threading.Thread(one.Sewn, ratio, workroom.ThreadWaste).Nanometres
                        + Threading.Thread(one.Raw, one.EdgeRatio, workroom.ThreadWaste).Nanometres,
                    MaterialTexts.Stitching(one.Sewn, one.Raw > Length.Zero ? one.Raw : null, one.EdgeRatio)
                )),
        ];
        if (needs.Length > 0)
        {
            basket.Add(needs);
            decimal all = needs.Sum(need => need.Amount);
            LengthUnit spoken = order.Unit == LengthUnit.Inch ? LengthUnit.Yard : LengthUnit.Metre;
            basket.Lay(
                goods,
                all,
                MaterialTexts.Thread(
                    decimal.Round(ratio, 3),
                    Stitch(workroom),
                    decimal.Round(1 + workroom.ThreadWaste, 3),
                    decimal.Round(Length.FromNanometres((long)all).In(spoken), 2),
                    spoken == LengthUnit.Yard
                )
            );
        }
    }

    private (CushionSpecification Cushion, Length Sewn, Length Raw, decimal EdgeRatio) Sewn(
        CushionSpecification cushion,
        Pattern pattern,
        Length step
    )
    {
        decimal ratio = decimal.Round(Threading.EdgeRatio(cushion.EdgeFinish, order.Workroom), 2);
        return (
            cushion,
            (cushion.Quantity * Threading.Stitching(cushion, pattern)).RoundUpTo(step),
            ratio > 0 ? (cushion.Quantity * Threading.RawEdges(cushion, pattern)).RoundUpTo(step) : Length.Zero,
            ratio
        );
    }

    // What the ratio was reckoned from: the stitch, unless the workroom gave a ratio of its own.
    private static Message Stitch(WorkroomPractice workroom)
    {
        if (workroom is { ThreadRatio: not null, Stitch: null })
        {
            return MaterialTexts.Seam;
        }

        StitchType type = workroom.Stitch?.Type ?? StitchType.Lockstitch;
        StitchSpecification? stitch = workroom.ThreadRatio is null ? workroom.Stitch : null;
        return MaterialTexts.Stitch(type, (int)type, stitch?.StitchLength, stitch?.Thickness ?? Length.Zero);
    }
}
