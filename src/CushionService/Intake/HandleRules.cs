using CushionService.Contract.Orders;
using CushionService.Engine.Specifications;

namespace CushionService.Intake;

/// <summary>Whether a cushion's handle finds its place.</summary>
internal static class HandleRules
{
    public static void Check(Cushion cushion, CushionReading reading, Findings findings)
    {
        if (cushion.Handle is not { } handle || reading.Offer is not { } offer)
        {
            return;
        }

        if (handle.Kind is { } kind && !offer.Handles.Contains(kind))
        {
            findings.Refuse(
                "Handle.Kind",
                "not-combinable",
                $"Construction {CushionValidator.Json(offer.Kind)} does not take a handle {CushionValidator.Json(kind)}."
            );
            return;
        }

        if (reading.HandleSide == Side.Bottom)
        {
            findings.Refuse("Handle.Side", "not-combinable", "A handle stands on a side of the boxing.");
            return;
        }

        if (reading.Outline is { } outline && outline.Sides.All(stretch => stretch.Side != reading.HandleSide))
        {
            findings.Refuse(
                "Handle.Side",
                "not-combinable",
                $"Outline {CushionValidator.Json(outline.Kind)} has no {CushionValidator.Json(reading.HandleSide)} side."
            );
        }
        else if (reading.HandleSide == reading.Side && reading.OpensBoxing)
        {
            findings.Refuse("Handle.Side", "not-combinable", "A handle and an opening closure cannot stand on the same side.");
        }

        OrderReading order = findings.Reading;
        if (order.Length(handle.Width) is { } width && reading.BoxingHeight is { } thickness && width > thickness)
        {
            findings.RefuseRange(
                "Handle.Width",
                "out-of-range",
                $"A handle may be at most as wide as the boxing is high, {order.Text(thickness)}.",
                null,
                thickness
            );
        }

        if (order.Length(handle.Span) is not { } span)
        {
            return;
        }

        if (order.Length(handle.Length) is { } length && span >= length)
        {
            findings.RefuseRange(
                "Handle.Span",
                "out-of-range",
                $"The span must be shorter than the handle, {order.Text(length)}, so that a hand fits under it.",
                null,
                length
            );
        }

        if (reading.FreeLength(reading.HandleSide) is { } free && span > free)
        {
            findings.RefuseRange(
                "Handle.Span",
                "out-of-range",
                $"The span must fit the side, of which {order.Text(free)} is free.",
                null,
                free
            );
        }
    }
}
