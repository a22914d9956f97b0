using System.Collections.Immutable;
using CushionService.Engine.Geometry;
using CushionService.Engine.Measures;
using CushionService.Engine.Patterns.Panels;
using CushionService.Engine.Specifications.Outlines;

namespace CushionService.Engine.Patterns.Sections;

/// <summary>The rim of a pouf's base, divided as the wall is, so that both have the same names and the same notches.</summary>
/// <remarks>Places on it are lengths round the disc, counter-clockwise as it is drawn, from its left.</remarks>
internal sealed class PoufRim
{
    // In nanometres: corners are rounded to a micrometre, and nothing shorter is drawn.
    private const long Sliver = 1000;

    private readonly Length _diameter;
    private readonly ImmutableArray<(EdgeName Name, Length From, Length To)> _runs;

    /// <summary>The rim.</summary>
    /// <param name="diameter">Of the disc.</param>
    /// <param name="runs">The runs of the wall, from left to right as one looks at its outside.</param>
    /// <param name="gored">Whether the wall is of panels, the first of which meets the last at the back; else its runs are the front and
    /// the back.</param>
    public PoufRim(Length diameter, ImmutableArray<OutlineSide> runs, bool gored)
    {
        _diameter = diameter;
        Round = runs.Aggregate(Length.Zero, (sum, run) => sum + run.Length);
        Length at = gored ? Quarter(3) : Length.Zero;
        var placed = ImmutableArray.CreateBuilder<(EdgeName, Length, Length)>(runs.Length);
        // One who looks at the outside of the base meets the panels of the wall the other way round.
        foreach (OutlineSide run in gored ? runs.Reverse() : runs)
        {
            placed.Add((run.Name, at, at + run.Length));
            at += run.Length;
        }

        _runs = placed.MoveToImmutable();
    }

    /// <summary>Finished length, to the nanometre: that of the wall, whose runs were rounded each.</summary>
    public Length Round { get; }

    /// <summary>Where its first run begins.</summary>
    public Length Start => _runs[0].From;

    /// <summary>How far it is to the left, the front, the right and the back, and round to the left again.</summary>
    /// <param name="number">From 0 to 4.</param>
    public Length Quarter(int number) => Length.FromNanometres(Round.Nanometres * number / 4);

    /// <summary>A place, or the end of a run that lies too near to it for an edge between the two.</summary>
    /// <param name="at">From one round before the rim's left to one round after it.</param>
    public Length Snapped(Length at)
    {
        foreach (int round in (ReadOnlySpan<int>)[-1, 0, 1])
        {
            foreach ((_, Length from, Length to) in _runs)
            {
                Length moved = at - round * Round;
                if (IsNear(moved, from) || IsNear(moved, to))
                {
                    return round * Round + (IsNear(moved, from) ? from : to);
                }
            }
        }

        return at;
    }

    /// <summary>A point of the rim, on a disc whose box begins at zero.</summary>
    /// <param name="at">Any place; the quarters are exact.</param>
    public Point At(Length at)
    {
        Length radius = _diameter.HalfUp();
        Point[] quarters = [new(Length.Zero, radius), new(radius, Length.Zero), new(_diameter, radius), new(radius, _diameter)];
        Length once = Length.FromNanometres(((at.Nanometres % Round.Nanometres) + Round.Nanometres) % Round.Nanometres);
        for (var i = 0; i <= quarters.Length; i++)
        {
            if (IsNear(once, Quarter(i)))
            {
                return quarters[i % quarters.Length];
            }
        }

        double turned = Math.PI + (2 * Math.PI * once.Nanometres / Round.Nanometres);
        return new Point(Out(Math.Cos(turned)), Out(Math.Sin(turned)));

        Length Out(double share) => radius + Length.FromNanometres((long)Math.Round(share * radius.Nanometres));
    }

    /// <summary>The edges between two places: a whole run, or the stretch of it that lies between them.</summary>
    /// <param name="from">Where the first begins.</param>
    /// <param name="to">Where the last ends, at most once round.</param>
    /// <param name="place">Where a place lies on the panel.</param>
    /// <param name="seam">The finish of all.</param>
    public ImmutableArray<Edge> Between(Length from, Length to, Func<Length, Point> place, EdgeFinish seam)
    {
        var edges = ImmutableArray.CreateBuilder<Edge>();
        foreach (int round in (ReadOnlySpan<int>)[-1, 0, 1])
        {
            foreach ((EdgeName name, Length begin, Length end) in _runs)
            {
                Length start = Length.Max(from, begin + round * Round),
                    stop = Length.Min(to, end + round * Round);
                if (start < stop)
                {
                    bool isNamed = edges.Any(edge => edge.Name == name);
                    edges.Add(
                        new Edge(isNamed ? name.With(Parting.Again) : name, Path(start, stop, place), seam)
                        {
                            Stretch = new EdgeStretch(start - begin - round * Round, end - begin),
                        }
                    );
                }
            }
        }

        return edges.ToImmutable();
    }

    // Cut at the quarters, where the box of the disc touches it.
    private ImmutableArray<Segment> Path(Length from, Length to, Func<Length, Point> place)
    {
        var ends = new List<Length> { from };
        for (var i = -4; i <= 8; i++)
        {
            Length quarter = Quarter(i);
            if (quarter > from && quarter < to && !IsNear(quarter, from) && !IsNear(quarter, to))
            {
                ends.Add(quarter);
            }
        }

        ends.Add(to);
        return
        [
            .. ends.Zip(ends.Skip(1))
                .Select(ends =>
                    Segment.Arc(
                        place(ends.First),
                        place(ends.Second),
                        2 * Math.PI * (ends.Second - ends.First).Nanometres / Round.Nanometres,
                        ends.Second - ends.First
                    )
                ),
        ];
    }

    private static bool IsNear(Length one, Length other) => Math.Abs((one - other).Nanometres) <= Sliver;
}
