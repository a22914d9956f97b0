using CushionService.Contract;
using CushionService.Contract.Orders;
using CushionService.Engine.Specifications.Outlines;
using CushionService.Engine.Specifications.Shapes;
using CushionService.Engine.Specifications.Trimmings;

namespace CushionService.Intake;

/// <summary>Checks a handle against the side that it is on, and specifies it.</summary>
internal static class HandleIntake
{
    private static readonly LengthField<Handle> Width = RecordForm<Handle>.Length(nameof(Handle.Width)),
        HandleLength = RecordForm<Handle>.Length(nameof(Handle.Length)),
        Span = RecordForm<Handle>.Length(nameof(Handle.Span));

    /// <summary>The handle; null where there is none, or it was refused.</summary>
    public static HandleSpecification? Read(Handle? handle, CushionBody body, Findings findings)
    {
        if (handle is null)
        {
            return null;
        }

        Fields<Handle> fields = RecordForm<Handle>.Read(handle, findings);
        if (handle.Kind is { } known && !body.Offer.Handles.Contains(known))
        {
            string construction = Words<Construction>.Of(body.Offer.Kind);
            string detail = $"Construction {construction} cannot have handle {Words<HandleKind>.Of(known)}.";
            findings.Refuse(nameof(handle.Kind), "not-combinable", detail);
            return null;
        }

        Side side = body.HandleSide;
        if (side == Side.Bottom)
        {
            findings.Refuse(nameof(handle.Side), "not-combinable", "A handle must be on a side of the boxing, not on the bottom.");
            return null;
        }

        if (!body.HasSide(side))
        {
            string outline = Words<OutlineKind>.Of(body.Outline!.Kind);
            string detail = $"Outline {outline} has no {Words<Side>.Of(side)} side. Choose another side.";
            findings.Refuse(nameof(handle.Side), "not-combinable", detail);
        }
        else if (side == body.ClosureSide && body.OpensBoxing)
        {
            findings.Refuse(nameof(handle.Side), "not-combinable", "The closure opens this side. Choose another side for the handle.");
        }

        SizesAllow(fields, side, body, findings);
        return handle.Kind is { } kind && fields[Width] is { } width && fields[HandleLength] is { } length && fields[Span] is { } span
            ? new HandleSpecification(kind, side, width, length, span)
            : null;
    }

    private static void SizesAllow(Fields<Handle> fields, Side side, CushionBody body, Findings findings)
    {
        if (fields[Width] is { } width && body.BoxingHeight is { } height && width > height)
        {
            string detail = $"A handle may be at most as wide as the boxing is high, {findings.Text(height)}.";
            findings.RefuseRange(Width.Name, "out-of-range", detail, null, height);
        }

        if (fields[Span] is { } span && fields[HandleLength] is { } length && span >= length)
        {
            string detail = $"Span must be less than the handle's length, {findings.Text(length)}, so that fingers fit under it.";
            findings.RefuseRange(Span.Name, "out-of-range", detail, null, length);
        }

        if (fields[Span] is { } across && body.FreeLength(side) is { } free && across > free)
        {
            string detail = $"Span must fit the side, of which {findings.Text(free)} is free.";
            findings.RefuseRange(Span.Name, "out-of-range", detail, null, free);
        }
    }
}
