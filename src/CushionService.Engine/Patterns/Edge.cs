using System.Collections.Immutable;
using CushionService.Engine.Geometry;
using CushionService.Engine.Measures;

namespace CushionService.Engine.Patterns;

/// <summary>One edge of a panel's finished outline, from one corner or notch to the next, counter-clockwise.</summary>
/// <param name="Name">Distinct within the panel.</param>
/// <param name="Path">Its lines and arcs, each starting where the one before ends; at least one.</param>
/// <param name="Finish">What happens there.</param>
public sealed record Edge(string Name, ImmutableArray<Segment> Path, EdgeFinish Finish)
{
    /// <summary>A straight edge.</summary>
    public Edge(string name, Point from, Point to, EdgeFinish finish)
        : this(name, [new Segment(from, to)], finish)
    {
    }

    /// <summary>Where it starts.</summary>
    public Point From => Path[0].From;

    /// <summary>Where it ends.</summary>
    public Point To => Path[^1].To;

    /// <summary>Finished length: the sum of its lines and arcs, each to the nearest nanometre.</summary>
    public Length Length
    {
        get
        {
            var sum = Length.Zero;
            foreach (Segment segment in Path)
            {
                sum += segment.Length;
            }

            return sum;
        }
    }

    /// <summary>The way its outside faces; <see cref="EdgeFacing.Aslant"/> unless it is one level or plumb line.</summary>
    public EdgeFacing Facing => (Path.Length > 1 || !Path[0].IsStraight, To.X.CompareTo(From.X), To.Y.CompareTo(From.Y)) switch
    {
        (false, > 0, 0) => EdgeFacing.Down,
        (false, 0, > 0) => EdgeFacing.Right,
        (false, < 0, 0) => EdgeFacing.Up,
        (false, 0, < 0) => EdgeFacing.Left,
        _ => EdgeFacing.Aslant,
    };

    /// <summary>The edge moved.</summary>
    public Edge Moved(Length right, Length up) => this with
    {
        Path = [.. Path.Select(segment => segment with { From = segment.From.Moved(right, up), To = segment.To.Moved(right, up) })],
    };

    /// <summary>The point half-way along the edge, to the nearest nanometre.</summary>
    public Point Middle => At(Length.FromNanometres(Length.Nanometres / 2)).Point;

    /// <summary>The point at a distance along the edge, and the direction of the edge there in radians from the x axis.</summary>
    /// <param name="distance">From zero up to the edge's length.</param>
    public (Point Point, double Direction) At(Length distance)
    {
        Length rest = distance;
        foreach (Segment segment in Path)
        {
            Length length = segment.Length;
            if (rest <= length)
            {
                double share = (double)rest.Nanometres / length.Nanometres;
                return (segment.At(share), segment.StartDirection + (segment.Sweep * share));
            }

            rest -= length;
        }

        return (To, Path[^1].EndDirection);
    }
}
