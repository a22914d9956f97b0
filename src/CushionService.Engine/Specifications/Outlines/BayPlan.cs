using System.Collections.Immutable;

namespace CushionService.Engine.Specifications.Outlines;

/// <summary>Where the seats of a bay lie in the room, seen from above. The first wall begins at (0, 0) and runs to the right; the room lies
/// below it.</summary>
/// <remarks>Coordinates are nanometres as doubles: nothing is cut by them.</remarks>
/// <param name="bay">The bay, each of whose seats has a front.</param>
public sealed class BayPlan(Bay bay)
{
    // Rounding to nanometres moves a corner by a few of them; seats that meet do not overlap by it.
    private const double Tolerance = 1000;

    /// <summary>The corners of each seat: front left, front right, back right, back left, as one sees them from the room.</summary>
    public ImmutableArray<ImmutableArray<(double X, double Y)>> Seats { get; } = Placed(bay);

    /// <summary>Two seats that overlap, by the indices of their walls; null when none do. Neighbours meet in their mitre and never
    /// overlap.</summary>
    public (int One, int Other)? Overlap()
    {
        for (var one = 0; one < Seats.Length; one++)
        {
            for (int other = one + 2; other < Seats.Length; other++)
            {
                if (IsApart(Seats[one], Seats[other]) || IsApart(Seats[other], Seats[one]))
                {
                    continue;
                }

                return (one, other);
            }
        }

        return null;
    }

    private static ImmutableArray<ImmutableArray<(double X, double Y)>> Placed(Bay bay)
    {
        var seats = ImmutableArray.CreateBuilder<ImmutableArray<(double X, double Y)>>(bay.Walls.Length);
        double x = 0,
            y = 0,
            direction = 0;
        for (var i = 0; i < bay.Walls.Length; i++)
        {
            TrapezoidOutline seat = bay.Seat(i);
            (double startX, double startY, double along, double into) = (x, y, direction, direction - (Math.PI / 2));
            double left = i == 0 ? 0 : bay.Bulk.Nanometres,
                front = left - seat.BackOffset.Nanometres;
            seats.Add([
                At(front, bay.Depth.Nanometres),
                At(front + seat.FrontWidth.Nanometres, bay.Depth.Nanometres),
                At(left + seat.BackWidth.Nanometres, 0),
                At(left, 0),
            ]);
            (x, y) = At(bay.Walls[i].Nanometres, 0);
            // The next wall turns towards the room by what the angle is short of a straight line.
            direction -= i < bay.Angles.Length ? (180 - bay.Angles[i]) * Math.PI / 180 : 0;

            (double X, double Y) At(double far, double deep) =>
                (startX + (far * Math.Cos(along)) + (deep * Math.Cos(into)), startY + (far * Math.Sin(along)) + (deep * Math.Sin(into)));
        }

        return seats.DrainToImmutable();
    }

    // Whether a side of the first has all of the second beyond it (separating axis theorem, general geometry): both are convex.
    private static bool IsApart(ImmutableArray<(double X, double Y)> one, ImmutableArray<(double X, double Y)> other)
    {
        for (var i = 0; i < one.Length; i++)
        {
            (double X, double Y) from = one[i],
                to = one[(i + 1) % one.Length];
            double length = Math.Sqrt(((to.X - from.X) * (to.X - from.X)) + ((to.Y - from.Y) * (to.Y - from.Y)));
            (double outX, double outY) = ((to.Y - from.Y) / length, (from.X - to.X) / length);
            if (other.All(corner => ((corner.X - from.X) * outX) + ((corner.Y - from.Y) * outY) > -Tolerance))
            {
                return true;
            }
        }

        return false;
    }
}
