using System.Runtime.InteropServices;
using System.Runtime.Intrinsics;
using CushionService.Nesting.Rectangles;

namespace CushionService.Nesting.Outlines;

/// <summary>Finds, for one copy that may slide along one line, the place where it overlaps least: the sum over all
/// others of weight × depth is a sum of tents, so the least is at the end of some forbidden interval
/// (Egeblad, Nielsen and Odgaard 2007; Umetani et al. 2009).</summary>
internal sealed class LineSearch(Copies copies, Arrangement arrangement, double[] weights, StepBudget budget)
{
    private double[] _low = new double[64];
    private double[] _high = new double[64];
    private double[] _weight = new double[64];
    private double[] _cap = new double[64];
    private int _count;

    /// <summary>The best place on a line.</summary>
    /// <param name="copy">The copy that slides.</param>
    /// <param name="shape">The shape it lies in.</param>
    /// <param name="column">Whether it slides along the strip, at a fixed x; otherwise across, at a fixed y.</param>
    /// <param name="t">The fixed coordinate.</param>
    /// <param name="room">The largest coordinate it may slide to; the least is 0.</param>
    /// <param name="here">Where it starts; kept unless another place is better.</param>
    /// <param name="from">The interval to begin with, so that ties are broken by chance.</param>
    public double Best(int copy, int shape, bool column, double t, double room, double here, int from)
    {
        Gather(copy, shape, column, t, room);
        var best = here;
        var least = CostAt(here, double.MaxValue);
        if (_count == 0 || least == 0)
        {
            return best;
        }

        Try(0, ref best, ref least);
        Try(room, ref best, ref least);
        var start = from % _count;
        for (var step = 0; step < _count && least > 0; step++)
        {
            var index = start + step < _count ? start + step : start + step - _count;
            Try(Math.Floor(_low[index]), ref best, ref least);
            Try(Math.Ceiling(_high[index]), ref best, ref least);
        }

        return best;

        void Try(double place, ref double best, ref double least)
        {
            if (place < 0 || place > room)
            {
                return;
            }

            var cost = CostAt(place, least);
            if (cost < least)
            {
                (best, least) = (place, cost);
            }
        }
    }

    /// <summary>The lowest free place on a line at or above <paramref name="floor"/>; NaN when there is none up to <paramref name="room"/>.</summary>
    public double LowestFree(int copy, int shape, bool column, double t, double floor, double room)
    {
        Gather(copy, shape, column, t, room);
        var place = floor;
        for (var moved = true; moved;)
        {
            moved = false;
            for (var index = 0; index < _count; index++)
            {
                if (place > _low[index] && place < _high[index])
                {
                    place = Math.Ceiling(_high[index]);
                    moved = true;
                }
            }
        }

        return place <= room ? place : double.NaN;
    }

    private void Gather(int copy, int shape, bool column, double t, double room)
    {
        budget.Spend(arrangement.All);
        _count = 0;
        var around = copies.Book.Around(shape);
        ReadOnlySpan<double> across = column ? arrangement.X : arrangement.Y;
        ReadOnlySpan<double> along = column ? arrangement.Y : arrangement.X;
        ReadOnlySpan<double> extents = column ? arrangement.Across : arrangement.Along;
        var extent = column ? copies.Across[shape] : copies.Along[shape];
        var row = copy * arrangement.All;
        for (var other = 0; other < across.Length; other++)
        {
            var offset = t - across[other];
            if (offset <= -extent || offset >= extents[other] || other == copy)
            {
                continue;
            }

            var pair = around[arrangement.Shape[other]] ?? copies.Book.Pair(arrangement.Shape[other], shape);
            var slices = column ? pair.Columns : pair.Rows;
            foreach (ref readonly var band in slices.At(offset, out var distance))
            {
                var low = along[other] + band.LowAt(distance) + SliceIndex.Tolerance;
                var high = along[other] + band.HighAt(distance) - SliceIndex.Tolerance;
                if (high <= 0 || low >= room)
                {
                    continue;
                }

                if (_count + 4 > _low.Length)
                {
                    Grow();
                }

                (_low[_count], _high[_count], _weight[_count]) = (low, high, weights[row + other]);
                _cap[_count++] = Math.Min(offset + extent, extents[other] - offset);
            }
        }

        for (var pad = _count; (pad & 3) != 0; pad++)
        {
            (_low[pad], _high[pad], _weight[pad], _cap[pad]) = (0, 0, 0, 1);
        }
    }

    /// <summary>Four tents at a time; the lanes are added in a fixed order, so every machine gets the same sum.</summary>
    private double CostAt(double place, double limit)
    {
        var here = Vector256.Create(place);
        var sum = Vector256<double>.Zero;
        ref var low = ref MemoryMarshal.GetArrayDataReference(_low);
        ref var high = ref MemoryMarshal.GetArrayDataReference(_high);
        ref var cap = ref MemoryMarshal.GetArrayDataReference(_cap);
        ref var weight = ref MemoryMarshal.GetArrayDataReference(_weight);
        var cost = 0.0;
        for (nuint index = 0; index < (nuint)_count; index += 4)
        {
            var depth = Vector256.Min(here - Vector256.LoadUnsafe(ref low, index), Vector256.LoadUnsafe(ref high, index) - here);
            var c = Vector256.LoadUnsafe(ref cap, index);
            depth = Vector256.Max(depth, Vector256<double>.Zero);
            sum += Vector256.LoadUnsafe(ref weight, index) * depth * c / (depth + c);
            if ((index & 12) == 12)
            {
                cost = sum.GetElement(0) + sum.GetElement(1) + (sum.GetElement(2) + sum.GetElement(3));
                if (cost >= limit)
                {
                    return cost;
                }
            }
        }

        cost = sum.GetElement(0) + sum.GetElement(1) + (sum.GetElement(2) + sum.GetElement(3));
        return cost;
    }

    private void Grow()
    {
        Array.Resize(ref _low, 2 * _low.Length);
        Array.Resize(ref _high, _low.Length);
        Array.Resize(ref _weight, _low.Length);
        Array.Resize(ref _cap, _low.Length);
    }
}
