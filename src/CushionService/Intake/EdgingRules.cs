using CushionService.Contract.Orders;
using CushionService.Engine.Measures;
using CushionService.Engine.Patterns;
using CushionService.Engine.Specifications;
using CushionService.Engine.Specifications.Trimmings;

namespace CushionService.Intake;

/// <summary>Whether a cushion can bear its edging, and whether that is wise.</summary>
internal static class EdgingRules
{
    public static void Check(Cushion cushion, CushionReading reading, Findings findings)
    {
        if (cushion.Edging is not { Kind: { } kind } edging || reading.Offer is not { } offer || kind == EdgingKind.Plain)
        {
            return;
        }

        if (offer.EdgingOf(kind) is not { } takes)
        {
            findings.Refuse(
                "Edging.Kind",
                "not-combinable",
                $"Construction {CushionValidator.Json(offer.Kind)} does not take an edging {CushionValidator.Json(kind)}."
            );
            return;
        }

        foreach ((int i, EdgingPlace place) in (edging.At ?? []).Index())
        {
            if (!takes.Places.Contains(place))
            {
                findings.Refuse(
                    $"Edging.At[{i}]",
                    "not-combinable",
                    $"On construction {CushionValidator.Json(offer.Kind)} a {CushionValidator.Json(kind)} stands at: {string.Join(", ", takes.Places.Select(at => CushionValidator.Json(at)))}."
                );
            }
            else if (place == EdgingPlace.Corners && reading is { Joins: BoxingJoins.Back, Offer.Joins.IsEmpty: false })
            {
                findings.Refuse($"Edging.At[{i}]", "not-combinable", "An edging at the corners needs a boxing that joins at the corners.");
            }
        }

        SeamsAllow(edging, reading, findings);
        if (kind == EdgingKind.Welt)
        {
            Welt(edging, reading, findings);
        }
        else if (kind == EdgingKind.Flange)
        {
            Flange(edging, reading, findings);
        }

        if (cushion.CornerTaper is not null)
        {
            findings.Warn("CornerTaper", "tapered-edging", "Corners with an edging are not drawn in; it would not lie flat.");
        }
    }

    private static void SeamsAllow(Edging edging, CushionReading reading, Findings findings)
    {
        if (reading.HasOpenEnds)
        {
            findings.Refuse("Edging.Kind", "not-combinable", "Ends that are gathered or tied have no seam for an edging.");
        }

        if (reading.IsSharp && edging.At is { } at && at.Contains(EdgingPlace.Top) && at.Contains(EdgingPlace.Bottom))
        {
            findings.Refuse(
                "Edging.At",
                "not-combinable",
                "Top and bottom of a wedge that ends in an edge meet there; only one of them can have an edging."
            );
        }
    }

    private static void Flange(Edging edging, CushionReading reading, Findings findings)
    {
        OrderReading order = findings.Reading;
        if (reading.Outline is { HasCorners: false } curved)
        {
            findings.Refuse(
                "Edging.Kind",
                "not-combinable",
                $"A flat flange cannot follow the curves of outline {CushionValidator.Json(curved.Kind)}."
            );
        }
        else if (reading.Outline is { } outline && order.Length(edging.Depth) is { } depth && !FlangeStrip.Fits(outline, depth))
        {
            findings.Refuse(
                "Edging.Depth",
                "out-of-range",
                $"A flange of {order.Text(depth)} is used up between the corners of its shortest side."
            );
        }
    }

    private static void Welt(Edging edging, CushionReading reading, Findings findings)
    {
        OrderReading order = findings.Reading;
        if (edging.Cut is WeltCut.Crosswise or WeltCut.Lengthwise && reading.Outline is { HasCorners: false })
        {
            findings.Warn("Edging.Cut", "straight-welt-on-curve", "A straight-cut welt puckers on a curve; cut it on the bias.");
        }

        if (TrimReading.Cord(edging, order) is not { } cord)
        {
            return;
        }

        // The visible cords of both seams stand out of the boxing, half a diameter each.
        if (
            reading.Thickness is { } thickness
            && TrimReading.Places(edging, reading).Count(place => place != EdgingPlace.Corners) * cord
                > Length.FromNanometres(thickness.Nanometres / 2)
        )
        {
            findings.Warn(
                "Edging.CordDiameter",
                "cord-thick-for-boxing",
                $"Cord of {order.Text(cord)} leaves less than half of a boxing of {order.Text(thickness)} to be seen."
            );
        }

        if (reading.SeamAllowance is { } seam && cord > 2 * seam)
        {
            findings.Warn(
                "Edging.CordDiameter",
                "cord-thick-for-seam",
                $"Cord of {order.Text(cord)} is hard to sew close to with a seam allowance of {order.Text(seam)}."
            );
        }
    }
}
