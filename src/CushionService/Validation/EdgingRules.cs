using CushionService.Contract.Orders;
using CushionService.Engine.Measures;
using CushionService.Engine.Specifications;
using CushionService.Specifying;
using FluentValidation;

namespace CushionService.Validation;

/// <summary>Whether a cushion can bear its edging, and whether that is wise.</summary>
internal static class EdgingRules
{
    public static void Check(Cushion cushion, CushionReading reading, ValidationContext<Cushion> context)
    {
        if (cushion.Edging is not { Kind: { } kind } edging || reading.Offer is not { } offer || kind == EdgingKind.Plain)
        {
            return;
        }

        if (offer.Edgings.IsEmpty)
        {
            context.Refuse("Edging.Kind", "not-combinable", $"Construction {CushionValidator.Json(offer.Kind)} does not take an edging.");
            return;
        }

        foreach ((int i, EdgingPlace place) in (edging.At ?? []).Index())
        {
            if (!offer.Edgings.Contains(place))
            {
                context.Refuse($"Edging.At[{i}]", "not-combinable",
                    $"On construction {CushionValidator.Json(offer.Kind)} an edging stands at: {string.Join(", ", offer.Edgings.Select(at => CushionValidator.Json(at)))}.");
            }
        }

        if (kind == EdgingKind.Welt)
        {
            Welt(edging, reading, context);
        }
    }

    private static void Welt(Edging edging, CushionReading reading, ValidationContext<Cushion> context)
    {
        OrderReading order = context.Reading();
        if (edging.Cut is WeltCut.Crosswise or WeltCut.Lengthwise && reading.Outline is { HasCorners: false })
        {
            context.Warn("Edging.Cut", "straight-welt-on-curve", "A straight-cut welt puckers on a curve; cut it on the bias.");
        }

        if (TrimReading.Cord(edging, order) is not { } cord)
        {
            return;
        }

        // The visible cords of both seams stand out of the boxing, half a diameter each.
        if (reading.Thickness is { } thickness && TrimReading.Places(edging, reading).Length * cord > Length.FromNanometres(thickness.Nanometres / 2))
        {
            context.Warn("Edging.CordDiameter", "cord-thick-for-boxing", $"Cord of {order.Text(cord)} leaves less than half of a boxing of {order.Text(thickness)} to be seen.");
        }

        if (reading.SeamAllowance is { } seam && cord > 2 * seam)
        {
            context.Warn("Edging.CordDiameter", "cord-thick-for-seam", $"Cord of {order.Text(cord)} is hard to sew close to with a seam allowance of {order.Text(seam)}.");
        }
    }
}
