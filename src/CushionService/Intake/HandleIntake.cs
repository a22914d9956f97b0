using CushionService.Contract.Orders;
using CushionService.Engine.Specifications.Outlines;
using CushionService.Engine.Specifications.Trimmings;

namespace CushionService.Intake;

/// <summary>Checks a handle against the side that it is on, and specifies it.</summary>
/// <remarks>A handle is longer than the span between its ends, so that it keeps off the boxing. It is for carrying the cushion alone, and
/// not rated for a load.</remarks>
internal static class HandleIntake
{
    private static readonly LengthField<Handle> Width = RecordForm<Handle>.Length(nameof(Handle.Width)),
        HandleLength = RecordForm<Handle>.Length(nameof(Handle.Length)),
        Span = RecordForm<Handle>.Length(nameof(Handle.Span));

    /// <summary>The handle; null where there is none, or it was refused.</summary>
    /// <param name="handle">The handle as written; null for none.</param>
    /// <param name="body">The cushion, its closure read.</param>
    /// <param name="findings">Takes what is wrong with the handle.</param>
    public static HandleSpecification? Read(Handle? handle, CushionBody body, Findings findings)
    {
        if (handle is null)
        {
            return null;
        }

        Fields<Handle> fields = RecordForm<Handle>.Read(handle, findings);
        // A knife edge has no boxing to sew a handle to, and other constructions take some kinds alone.
        if (handle.Kind is { } known && !body.Offer.Handles.Contains(known))
        {
            findings.Refuse(nameof(handle.Kind), "not-combinable", TrimTexts.HandleNotOffered(body.Offer.Kind, known, body.Offer.Handles));
            return null;
        }

        // On the boxing, at the front unless the order says where.
        IReadOnlyList<Side> sides = body.HandleSides;
        if (!SidesAllow(handle, sides, body, findings))
        {
            return null;
        }

        SizesAllow(fields, sides, body, findings);
        return handle.Kind is { } kind && fields[Width] is { } width && fields[HandleLength] is { } length && fields[Span] is { } span
            ? new HandleSpecification(kind, sides[0], width, length, span) { Second = sides.Count > 1 ? sides[1] : null }
            : null;
    }

    // Whether each side is there, once, and does not open.
    private static bool SidesAllow(Handle handle, IReadOnlyList<Side> sides, CushionBody body, Findings findings)
    {
        bool listed = handle.Sides is { Count: > 0 };
        if (listed && handle.Side is not null)
        {
            findings.NotApplicable(nameof(handle.Side), TrimTexts.HandleSideAndSides);
        }

        if (sides.Distinct().Count() < sides.Count)
        {
            findings.Refuse(nameof(handle.Sides), "duplicate", TrimTexts.HandleSidesTwice);
            return false;
        }

        foreach ((int i, Side side) in sides.Index())
        {
            string field = listed ? $"{nameof(handle.Sides)}[{i}]" : nameof(handle.Side);
            // The underside lies on the seat, and no boxing runs there.
            if (side == Side.Bottom)
            {
                findings.Refuse(field, "not-combinable", TrimTexts.HandleOnBottom);
                return false;
            }

            if (!body.HasSide(side))
            {
                findings.Refuse(field, "not-combinable", TrimTexts.NoSide(body.Outline!.Kind, side));
            }
            // A handle across the opening would keep it shut.
            else if (body.IsOpenOn(side))
            {
                findings.Refuse(field, "not-combinable", TrimTexts.HandleOnClosure);
            }
        }

        return true;
    }

    // Whether the handle fits its side: no wider than the boxing is high, and no longer than what the closure's returns leave free.
    private static void SizesAllow(Fields<Handle> fields, IReadOnlyList<Side> sides, CushionBody body, Findings findings)
    {
        if (fields[Width] is { } width && body.BoxingHeight is { } height && width > height)
        {
            findings.RefuseRange(Width.Name, "out-of-range", TrimTexts.HandleTooWide(height), null, height);
        }

        // The difference is the room for a hand.
        if (fields[Span] is { } span && fields[HandleLength] is { } length && span >= length)
        {
            findings.RefuseRange(Span.Name, "out-of-range", TrimTexts.SpanTooLong(length), null, length);
        }

        if (fields[Span] is { } across && sides.Min(body.FreeLength) is { } free && across > free)
        {
            findings.RefuseRange(Span.Name, "out-of-range", TrimTexts.SpanOnShortSide(free), null, free);
        }
    }
}
