using CushionService.Nesting.Outlines.Placing;
using CushionService.Nesting.Search;

namespace CushionService.Nesting.Outlines.Searching;

/// <summary>Moves that make overlaps on purpose: pressing an arrangement into less length, and exchanging two copies.</summary>
internal sealed class Squeeze(Copies copies, Arrangement arrangement)
{
    /// <summary>Scales every copy's place along the strip so that all end by the target; false when a copy cannot.</summary>
    public bool Into(double target, ref Xorshift random)
    {
        var length = arrangement.Length;
        if (length <= target)
        {
            return true;
        }

        for (var copy = 0; copy < copies.Count; copy++)
        {
            if (copies.Aligned[copy] is { } phase)
            {
                if (!OntoLattice(copy, phase, target, ref random))
                {
                    return false;
                }

                continue;
            }

            for (var turn = 0; arrangement.Along[copy] > target; turn++)
            {
                if (turn == copies.TurnsOf(copy).Length)
                {
                    return false;
                }

                PutWithin(copy, turn, arrangement.X[copy], arrangement.Y[copy], target);
            }

            var (before, after) = (length - arrangement.Along[copy], target - arrangement.Along[copy]);
            var lowered = Math.Floor(arrangement.Y[copy] * (after / Math.Max(1, before)) / copies.DrawnOn) * copies.DrawnOn;
            PutWithin(copy, arrangement.Turn[copy], arrangement.X[copy], lowered, target);
        }

        return true;
    }

    /// <summary>Exchanges two copies that may lie anywhere.</summary>
    public void Swap(double target, ref Xorshift random)
    {
        var (one, other) = (random.Next(copies.Count), random.Next(copies.Count));
        if (copies.Aligned[one] is null && copies.Aligned[other] is null)
        {
            var (x, y) = (arrangement.X[one], arrangement.Y[one]);
            PutWithin(one, arrangement.Turn[one], arrangement.X[other], arrangement.Y[other], target);
            PutWithin(other, arrangement.Turn[other], x, y, target);
        }
    }

    private void PutWithin(int copy, int turn, double x, double y, double target)
    {
        var shape = copies.TurnsOf(copy)[turn].Shape;
        var (roomX, roomY) = (copies.Width - copies.Across[shape], Math.Max(0, target - copies.Along[shape]));
        arrangement.Put(copy, turn, Math.Clamp(x, 0, roomX), Math.Clamp(y, 0, roomY));
    }

    /// <summary>Lowers a copy that sticks out to a point of its lattice, of another column if need be.</summary>
    private bool OntoLattice(int copy, Alignment phase, double target, ref Xorshift random)
    {
        var roomY = target - arrangement.Along[copy];
        if (arrangement.Y[copy] <= roomY)
        {
            return true;
        }

        var points = new LatticePoints(copies.Lattice!, phase, copies.Width - (long)arrangement.Across[copy]);
        var lowered = arrangement.Y[copy] - Math.Ceiling((arrangement.Y[copy] - roomY) / points.Step) * points.Step;
        if (lowered >= 0)
        {
            arrangement.Put(copy, 0, arrangement.X[copy], lowered);
            return true;
        }

        var first = random.Next(Math.Max(1, points.Columns));
        for (var shift = 0; shift < points.Columns; shift++)
        {
            var column = (first + shift) % points.Columns;
            if (points.RiseTo(column, 0) <= roomY)
            {
                arrangement.Put(copy, 0, points.X(column), points.RiseTo(column, 0));
                return true;
            }
        }

        return false;
    }
}
