using System.Collections.Immutable;
using CushionService.Engine.Geometry;
using CushionService.Engine.Measures;

namespace CushionService.Engine.Materials;

/// <summary>Divides a shape that is larger than a sheet into parts that lie on one: along straight lines through its inside corners, or
/// into equal strips (common practice, no source).</summary>
/// <param name="narrow">The shorter side of a sheet, above zero.</param>
/// <param name="wide">Its longer side.</param>
internal sealed class FoamDivision(Length narrow, Length wide)
{
    // A hollow curve's chords bend less than this, in radians, and are no corners.
    private const double LeastTurn = 0.2;

    // Shapes of many corners could be divided in more ways than anyone would look at; beyond this, only strips are.
    private const int MostTrials = 600;

    private int _trials;

    /// <summary>The divisions that differ in their first cut, each with the fewest parts from there on.</summary>
    /// <param name="corners">A simple polygon that no sheet holds, counter-clockwise.</param>
    /// <returns>At least one: sizes of the parts, and the length of their joints.</returns>
    public IEnumerable<(ImmutableArray<(Length Width, Length Depth)> Sizes, Length Joint)> Of(ImmutableArray<Point> corners)
    {
        foreach (PolygonCut first in Cuts(corners))
        {
            var sizes = ImmutableArray.CreateBuilder<(Length, Length)>();
            Length joint = first.Joint;
            foreach (ImmutableArray<Point> part in first.Parts)
            {
                var (rest, more) = Fewest(part);
                sizes.AddRange(rest);
                joint += more;
            }

            yield return (sizes.ToImmutable(), joint);
        }
    }

    /// <summary>How many equal strips a length is cut into.</summary>
    /// <param name="length">The length.</param>
    /// <param name="most">How long a strip may be, above zero.</param>
    public static int Strips(Length length, Length most) => (int)((length.Nanometres + most.Nanometres - 1) / most.Nanometres);

    /// <summary>The width of each of that many equal strips, up to a nanometre.</summary>
    public static Length Strip(Length length, int strips) => Length.FromNanometres((length.Nanometres + strips - 1) / strips);

    private (ImmutableArray<(Length Width, Length Depth)> Sizes, Length Joint) Fewest(ImmutableArray<Point> corners)
    {
        (Length width, Length depth) = Extent(corners);
        return Fits(width, depth)
            ? ([(width, depth)], Length.Zero)
            : Of(corners).OrderBy(way => way.Sizes.Length).ThenBy(way => way.Joint.Nanometres).First();
    }

    // Each way to make the next cuts; every one leaves smaller parts.
    private IEnumerable<PolygonCut> Cuts(ImmutableArray<Point> corners)
    {
        (Length width, Length depth) = Extent(corners);
        (Length left, Length front) = (corners.Min(at => at.X), corners.Min(at => at.Y));
        if (++_trials > MostTrials)
        {
            // What is no wider than the shorter side is longer than the longer one.
            yield return width > narrow
                ? Equal(corners, left, width, narrow, plumb: true)
                : Equal(corners, front, depth, wide, plumb: false);
            yield break;
        }

        Point[] inside = [.. InsideCorners(corners)];
        foreach (Length x in inside.Select(at => at.X).Where(x => x > left && x < left + width).Distinct())
        {
            yield return PolygonCut.Plumb(corners, x);
        }

        foreach (Length y in inside.Select(at => at.Y).Where(y => y > front && y < front + depth).Distinct())
        {
            yield return PolygonCut.Level(corners, y);
        }

        foreach (Length most in new[] { narrow, wide }.Distinct())
        {
            if (width > most)
            {
                yield return Equal(corners, left, width, most, plumb: true);
            }

            if (depth > most)
            {
                yield return Equal(corners, front, depth, most, plumb: false);
            }
        }
    }

    // The fewest strips of one width that are no wider than a side of the sheet.
    private static PolygonCut Equal(ImmutableArray<Point> corners, Length from, Length extent, Length most, bool plumb)
    {
        int strips = Strips(extent, most);
        Length each = Strip(extent, strips);
        ImmutableArray<ImmutableArray<Point>> parts = [corners];
        var joint = Length.Zero;
        for (var i = 1; i < strips; i++)
        {
            Length at = from + i * each;
            PolygonCut[] cuts = [.. parts.Select(part => plumb ? PolygonCut.Plumb(part, at) : PolygonCut.Level(part, at))];
            joint = cuts.Aggregate(joint, (sum, cut) => sum + cut.Joint);
            parts = [.. cuts.SelectMany(cut => cut.Parts)];
        }

        return new PolygonCut(parts, joint);
    }

    private bool Fits(Length width, Length depth) => Length.Min(width, depth) <= narrow && Length.Max(width, depth) <= wide;

    private static (Length Width, Length Depth) Extent(ImmutableArray<Point> corners) =>
        (corners.Max(at => at.X) - corners.Min(at => at.X), corners.Max(at => at.Y) - corners.Min(at => at.Y));

    private static IEnumerable<Point> InsideCorners(ImmutableArray<Point> corners) =>
        corners.Where(
            (at, i) =>
                Math.IEEERemainder(
                    Direction(at, corners[(i + 1) % corners.Length]) - Direction(corners[(i + corners.Length - 1) % corners.Length], at),
                    2 * Math.PI
                ) < -LeastTurn
        );

    private static double Direction(Point from, Point to) => Math.Atan2((to.Y - from.Y).Nanometres, (to.X - from.X).Nanometres);
}
