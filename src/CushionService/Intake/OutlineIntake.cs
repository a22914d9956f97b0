using System.Collections.Immutable;
using CushionService.Engine.Geometry;
using CushionService.Engine.Measures;
using CushionService.Engine.Specifications.Outlines;
using DrawnOutline = CushionService.Engine.Specifications.Outlines.Outline;
using Outline = CushionService.Contract.Orders.Outline;

namespace CushionService.Intake;

/// <summary>Checks an order's outline, and draws it.</summary>
/// <remarks>Sizes are finished sizes, on the seam line. Width runs from side to side and depth from the front to the back.</remarks>
internal static class OutlineIntake
{
    private static readonly LengthField<Outline> Width = RecordForm<Outline>.Length(nameof(Outline.Width)),
        Depth = RecordForm<Outline>.Length(nameof(Outline.Depth)),
        Diameter = RecordForm<Outline>.Length(nameof(Outline.Diameter)),
        CornerRadius = RecordForm<Outline>.Length(nameof(Outline.CornerRadius)),
        FrontWidth = RecordForm<Outline>.Length(nameof(Outline.FrontWidth)),
        BackWidth = RecordForm<Outline>.Length(nameof(Outline.BackWidth)),
        BackOffset = RecordForm<Outline>.Length(nameof(Outline.BackOffset)),
        EarWidth = RecordForm<Outline>.Length(nameof(Outline.EarWidth)),
        EarDepth = RecordForm<Outline>.Length(nameof(Outline.EarDepth)),
        NotchWidth = RecordForm<Outline>.Length(nameof(Outline.NotchWidth)),
        NotchDepth = RecordForm<Outline>.Length(nameof(Outline.NotchDepth)),
        SideLength = RecordForm<Outline>.Length(nameof(Outline.SideLength));

    /// <summary>The outline; null where it is missing, or is no shape.</summary>
    /// <param name="outline">The outline as written; null where it is left out, which the cushion's form reports.</param>
    /// <param name="findings">Takes what is wrong with the outline.</param>
    public static DrawnOutline? Read(Outline? outline, Findings findings)
    {
        if (outline is null)
        {
            return null;
        }

        Fields<Outline> fields = RecordForm<Outline>.Read(outline, findings);
        // Corners are read whatever the kind is, so that what is wrong with them is reported too.
        ImmutableArray<Point>? points = outline.Points is { } written ? CornerIntake.Read(written, nameof(outline.Points), findings) : null;
        if (outline.Kind is not { } kind || !Enum.IsDefined(kind))
        {
            return null;
        }

        OutlineFields.Check(outline, kind, findings);
        // An ell lacks one of the corners at the back: which is said by the side.
        if (kind == OutlineKind.Ell && outline.NotchSide is not (null or Side.Right or Side.Left))
        {
            findings.Refuse(nameof(outline.NotchSide), "not-combinable", ShapeTexts.NotchSide);
        }

        ImmutableArray<Length>? rounding = kind == OutlineKind.Rectangle ? RoundingIntake.OfRectangle(outline, findings) : [];
        PolygonOutline? polygon =
            kind == OutlineKind.Polygon && points is { } corners && fields.IsSound && fields.Or(CornerRadius, Length.Zero) is { } radius
                ? RoundingIntake.Polygon(outline, corners, radius, findings)
                : null;
        return Drawn(outline, kind, fields, rounding, polygon) is { } drawn && IsShape(drawn, outline, findings) ? drawn : null;
    }

    // The outline of the kind; null where one of its sizes is missing or was refused, which has been reported.
    private static DrawnOutline? Drawn(
        Outline outline,
        OutlineKind kind,
        Fields<Outline> fields,
        ImmutableArray<Length>? rounding,
        PolygonOutline? polygon
    ) =>
        (kind, fields[Width], fields[Depth]) switch
        {
            (OutlineKind.Rectangle, { } width, { } depth) => rounding is { } radii
                ? radii.IsEmpty
                    ? new RectangleOutline(width, depth)
                    : new CorneredRectangleOutline(width, depth, radii)
                : null,
            (OutlineKind.RoundedRectangle, { } width, { } depth) => fields[CornerRadius] is { } radius
                ? new RoundedRectangleOutline(width, depth, radius)
                : null,
            (OutlineKind.Oval, { } width, { } depth) => new OvalOutline(width, depth),
            (OutlineKind.DShape, { } width, { } depth) => new DShapeOutline(width, depth),
            (OutlineKind.RoundEnded, { } width, { } depth) => new RoundEndedOutline(width, depth),
            (OutlineKind.Tee, { } width, { } depth) => (fields[EarWidth], fields[EarDepth]) is ({ } across, { } along)
                ? new TeeOutline(width, depth, across, along)
                : null,
            (OutlineKind.Ell, { } width, { } depth) => (fields[NotchWidth], fields[NotchDepth]) is ({ } across, { } along)
                ? new EllOutline(width, depth, across, along, outline.NotchSide ?? Side.Right)
                : null,
            (OutlineKind.U, { } width, { } depth) => (fields[NotchWidth], fields[NotchDepth]) is ({ } across, { } along)
                ? new UOutline(width, depth, across, along)
                : null,
            (OutlineKind.HalfRound, { } width, _) => new HalfRoundOutline(width),
            (OutlineKind.Trapezoid, _, { } depth) => (fields[FrontWidth], fields[BackWidth]) is ({ } front, { } back)
            && fields.Or(BackOffset, TrapezoidOutline.Centred(front, back)) is { } offset
                ? new TrapezoidOutline(front, back, depth, offset)
                : null,
            (OutlineKind.Circle, _, _) => fields[Diameter] is { } diameter ? new CircleOutline(diameter) : null,
            // The form has reported a number of sides that is out of range; it must not be drawn.
            (OutlineKind.RegularPolygon, _, _) => fields[SideLength] is { } side && outline.SideCount is >= 3 and <= 24 and var count
                ? new RegularPolygonOutline(count, side)
                : null,
            (OutlineKind.Polygon, _, _) => polygon,
            _ => null,
        };

    // Reports each size that keeps the outline from being a shape, such as a notch as wide as the whole.
    private static bool IsShape(DrawnOutline drawn, Outline outline, Findings findings)
    {
        bool sound = true;
        foreach (OutlineFault fault in drawn.Faults())
        {
            sound = false;
            // The radius of every corner is that of all, where it was written so.
            string field = fault.Field == CornerRadius.Name && outline.Corners is not null ? nameof(outline.Corners) : fault.Field;
            // A single limit is reported as a range, for a form to show.
            if (fault.Below is { } limit)
            {
                findings.RefuseRange(field, "out-of-range", fault.Detail, null, limit);
            }
            else
            {
                findings.Refuse(field, "not-a-shape", fault.Detail);
            }
        }

        return sound;
    }
}
