using System.Runtime.InteropServices;
using System.Runtime.Intrinsics;
using CushionService.Nesting.Search;

namespace CushionService.Nesting.Outlines.Placing;

/// <summary>Finds, for one copy that may slide along one line, the place where it overlaps least: the sum over all
/// others of weight × depth is a sum of tents, so the least is at the end of some forbidden interval
/// (Egeblad, Nielsen and Odgaard 2007; Umetani et al. 2009).</summary>
/// <param name="copies">The copies and flaws.</param>
/// <param name="arrangement">Where they lie.</param>
/// <param name="weights">What overlaps weigh, by copy and other.</param>
/// <param name="budget">Pays for intervals and for tents.</param>
internal sealed class LineSearch(Copies copies, Arrangement arrangement, double[] weights, StepBudget budget)
{
    private readonly LineIntervals _intervals = new(copies, arrangement, weights);

    // Blocks of four tents added up since the last count.
    private long _spent;

    /// <summary>The best place on a line.</summary>
    /// <param name="copy">The copy that slides.</param>
    /// <param name="shape">The shape it lies in.</param>
    /// <param name="column">Whether it slides along the strip, at a fixed x; otherwise across, at a fixed y.</param>
    /// <param name="t">The fixed coordinate.</param>
    /// <param name="room">The largest coordinate it may slide to; the least is 0.</param>
    /// <param name="here">Where it starts; kept unless another place is better.</param>
    /// <param name="from">The interval to begin with, so that ties are broken by chance.</param>
    /// <returns>A place from 0 to the room; where the copy was, when nothing is better.</returns>
    public double Best(int copy, int shape, bool column, double t, double room, double here, int from)
    {
        _intervals.Gather(copy, shape, column, t, room);
        budget.Spend(arrangement.All / 4 + 4 * _intervals.Count);
        _spent = 0;
        var best = here;
        var least = CostAt(here, double.MaxValue);
        if (_intervals.Count == 0 || least == 0)
        {
            return best;
        }

        Try(0, ref best, ref least);
        Try(room, ref best, ref least);
        var start = from % _intervals.Count;
        for (var step = 0; step < _intervals.Count && least > 0; step++)
        {
            var index = start + step < _intervals.Count ? start + step : start + step - _intervals.Count;
            Try(Math.Floor(_intervals.Low[index]), ref best, ref least);
            Try(Math.Ceiling(_intervals.High[index]), ref best, ref least);
        }

        budget.Spend(_spent);
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

    /// <summary>The lowest free place on a line at or above <paramref name="floor"/>; NaN when there is none up to
    /// <paramref name="room"/>.</summary>
    /// <param name="copy">The copy that slides.</param>
    /// <param name="shape">The shape it lies in.</param>
    /// <param name="column">Whether it slides along the strip.</param>
    /// <param name="t">The fixed coordinate.</param>
    /// <param name="floor">Where to begin, at least 0.</param>
    /// <param name="room">The largest coordinate.</param>
    public double LowestFree(int copy, int shape, bool column, double t, double floor, double room)
    {
        _intervals.Gather(copy, shape, column, t, room);
        budget.Spend(arrangement.All / 4 + 4 * _intervals.Count);
        var place = floor;
        // A place that one interval pushes up may lie in another one that was passed already.
        for (var moved = true; moved; )
        {
            moved = false;
            for (var index = 0; index < _intervals.Count; index++)
            {
                if (place > _intervals.Low[index] && place < _intervals.High[index])
                {
                    place = Math.Ceiling(_intervals.High[index]);
                    moved = true;
                }
            }
        }

        return place <= room ? place : double.NaN;
    }

    /// <summary>Four tents at a time; the lanes are added in a fixed order, so every machine gets the same sum. The native least and
    /// greatest differ between machines for what is no number alone, and there is none; they take a fourth of the time.</summary>
    /// <param name="place">Where the copy would lie.</param>
    /// <param name="limit">No more is added once the sum is known to reach this.</param>
    private double CostAt(double place, double limit)
    {
        var here = Vector256.Create(place);
        var sum = Vector256<double>.Zero;
        ref var low = ref MemoryMarshal.GetArrayDataReference(_intervals.Low);
        ref var high = ref MemoryMarshal.GetArrayDataReference(_intervals.High);
        ref var cap = ref MemoryMarshal.GetArrayDataReference(_intervals.Cap);
        ref var weight = ref MemoryMarshal.GetArrayDataReference(_intervals.Weight);
        for (nuint index = 0; index < (nuint)_intervals.Count; index += 4)
        {
            var depth = Vector256.MinNative(here - Vector256.LoadUnsafe(ref low, index), Vector256.LoadUnsafe(ref high, index) - here);
            depth = Vector256.MaxNative(depth, Vector256<double>.Zero);
            var wayOut = Vector256.LoadUnsafe(ref cap, index);
            sum += Vector256.LoadUnsafe(ref weight, index) * depth * wayOut / (depth + wayOut);
            _spent++;
            if ((index & 12) == 12 && Total(sum) >= limit)
            {
                break;
            }
        }

        return Total(sum);
    }

    /// <summary>The four lanes added up in a fixed order.</summary>
    private static double Total(Vector256<double> sum) => sum.GetElement(0) + sum.GetElement(1) + (sum.GetElement(2) + sum.GetElement(3));
}
