using System.Collections.Immutable;
using CushionService.Contract.Orders;
using CushionService.Engine.Materials;
using CushionService.Engine.Measures;
using CushionService.Engine.Patterns;
using CushionService.Engine.Specifications;
using CushionService.Engine.Specifications.Closures;
using Outline = CushionService.Engine.Specifications.Outlines.Outline;

namespace CushionService.Intake;

/// <summary>Whether a cushion's closure can be sewn: what its construction offers, which fields apply, and what its sizes allow.</summary>
internal static class ClosureRules
{
    private static readonly Length ShortestZipper = Length.FromInches(2);

    public static void Check(Cushion cushion, CushionReading reading, Findings findings)
    {
        if (cushion.Closure is not { Kind: { } kind } closure || reading.Offer is not { } offer)
        {
            return;
        }

        ImmutableArray<Side> sides = offer.SidesFor(kind);
        if (sides.IsEmpty)
        {
            findings.Refuse(
                "Closure.Kind",
                "not-combinable",
                $"Construction {CushionValidator.Json(offer.Kind)} does not take a closure {CushionValidator.Json(kind)}."
            );
            return;
        }

        if (closure.Side is { } side && !sides.Contains(side))
        {
            findings.Refuse(
                "Closure.Side",
                "not-combinable",
                $"A closure {CushionValidator.Json(kind)} of construction {CushionValidator.Json(offer.Kind)} stands on one of: {string.Join(", ", sides.Select(s => CushionValidator.Json(s)))}."
            );
            return;
        }

        if (reading is { Joins: BoxingJoins.Back, Side: not null and not Side.Back and not Side.Bottom } && !offer.Joins.IsEmpty)
        {
            findings.Refuse("Closure.Side", "not-combinable", "With a wrapped boxing the closure stands at the back.");
        }

        if (reading is { Outline: { } outline, Side: { } stands })
        {
            OutlineTakes(outline, stands, kind, reading, findings);
        }

        FieldsApply(closure, kind, reading, offer, findings);
        SizesAllow(kind, reading, findings);
        if (reading.Side == Side.Front)
        {
            findings.Warn("Closure.Side", "closure-shows", "A closure at the front shows; it is usually set at the back.");
        }
    }

    private static void OutlineTakes(Outline outline, Side stands, ClosureKind kind, CushionReading reading, Findings findings)
    {
        Length? lap = kind == ClosureKind.Zipper ? reading.Lap : reading.Overlap;
        if (stands == Side.Bottom && lap < outline.Depth && !ClosureLine.Divides(outline, lap.Value, kind == ClosureKind.Zipper))
        {
            findings.Refuse(
                "Closure.Side",
                "not-combinable",
                "A closure across the underside must part it in two; the lines of this one cross the outline more than twice, run along an edge or close to an inside corner, or differ in length under a lapped zipper."
            );
        }
        else if (stands != Side.Bottom && outline.Sides.All(stretch => stretch.Side != stands))
        {
            findings.Refuse(
                "Closure.Side",
                "not-combinable",
                $"Outline {CushionValidator.Json(outline.Kind)} has no {CushionValidator.Json(stands)} side."
            );
        }

        if (!outline.HasCorners && reading is { Joins: BoxingJoins.Corners, Offer.Joins.IsEmpty: false })
        {
            findings.Refuse(
                "Boxing.Joins",
                "not-combinable",
                $"Outline {CushionValidator.Json(outline.Kind)} has curves; its boxing joins at the back."
            );
        }
    }

    private static void FieldsApply(Closure closure, ClosureKind kind, CushionReading reading, ConstructionOffer offer, Findings findings)
    {
        bool overlaps = kind is ClosureKind.HookAndLoop or ClosureKind.Envelope or ClosureKind.Buttons or ClosureKind.Ties;
        bool hooked = kind == ClosureKind.HookAndLoop;
        Only(reading.HasReturns, closure.Return is not null, nameof(Closure.Return));
        Only(
            kind == ClosureKind.Zipper && (!reading.ZipsSeam || closure.Lap is not null),
            closure.TurnUnder is not null,
            nameof(Closure.TurnUnder)
        );
        Only(kind == ClosureKind.Zipper, closure.Lap is not null, nameof(Closure.Lap));
        Only(overlaps, closure.Fold is not null, nameof(Closure.Fold));
        Only(overlaps && !(hooked && reading.StripsAsSides), closure.Overlap is not null, nameof(Closure.Overlap));
        Only(hooked, closure.TapeWidth is not null, nameof(Closure.TapeWidth));
        Only(kind == ClosureKind.Buttons, closure.ButtonDiameter is not null, nameof(Closure.ButtonDiameter));
        Only(kind == ClosureKind.Ties, closure.TieLength is not null, nameof(Closure.TieLength));
        Only(hooked && offer.Thickness && reading.Side != Side.Bottom, closure.Strips is not null, nameof(Closure.Strips));

        void Only(bool applies, bool given, string field)
        {
            if (given && !applies)
            {
                findings.Refuse(
                    $"Closure.{field}",
                    "not-applicable",
                    $"{FieldNames.Words(field)} does not apply to this closure {CushionValidator.Json(kind)}."
                );
            }
        }
    }

    private static void SizesAllow(ClosureKind kind, CushionReading reading, Findings findings)
    {
        OrderReading order = findings.Reading;
        if (reading.Return is { Nanometres: > 0 } turn && reading.LongestReturn is { } longest && turn >= longest)
        {
            findings.RefuseRange(
                "Closure.Return",
                "out-of-range",
                $"Return must be less than the stretch that it runs along, {order.Text(longest)}.",
                Length.Zero,
                longest
            );
        }

        if (
            reading is { ZipsSeam: true, Side: { } side }
            && reading.SeamLength(side) is { } length
            && Closing.ZipperInSeam(length) < ShortestZipper
        )
        {
            findings.Refuse("Closure.Side", "side-too-short", $"A side of {order.Text(length)} is too short for a zipper in its seam.");
        }

        // The fold that hides the zipper is stitched down through its own turn-under.
        if (
            kind == ClosureKind.Zipper
            && reading is { Lap: { Nanometres: > 0 } lap, TurnUnder: { } turned }
            && lap + order.Practice.EdgeDistance > turned
        )
        {
            findings.RefuseRange(
                "Closure.Lap",
                "lap-too-deep",
                $"A lap of {order.Text(lap)} needs a turn-under of {order.Text(lap + order.Practice.EdgeDistance)} to be stitched to; it has {order.Text(turned)}.",
                Length.Zero,
                turned - order.Practice.EdgeDistance
            );
        }

        if (reading is { ZipsSeam: true, Lap.Nanometres: > 0, Outline: { HasCorners: false } curved })
        {
            findings.Refuse(
                "Closure.Lap",
                "not-combinable",
                $"A lapped zipper in a seam needs straight sides, not outline {CushionValidator.Json(curved.Kind)}."
            );
        }

        if (kind == ClosureKind.Zipper && reading is { ZipsSeam: false, Lap: { } covered, Across: { } height } && covered >= height)
        {
            findings.RefuseRange(
                "Closure.Lap",
                "out-of-range",
                $"A lap must be less than the {order.Text(height)} that it lies across.",
                Length.Zero,
                height
            );
        }

        if (
            kind is ClosureKind.HookAndLoop or ClosureKind.Envelope or ClosureKind.Buttons or ClosureKind.Ties
            && reading is { Across: { } across, Overlap: { } overlap, Fold: { } fold }
        )
        {
            Overlapping(kind, reading, across, overlap, fold, findings);
        }
    }

    private static void Overlapping(ClosureKind kind, CushionReading reading, Length across, Length overlap, Length fold, Findings findings)
    {
        OrderReading order = findings.Reading;
        string field = reading.StripsAsSides ? "Closure.Strips" : "Closure.Overlap";
        if (kind == ClosureKind.Buttons && reading.ButtonDiameter is { } button && overlap < button)
        {
            findings.RefuseRange(
                field,
                "overlap-too-narrow",
                $"An overlap of {order.Text(overlap)} does not hold a button of {order.Text(button)}.",
                button,
                across
            );
        }

        if (kind == ClosureKind.HookAndLoop && reading.NarrowestOverlap is { } narrowest && overlap < narrowest)
        {
            string how = reading.StripsAsSides
                ? $"Strips cut as high as the sides overlap by {order.Text(overlap)} on a boxing of {order.Text(across)}; from {order.Text(across + narrowest - overlap)} upwards they reach"
                : $"An overlap of {order.Text(overlap)} is too narrow; it must be at least";
            findings.RefuseRange(
                field,
                "overlap-too-narrow",
                $"{how} {order.Text(narrowest)}, the tape's width and {order.Text(order.Practice.TapeMargin)} at each edge.",
                narrowest,
                across
            );
        }

        // Neither strip may reach past the other's seam.
        if (overlap > across || (overlap == across && reading.Side == Side.Bottom))
        {
            findings.RefuseRange(
                field,
                "overlap-too-deep",
                $"An overlap of {order.Text(overlap)} is deeper than the {order.Text(across)} that it lies across.",
                null,
                across
            );
        }
        else if (OverlappingClosure.VisibleHeight(across, overlap) is var visible && fold >= visible)
        {
            findings.RefuseRange(
                "Closure.Fold",
                "hem-too-deep",
                $"A hem of {order.Text(fold)} does not leave a strip that shows {order.Text(visible)} anything.",
                null,
                visible
            );
        }
        else if (2 * fold > visible)
        {
            findings.Warn(
                "Closure.Fold",
                "hem-eats-strip",
                $"A hem of {order.Text(fold)} covers more than half of a strip that shows {order.Text(visible)}."
            );
        }
    }
}
