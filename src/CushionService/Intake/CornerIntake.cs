using System.Collections.Immutable;
using CushionService.Contract;
using CushionService.Contract.Orders;
using CushionService.Engine.Geometry;
using CushionService.Engine.Measures;
using CushionService.Engine.Specifications.Outlines;

namespace CushionService.Intake;

/// <summary>Checks the corners of a polygon, and reads them.</summary>
/// <remarks>Coordinates are lengths from any origin; the outline is moved to its own box later. Corners that run clockwise are
/// turned round.</remarks>
internal static class CornerIntake
{
    // The nesting kernels' finest grid, 1 µm; no workroom cuts finer.
    // A coordinate is rounded once, here, so that two sides that meet on paper meet in the search.
    private const long Grid = 1000;

    /// <summary>The corners, counter-clockwise; null when one of them cannot be read or is too far away, or there are fewer than
    /// three.</summary>
    /// <param name="points">The corners as written; gaps are reported.</param>
    /// <param name="list">The property that holds them.</param>
    /// <param name="findings">Takes what is wrong.</param>
    public static ImmutableArray<Point>? Read(IReadOnlyList<Corner?> points, string list, Findings findings)
    {
        var corners = ImmutableArray.CreateBuilder<Point>(points.Count);
        for (int i = 0; i < points.Count; i++)
        {
            // A corner that cannot be read is reported at its own place, and the others are read all the same.
            Findings at = findings.Within(list, i);
            if (points[i] is not { } point)
            {
                at.Refuse("", "required", FieldTexts.NullCorner);
            }
            else if ((Read(point.X, nameof(point.X), at), Read(point.Y, nameof(point.Y), at)) is ({ } x, { } y))
            {
                corners.Add(new Point(x, y));
            }
        }

        // Three corners at least make an area; with one missing the shape would be another.
        if (corners.Count < Math.Max(points.Count, 3))
        {
            return null;
        }

        ImmutableArray<Point> drawn = corners.ToImmutable();
        return Polygon.Area(drawn).SquareNanometres < 0 ? [.. drawn.Reverse()] : drawn;
    }

    /// <summary>Whether corners that can be read run clockwise as they are written, and have been turned round.</summary>
    /// <param name="points">The corners as written.</param>
    /// <param name="unit">The unit of their numbers.</param>
    public static bool IsTurned(IReadOnlyList<Corner> points, LengthUnit unit) =>
        Polygon
            .Area([
                .. points.Select(point =>
                    point.X!.Value.TryRead(unit, out Length x) && point.Y!.Value.TryRead(unit, out Length y) ? new Point(x, y) : default
                ),
            ])
            .SquareNanometres < 0;

    // A coordinate on the grid; null where it is missing, no length, or further than any outline reaches.
    private static Length? Read(Measure? measure, string field, Findings findings)
    {
        Length furthest = PolygonOutline.Furthest;
        if (measure is not { } written)
        {
            findings.Refuse(field, "required", FieldTexts.Required(field));
        }
        else if (!written.TryRead(findings.Unit, out Length length))
        {
            findings.Refuse(field, "not-a-length", FieldDetails.Unread(field, written));
        }
        else if (length > furthest || length < -furthest)
        {
            findings.RefuseRange(field, "out-of-range", FieldTexts.LengthRange(field, -furthest, furthest), -furthest, furthest);
        }
        else
        {
            return Length.FromNanometres((long)Math.Round(length.Nanometres / (double)Grid) * Grid);
        }

        return null;
    }
}
