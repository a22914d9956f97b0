using CushionService.Engine.Measures;
using CushionService.Engine.Patterns.Panels;
using CushionService.Engine.Specifications;
using CushionService.Engine.Specifications.Practices;
using CushionService.Engine.Specifications.Stocks;

namespace CushionService.Engine.Materials;

/// <summary>The thread that an order's stitching takes.</summary>
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
                    $"{LengthText.Format(one.Sewn, order.Unit)} of stitching"
                        + (
                            one.Raw > Length.Zero
                                ? $" and {LengthText.Format(one.Raw, order.Unit)} of raw edge at × {AmountText.Number(one.EdgeRatio)}"
                                : ""
                        )
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
                $"× {AmountText.Number(ratio)} thread to a length of {StitchText(workroom)} × {AmountText.Number(1 + workroom.ThreadWaste)} for waste = {AmountText.Number(decimal.Round(Length.FromNanometres((long)all).In(spoken), 2))} {LengthText.Symbol(spoken)}"
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
            ratio > 0 ? (cushion.Quantity * Threading.RawEdges(pattern)).RoundUpTo(step) : Length.Zero,
            ratio
        );
    }

    // What the ratio was reckoned from: the stitch, unless the workroom gave a ratio of its own.
    private string StitchText(WorkroomPractice workroom)
    {
        if (workroom is { ThreadRatio: not null, Stitch: null })
        {
            return "seam";
        }

        StitchType type = workroom.Stitch?.Type ?? StitchType.Lockstitch;
        string name = $"{Name(type)} (ISO 4915 type {(int)type})";
        return workroom is { ThreadRatio: null, Stitch: { } stitch }
            ? $"{name}, {LengthText.Format(stitch.StitchLength, order.Unit)} a stitch through {LengthText.Format(stitch.Thickness, order.Unit)}"
            : name;
    }

    private static string Name(StitchType type) =>
        type switch
        {
            StitchType.Chainstitch => "chainstitch",
            StitchType.Lockstitch => "lockstitch",
            StitchType.DoubleChainstitch => "double chainstitch",
            StitchType.Overedge => "overedge",
            _ => "safety stitch",
        };
}
