using System.Collections.Immutable;
using CushionService.Engine.Measures;

namespace CushionService.Engine.Geometry;

/// <summary>A straight line or a circular arc from one point to another.</summary>
/// <param name="From">Where it starts.</param>
/// <param name="To">Where it ends; another point than the start.</param>
/// <param name="Sweep">Angle that the arc turns through, in radians, between −2π and 2π: 0 for a straight line, above 0 for an arc that
/// bulges out of a counter-clockwise outline, below 0 for one that hollows it.</param>
public readonly record struct Segment(Point From, Point To, double Sweep = 0)
{
    /// <summary>Whether it is a straight line.</summary>
    public bool IsStraight => Sweep == 0;

    /// <summary>Length of the line or the arc, to the nearest nanometre; exact for a line that is level or plumb.</summary>
    public Length Length
    {
        get
        {
            (long dx, long dy) = ((To.X - From.X).Nanometres, (To.Y - From.Y).Nanometres);
            return IsStraight && (dx == 0 || dy == 0)
                ? Length.FromNanometres(Math.Abs(dx + dy))
                : Length.FromNanometres((long)Math.Round(IsStraight ? Chord : Radius * Math.Abs(Sweep)));
        }
    }

    /// <summary>Length of lines and arcs end to end, each to the nearest nanometre.</summary>
    public static Length LengthOf(ImmutableArray<Segment> path)
    {
        var sum = Length.Zero;
        foreach (Segment segment in path)
        {
            sum += segment.Length;
        }

        return sum;
    }

    /// <summary>An arc of a stated length, to the nanometre.</summary>
    /// <param name="from">Where it starts.</param>
    /// <param name="to">Where it ends.</param>
    /// <param name="sweep">The angle that it turns through, before the ends were rounded to a nanometre.</param>
    /// <param name="length">Its length, a few nanometres from that of the arc of that sweep.</param>
    /// <remarks>Ends that are rounded to a nanometre leave arcs of one radius a nanometre apart; the sweep takes up the
    /// difference.</remarks>
    public static Segment Arc(Point from, Point to, double sweep, Length length)
    {
        var arc = new Segment(from, to, sweep);
        for (var i = 0; i < 8 && arc.Length != length; i++)
        {
            // A sweep's share of an arc's length with the ends held: dL/dθ = L (1/θ − cot(θ/2)/2).
            double off = length.Nanometres - (arc.Radius * Math.Abs(arc.Sweep));
            arc = arc with { Sweep = arc.Sweep + (off / (arc.Length.Nanometres * ((1 / arc.Sweep) - (0.5 / Math.Tan(arc.Sweep / 2))))) };
        }

        return arc;
    }

    /// <summary>Radius of the arc in nanometres.</summary>
    public double Radius => Chord / (2 * Math.Abs(Math.Sin(Sweep / 2)));

    private double Chord
    {
        get
        {
            (double dx, double dy) = ((To.X - From.X).Nanometres, (To.Y - From.Y).Nanometres);
            return Math.Sqrt((dx * dx) + (dy * dy));
        }
    }

    /// <summary>The direction in which the segment leaves its start, in radians from the x axis.</summary>
    public double StartDirection => ChordDirection - (Sweep / 2);

    /// <summary>The direction in which the segment reaches its end, in radians from the x axis.</summary>
    public double EndDirection => ChordDirection + (Sweep / 2);

    private double ChordDirection => Math.Atan2((To.Y - From.Y).Nanometres, (To.X - From.X).Nanometres);

    /// <summary>The point at a share of the segment's length, from 0 to 1, to the nearest nanometre.</summary>
    public Point At(double share)
    {
        if (IsStraight)
        {
            return From.Moved(
                Length.FromNanometres((long)Math.Round((To.X - From.X).Nanometres * share)),
                Length.FromNanometres((long)Math.Round((To.Y - From.Y).Nanometres * share))
            );
        }

        // A chord over a share of the sweep leaves the start at half that share of the turn.
        double turn = Sweep * share,
            chord = 2 * Radius * Math.Abs(Math.Sin(turn / 2)),
            direction = StartDirection + (turn / 2);
        return From.Moved(
            Length.FromNanometres((long)Math.Round(chord * Math.Cos(direction))),
            Length.FromNanometres((long)Math.Round(chord * Math.Sin(direction)))
        );
    }

    /// <summary>The two parts on either side of a share of the length, strictly between 0 and 1.</summary>
    public (Segment Before, Segment After) Split(double share)
    {
        Point at = At(share);
        return (new Segment(From, at, Sweep * share), new Segment(at, To, Sweep * (1 - share)));
    }

    /// <summary>The segment as the mirror in a plumb line sees it, turned round so that an outline stays counter-clockwise.</summary>
    /// <param name="width">Twice the distance of that line from x = 0.</param>
    public Segment Mirrored(Length width) => new(new Point(width - To.X, To.Y), new Point(width - From.X, From.Y), Sweep);
}
