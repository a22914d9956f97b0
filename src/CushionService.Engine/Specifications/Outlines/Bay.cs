using System.Collections.Immutable;
using CushionService.Engine.Measures;

namespace CushionService.Engine.Specifications.Outlines;

/// <summary>Seats along walls that meet at angles, as in a bay window or round a corner. Each end that meets another is cut along the
/// line that halves the angle.</summary>
/// <remarks>Seen from the room, walls run from left to right. Both ends at a corner are set back by the same length, so their mitres are
/// of one length and meet all along it.</remarks>
/// <param name="Walls">Lengths of the walls from left to right, each above zero.</param>
/// <param name="Angles">Angles in the room between each wall and the next, in degrees, above 0 and below 180; one fewer than the
/// walls.</param>
/// <param name="Depth">From the front to the wall, above zero.</param>
/// <param name="Bulk">What each end that meets another is shorter by, along the wall; at least zero.</param>
public sealed record Bay(ImmutableArray<Length> Walls, ImmutableArray<double> Angles, Length Depth, Length Bulk)
{
    /// <summary>The shortest front of a seat: 1 in (a limit of ours; a trapezoid has the same).</summary>
    public static Length ShortestFront { get; } = Length.FromInches(1);

    /// <summary>The outline of a seat: as long as its wall at the back, and at the front shorter by depth × cot(angle / 2) at each corner,
    /// both less the bulk (general geometry).</summary>
    /// <param name="wall">The index of its wall.</param>
    public TrapezoidOutline Seat(int wall)
    {
        Length back = Walls[wall] - (Corners(wall) * Bulk);
        return new TrapezoidOutline(back - SetBack(wall - 1) - SetBack(wall), back, Depth, -SetBack(wall - 1));
    }

    /// <summary>The shortest that a wall may be: its seat still has a front.</summary>
    /// <param name="wall">The index of the wall.</param>
    public Length ShortestWall(int wall) => ShortestFront + SetBack(wall - 1) + SetBack(wall) + (Corners(wall) * Bulk);

    /// <summary>How far the front's end lies from the back's, along the wall, at the corner after a wall; zero at the ends of the
    /// bay.</summary>
    /// <param name="corner">The index of the corner, which is that of the wall before it.</param>
    public Length SetBack(int corner) =>
        corner < 0 || corner >= Angles.Length
            ? Length.Zero
            : Length.FromNanometres((long)Math.Round(Depth.Nanometres / Math.Tan(Angles[corner] * Math.PI / 360)));

    private int Corners(int wall) => (wall > 0 ? 1 : 0) + (wall < Walls.Length - 1 ? 1 : 0);
}
