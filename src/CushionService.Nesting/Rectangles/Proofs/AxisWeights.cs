using CushionService.Nesting.Search;

namespace CushionService.Nesting.Rectangles.Proofs;

/// <summary>A weight for every extent along one axis such that no row of the box holds more than <see cref="Best"/> of its length: the
/// discrete form of a dual feasible function (Fekete and Schepers 2001), found as the dual of the bar relaxation (Scheithauer
/// 1999).</summary>
/// <remarks>All in whole numbers, so that the bound is exact whatever the linear program did: it only proposes weights, and
/// <see cref="Best"/> is counted afterwards for the weights as they were rounded.</remarks>
internal sealed class AxisWeights
{
    /// <summary>Weights that were chosen for a box, with what they prove.</summary>
    /// <param name="box">The rectangles and the box; the weights are for its width.</param>
    /// <param name="upright">Weight of each kind's extent across the box, at least 0.</param>
    /// <param name="turned">Weight of each kind's extent along the box, for a kind that may turn; else 0.</param>
    /// <param name="best">The most weight that a row of each length can hold, from length 0 to the box's width.</param>
    /// <param name="work">What they cost to find, in operations.</param>
    public AxisWeights(BoxContents box, int[] upright, int[] turned, long[] best, long work)
    {
        (Upright, Turned, Best, Work) = (upright, turned, best, work);
        for (var kind = 0; kind < box.Count.Length; kind++)
        {
            Need += box.Count[kind] * Share(kind, box);
        }
    }

    /// <summary>Weight of each kind's extent along the axis, unturned.</summary>
    public int[] Upright { get; }

    /// <summary>Weight of each kind's extent along the axis when turned; 0 when it may not turn.</summary>
    public int[] Turned { get; }

    /// <summary>The most weight that a free stretch of each length can hold.</summary>
    public long[] Best { get; }

    /// <summary>The weight times the extent along the other axis of all copies, in the turn where that is least. A box whose height times
    /// <see cref="Best"/> of its width is less cannot hold them.</summary>
    public long Need { get; }

    /// <summary>What the weights cost to find, in operations.</summary>
    public long Work { get; }

    /// <summary>The weights of the bar relaxation along the width, or the extents themselves.</summary>
    /// <param name="box">The rectangles and the box.</param>
    /// <param name="solve">Whether the relaxation is solved, which takes a linear program of as many variables as there are
    /// extents.</param>
    /// <param name="most">Operations that the program may take, about.</param>
    /// <param name="budget">Looks for the caller's cancellation; null for none.</param>
    public static AxisWeights Of(BoxContents box, bool solve, long most = long.MaxValue, StepBudget? budget = null) =>
        solve ? new WeightProgram(box, null).Solve(most, budget) : Extents(box);

    /// <summary>The weights that go best with those of the other axis: of the two together, no box holds more than the product
    /// (the conservative scales of Fekete and Schepers 2004).</summary>
    /// <param name="across">The weights of the other axis.</param>
    /// <param name="box">The rectangles and the box, its width along the axis wanted.</param>
    /// <param name="most">Operations that the program may take, about.</param>
    /// <param name="budget">Looks for the caller's cancellation.</param>
    public static AxisWeights Against(AxisWeights across, BoxContents box, long most, StepBudget budget) =>
        new WeightProgram(box, across).Solve(most, budget);

    /// <summary>The figures with which these weights and those of the other axis rule the box out together; null when they do
    /// not.</summary>
    /// <param name="across">The weights of the other axis.</param>
    /// <param name="box">The rectangles and the box, its width along this axis.</param>
    public string? RuleOutWith(AxisWeights across, BoxContents box)
    {
        Int128 need = 0;
        for (var kind = 0; kind < box.Count.Length; kind++)
        {
            var (extent, other, least) = (box.Across[kind], box.Along[kind], Int128.MaxValue);
            if (extent < Best.Length && other < across.Best.Length)
            {
                least = (Int128)Upright[kind] * across.Upright[kind];
            }

            if (box.Turns[kind] && other < Best.Length && extent < across.Best.Length)
            {
                least = Int128.Min(least, (Int128)Turned[kind] * across.Turned[kind]);
            }

            need += least == Int128.MaxValue ? 0 : least * box.Count[kind];
        }

        Int128 room = (Int128)Best[^1] * across.Best[^1];
        return need > room ? $"the weights of both axes need {need} of {room}" : null;
    }

    /// <summary>What one copy adds to <see cref="Need"/>.</summary>
    public long Share(int kind, BoxContents box)
    {
        var (upright, turned) = Shares(kind, box);
        return Math.Min(upright, turned);
    }

    /// <summary>What one copy adds in each turn; <see cref="long.MaxValue"/> for a turn that it cannot take.</summary>
    public (long Upright, long Turned) Shares(int kind, BoxContents box) =>
        (
            box.Across[kind] < Best.Length ? (long)Upright[kind] * box.Along[kind] : long.MaxValue,
            box.Turns[kind] && box.Along[kind] < Best.Length ? (long)Turned[kind] * box.Across[kind] : long.MaxValue
        );

    /// <summary>The extents as their own weights: a row of a length holds no more than that length.</summary>
    private static AxisWeights Extents(BoxContents box)
    {
        var best = new long[box.Width + 1];
        for (var length = 0; length <= box.Width; length++)
        {
            best[length] = length;
        }

        return new AxisWeights(box, box.Across, [.. box.Along.Select((e, kind) => box.Turns[kind] ? e : 0)], best, 0);
    }
}
