using System.Collections.Immutable;
using CushionService.Engine.Geometry;
using CushionService.Engine.Measures;

namespace CushionService.Engine.Specifications.Outlines;

/// <summary>A stretch of an outline, counter-clockwise as one looks down on it.</summary>
public sealed record OutlineSide
{
    /// <summary>A side of lines and arcs.</summary>
    public OutlineSide(EdgeName name, Side side, ImmutableArray<Segment> path) => (Name, Side, Path) = (name, side, path);

    /// <summary>A straight side.</summary>
    public OutlineSide(EdgeName name, Side side, Point from, Point to)
        : this(name, side, [new Segment(from, to)]) { }

    /// <summary>Names it, and the edges that are sewn to it; distinct within the outline.</summary>
    public EdgeName Name { get; init; }

    /// <summary>The side of the cushion that it belongs to.</summary>
    public Side Side { get; init; }

    /// <summary>Its lines and arcs, end to end; at least one.</summary>
    public ImmutableArray<Segment> Path
    {
        get;
        init
        {
            field = value;
            Length = Segment.LengthOf(value);
        }
    }

    /// <summary>Finished length.</summary>
    public Length Length { get; private init; }

    /// <summary>Whether it is one straight line.</summary>
    public bool IsStraight => Path is [{ IsStraight: true }];

    /// <summary>The two parts on either side of a distance along it.</summary>
    /// <param name="distance">Above zero and below the side's length.</param>
    public (ImmutableArray<Segment> Before, ImmutableArray<Segment> After) Split(Length distance)
    {
        Length rest = distance;
        for (var i = 0; i < Path.Length; i++)
        {
            Length length = Path[i].Length;
            if (rest < length)
            {
                if (rest == Length.Zero)
                {
                    return (Path[..i], Path[i..]);
                }

                (Segment before, Segment after) = Path[i].Split((double)rest.Nanometres / length.Nanometres);
                return ([.. Path[..i], before], [after, .. Path[(i + 1)..]]);
            }

            rest -= length;
        }

        throw new ArgumentOutOfRangeException(nameof(distance));
    }

    /// <summary>The side as the mirror in a plumb line sees it.</summary>
    /// <param name="width">Twice the distance of that line from x = 0.</param>
    public OutlineSide Mirrored(Length width) => this with { Path = [.. Path.Reverse().Select(segment => segment.Mirrored(width))] };
}
