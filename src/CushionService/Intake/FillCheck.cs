using CushionService.Contract.Orders;
using CushionService.Engine.Materials;
using CushionService.Engine.Measures;
using CushionService.Engine.Patterns.Constructions;
using CushionService.Engine.Specifications;
using CushionService.Engine.Specifications.Fillings;
using CushionService.Engine.Specifications.Outlines;
using CushionService.Engine.Specifications.Shapes;

namespace CushionService.Intake;

/// <summary>Checks a fill against the cushion that it goes into.</summary>
internal static class FillCheck
{
    /// <summary>Whether the construction and the outline take the kind of fill.</summary>
    /// <param name="cushion">The cushion as written.</param>
    /// <param name="offer">What its construction offers.</param>
    /// <param name="findings">Takes what is wrong with the cushion.</param>
    public static void Kind(Cushion cushion, ConstructionOffer offer, Findings findings)
    {
        if (cushion.Fill is { Kind: FillKind.Foam } && !offer.HasBlock)
        {
            findings.Refuse("Fill.Kind", "not-combinable", ShapeTexts.NoFoam(offer.Kind));
        }

        // Forms are made as rectangles, circles and rolls (common practice, no source).
        if (
            cushion.Fill is { Kind: FillKind.Form }
            && cushion.Outline?.Kind is { } outline
            && (
                offer.Kind is Construction.Wedge or Construction.Pouf
                || outline is not (OutlineKind.Rectangle or OutlineKind.RoundedRectangle or OutlineKind.Circle)
            )
        )
        {
            findings.Refuse("Fill.Kind", "not-combinable", StockTexts.NoForm(offer.Kind, outline));
        }

        // A roll's form has a diameter and a length, which the cushion or the stock gives.
        if (cushion.Fill is { Kind: FillKind.Form, Width: not null } && offer.Kind == Construction.Bolster)
        {
            findings.NotApplicable("Fill.Width", FieldTexts.NotForConstruction("Width", offer.Kind));
        }
    }

    /// <summary>Whether a loose fill by weight fills the cushion.</summary>
    /// <param name="cushion">The cushion, specified.</param>
    /// <param name="findings">Takes what is wrong with the cushion.</param>
    public static void Weight(CushionSpecification cushion, Findings findings)
    {
        if (
            cushion.Fill is { Weight: { } weight, Density: { } density }
            && Filling.Least(cushion, density) is var least
            && weight.Grams < least.Grams
        )
        {
            // A weight is given in whole grams.
            var enough = new Mass(Math.Ceiling(least.Grams));
            findings.Refuse(
                "Fill.Weight",
                "out-of-range",
                StockTexts.LooseWeight(enough.Kilograms),
                new FindingRange((double)enough.Kilograms, null)
            );
        }
    }
}
