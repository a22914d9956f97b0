using System.Collections.Immutable;
using CushionService.Engine.Geometry;
using CushionService.Engine.Measures;

namespace CushionService.Engine.Patterns.Panels;

/// <summary>One edge of a panel's finished outline, from one corner or notch to the next, counter-clockwise.</summary>
public sealed record Edge
{
    /// <summary>An edge of lines and arcs.</summary>
    /// <param name="name">Distinct within the panel.</param>
    /// <param name="path">At least one line or arc.</param>
    /// <param name="finish">What happens there.</param>
    public Edge(EdgeName name, ImmutableArray<Segment> path, EdgeFinish finish) => (Name, Path, Finish) = (name, path, finish);

    /// <summary>A straight edge.</summary>
    public Edge(EdgeName name, Point from, Point to, EdgeFinish finish)
        : this(name, [new Segment(from, to)], finish) { }

    /// <summary>Distinct within the panel.</summary>
    public EdgeName Name { get; init; }

    /// <summary>Its lines and arcs, each starting where the one before ends; at least one.</summary>
    public ImmutableArray<Segment> Path
    {
        get;
        init
        {
            field = value;
            // Both are asked for far more often than an edge is made.
            (Length, Facing) = (Segment.LengthOf(value), FacingOf(value));
        }
    }

    /// <summary>What happens there.</summary>
    public EdgeFinish Finish { get; init; }

    /// <summary>Where it lies on the edge that it is a stretch of; the edge itself where no line has divided it.</summary>
    public EdgeStretch Stretch
    {
        get => field.Whole == Length.Zero ? new EdgeStretch(Length.Zero, Length) : field;
        init;
    }

    /// <summary>How far along it joins come of what it is sewn to, where it has notches for them.</summary>
    public ImmutableArray<Length> Joins { get; init; } = [];

    /// <summary>Whether it is sewn to an edge of the back, whose middle has two notches, and has no name that says so.</summary>
    public bool MeetsBack { get; init; }

    /// <summary>Where it starts.</summary>
    public Point From => Path[0].From;

    /// <summary>Where it ends.</summary>
    public Point To => Path[^1].To;

    /// <summary>Finished length: the sum of its lines and arcs, each to the nearest nanometre.</summary>
    public Length Length { get; private init; }

    /// <summary>The way its outside faces; <see cref="EdgeFacing.Aslant"/> unless it is one level or plumb line.</summary>
    public EdgeFacing Facing { get; private init; }

    /// <summary>The stretch of it that begins at a distance along it, for an edge that a line divides.</summary>
    /// <param name="distance">At least zero.</param>
    public EdgeStretch StretchAt(Length distance) => new(Stretch.Before + distance, Stretch.Whole);

    /// <summary>The edge moved.</summary>
    /// <param name="right">Below zero to the left.</param>
    /// <param name="up">Below zero downwards.</param>
    public Edge Moved(Length right, Length up) =>
        this with
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

    private static EdgeFacing FacingOf(ImmutableArray<Segment> path)
    {
        Segment line = path[0];
        return (path.Length > 1 || !line.IsStraight, line.To.X.CompareTo(line.From.X), line.To.Y.CompareTo(line.From.Y)) switch
        {
            (false, > 0, 0) => EdgeFacing.Down,
            (false, 0, > 0) => EdgeFacing.Right,
            (false, < 0, 0) => EdgeFacing.Up,
            (false, 0, < 0) => EdgeFacing.Left,
            _ => EdgeFacing.Aslant,
        };
    }
}
