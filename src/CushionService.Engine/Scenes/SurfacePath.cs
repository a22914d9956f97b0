using System.Collections.Immutable;
using CushionService.Engine.Geometry;

namespace CushionService.Engine.Scenes;

/// <summary>Lines and arcs that a panel follows, by the distance along them in millimetres.</summary>
public sealed class SurfacePath
{
    // In radians, 3°: less is an arc that meets its tangent after rounding.
    private const double Corner = 0.05;
    private readonly ImmutableArray<Segment> _segments;
    private readonly double[] _starts;

    /// <summary>A path of lines and arcs end to end.</summary>
    /// <param name="segments">At least one, each starting where the one before ends.</param>
    public SurfacePath(ImmutableArray<Segment> segments)
    {
        _segments = segments;
        _starts = new double[segments.Length + 1];
        var bends = new List<SurfaceBend>();
        for (var i = 0; i < segments.Length; i++)
        {
            double length = segments[i].Length.Nanometres / 1e6;
            _starts[i + 1] = _starts[i] + length;
            int chords = PlanePolygon.Chords(segments[i].Sweep);
            bool corner =
                i > 0 && Math.Abs(Math.IEEERemainder(segments[i].StartDirection - segments[i - 1].EndDirection, 2 * Math.PI)) > Corner;
            if (i > 0)
            {
                bends.Add(new SurfaceBend(_starts[i], corner));
            }

            for (var j = 1; j < chords; j++)
            {
                bends.Add(new SurfaceBend(_starts[i] + (length * j / chords), false));
            }
        }

        Bends = bends;
    }

    /// <summary>Where it bends, between its ends.</summary>
    public IReadOnlyList<SurfaceBend> Bends { get; }

    /// <summary>How long it is.</summary>
    public double Length => _starts[^1];

    /// <summary>The point at a distance, and the direction there, one long. It runs on straight beyond its ends.</summary>
    /// <param name="distance">From the path's start, in millimetres; below zero is before it.</param>
    public (PlanePoint Point, PlanePoint Direction) At(double distance)
    {
        int i = Array.FindLastIndex(_starts, start => start <= distance);
        i = Math.Clamp(i, 0, _segments.Length - 1);
        Segment segment = _segments[i];
        double length = _starts[i + 1] - _starts[i],
            share = (distance - _starts[i]) / length,
            within = Math.Clamp(share, 0, 1),
            turned = segment.StartDirection + (segment.Sweep * within);
        var direction = new PlanePoint(Math.Cos(turned), Math.Sin(turned));
        PlanePoint point = Exact(segment, within);
        return (point + ((share - within) * length * direction), direction);
    }

    // As Segment.At, without rounding to a nanometre.
    private static PlanePoint Exact(Segment segment, double share)
    {
        PlanePoint from = PlanePoint.Of(segment.From);
        if (segment.IsStraight)
        {
            return from + (share * (PlanePoint.Of(segment.To) - from));
        }

        double turn = segment.Sweep * share,
            chord = 2 * segment.Radius / 1e6 * Math.Abs(Math.Sin(turn / 2)),
            direction = segment.StartDirection + (turn / 2);
        return from + (chord * new PlanePoint(Math.Cos(direction), Math.Sin(direction)));
    }
}
