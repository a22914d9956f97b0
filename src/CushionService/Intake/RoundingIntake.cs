using System.Collections.Immutable;
using CushionService.Contract.Orders;
using CushionService.Engine.Geometry;
using CushionService.Engine.Measures;
using CushionService.Engine.Specifications.Outlines;
using Outline = CushionService.Contract.Orders.Outline;

namespace CushionService.Intake;

/// <summary>Checks the radii of corners and the arcs of sides.</summary>
/// <remarks>Radii are in the order in which the corners are written, and so are arcs: the first side is from the first point to the second.
/// Points that are written clockwise have been turned round, and what belongs to them turns with them.</remarks>
internal static class RoundingIntake
{
    private static readonly LengthField<OutlineArc> Bulge = RecordForm<OutlineArc>.Length(nameof(OutlineArc.Bulge)),
        Radius = RecordForm<OutlineArc>.Length(nameof(OutlineArc.Radius));

    /// <summary>The radii of a rectangle's corners; empty where all are sharp, null where they were refused.</summary>
    /// <param name="outline">The outline as written.</param>
    /// <param name="findings">Takes what is wrong with the outline.</param>
    public static ImmutableArray<Length>? OfRectangle(Outline outline, Findings findings) =>
        Radii(outline, 4, findings) is not { } radii ? null
        : radii.Any(radius => radius > Length.Zero) ? radii
        : [];

    /// <summary>A polygon with its radii and arcs; null where they were refused.</summary>
    /// <param name="outline">The outline as written.</param>
    /// <param name="corners">Its points, counter-clockwise.</param>
    /// <param name="radius">The radius of all corners, where they have none of their own.</param>
    /// <param name="findings">Takes what is wrong with the outline.</param>
    public static PolygonOutline? Polygon(Outline outline, ImmutableArray<Point> corners, Length radius, Findings findings)
    {
        int count = corners.Length;
        if (outline is { CornerRadius: not null, Corners: not null })
        {
            findings.Refuse(nameof(outline.Corners), "not-combinable", ShapeTexts.CornersOrRadius);
            return null;
        }

        if (Radii(outline, count, findings) is not { } own || Sweeps(outline, corners, findings) is not { } sweeps)
        {
            return null;
        }

        ImmutableArray<Length> radii =
            own.IsEmpty ? [.. corners.Select(_ => radius)]
            : CornerIntake.IsTurned(outline.Points!, findings.Unit) ? [.. own.Reverse()]
            : own;
        // A rounded corner beside an arc would need a curve that touches both, which no field says.
        int beside = Enumerable.Range(0, count).FirstOrDefault(i => sweeps[i] != 0 && radii[i] + radii[(i + 1) % count] > Length.Zero, -1);
        if (beside >= 0)
        {
            findings.Refuse(
                outline.Corners is null ? nameof(outline.CornerRadius) : nameof(outline.Corners),
                "not-combinable",
                ShapeTexts.ArcBesideRounding(Written(beside, outline, count, findings.Unit) + 1)
            );
            return null;
        }

        return new PolygonOutline(corners, radii, sweeps);
    }

    // One for each corner, in the order written; empty where there are none, null where they were refused.
    private static ImmutableArray<Length>? Radii(Outline outline, int count, Findings findings)
    {
        if (outline.Corners is not { } written)
        {
            return [];
        }

        ImmutableArray<Length>? radii = EntryCheck.Lengths(written, typeof(Outline).GetProperty(nameof(outline.Corners))!, findings);
        if (written.Count != count)
        {
            findings.Refuse(nameof(outline.Corners), "out-of-range", ShapeTexts.CornerCount(count), new FindingRange(count, count));
            return null;
        }

        return radii;
    }

    // The angle that each side turns through, from the first corner on.
    private static ImmutableArray<double>? Sweeps(Outline outline, ImmutableArray<Point> corners, Findings findings)
    {
        int count = corners.Length;
        double?[] sweeps = new double?[count];
        bool sound = true;
        for (int i = 0; i < outline.Arcs?.Count; i++)
        {
            Findings at = findings.Within(nameof(outline.Arcs), i);
            OutlineArc arc = outline.Arcs[i];
            Fields<OutlineArc> fields = RecordForm<OutlineArc>.Read(arc, at);
            if (!fields.IsSound || arc.Side is not { } side)
            {
                sound = false;
            }
            else if (side > count)
            {
                at.Refuse(nameof(arc.Side), "out-of-range", ShapeTexts.ArcSide(side, count), new FindingRange(1, count));
                sound = false;
            }
            else
            {
                // What is written of the nth side is said of the side that it has become.
                int drawn = Written(side - 1, outline, count, findings.Unit);
                var chord = new Segment(corners[drawn], corners[(drawn + 1) % count]).Length;
                double? sweep = chord == Length.Zero ? 0 : Sweep(arc, fields, chord, at);
                if (sweeps[drawn] is not null)
                {
                    at.Refuse(nameof(arc.Side), "duplicate", ShapeTexts.ArcTwice(side));
                    sound = false;
                }

                sweeps[drawn] = sweep;
                sound &= sweep is not null;
            }
        }

        return sound ? [.. sweeps.Select(sweep => sweep ?? 0)] : null;
    }

    // By the bulge, at most half of the chord, which is a half circle; or by the radius, at least half of the chord.
    private static double? Sweep(OutlineArc arc, Fields<OutlineArc> fields, Length chord, Findings at)
    {
        var half = Length.FromNanometres(chord.Nanometres / 2);
        switch (fields[Bulge], fields[Radius])
        {
            case ({ } bulge, null) when bulge.Nanometres >= -half.Nanometres && bulge <= half:
                return PolygonOutline.SweepOf(chord, bulge);
            case ({ }, null):
                at.RefuseRange(nameof(arc.Bulge), "out-of-range", ShapeTexts.ArcBulge(half), -half, half);
                return null;
            case (null, { } radius) when 2 * Math.Abs(radius.Nanometres) >= chord.Nanometres:
                return PolygonOutline.SweepOfRadius(chord, radius);
            case (null, { }):
                at.RefuseRange(nameof(arc.Radius), "out-of-range", ShapeTexts.ArcRadius(half), half, null);
                return null;
            default:
                at.Refuse("", "required", ShapeTexts.ArcMeasure);
                return null;
        }
    }

    // The side of a drawn polygon that a written one has become, and the other way round.
    private static int Written(int side, Outline outline, int count, LengthUnit unit) =>
        CornerIntake.IsTurned(outline.Points!, unit) ? (2 * count - 2 - side) % count : side;
}
