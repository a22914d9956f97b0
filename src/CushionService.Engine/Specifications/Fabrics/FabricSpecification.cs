using System.Collections.Immutable;
using CushionService.Engine.Measures;
using CushionService.Engine.Specifications.Stocks;
using CushionService.Nesting;

namespace CushionService.Engine.Specifications.Fabrics;

/// <summary>A fabric on the bolt.</summary>
public sealed record FabricSpecification
{
    /// <summary>Distinct within the order.</summary>
    public required string Id { get; init; }

    /// <summary>A name for people; null where it has none.</summary>
    public string? Label { get; init; }

    /// <summary>What people call it: its label, or else its id.</summary>
    public string Name => Label ?? Id;

    /// <summary>Its place in the order, as a JSON Pointer.</summary>
    public string Pointer { get; init; } = "";

    /// <summary>Stated width, selvedge to selvedge.</summary>
    public required Length Width { get; init; }

    /// <summary>Width of each selvedge.</summary>
    public Length Selvedge { get; init; }

    /// <summary>Whether nap, pile or print run one way.</summary>
    public bool OneWay { get; init; }

    /// <summary>Whether it has a coating: it is not pressed, washed or pinned.</summary>
    public bool Coated { get; init; }

    /// <summary>Whether it has a pile, as velvet and corduroy have: it runs one way and is steamed from the back.</summary>
    public bool Pile { get; init; }

    /// <summary>Which way it runs on a cushion that does not say so itself.</summary>
    public Grain Grain { get; init; }

    /// <summary>The turns that keep the grain: none on one-way fabric, else a half turn.</summary>
    public Rotations Turns => OneWay ? Rotations.None : Rotations.HalfTurn;

    /// <summary>The motif's repeat as measured on the bolt; null for none.</summary>
    public RepeatSpecification? Repeat { get; init; }

    /// <summary>The motif's repeat as pieces are laid on it: after the wash, which takes its share of the repeat too; null for
    /// none.</summary>
    /// <remarks>Pieces are cut after washing, so the repeat R that they are matched to is R × (1 − p), both ways (general
    /// arithmetic).</remarks>
    public RepeatSpecification? LaidRepeat => Repeat?.Washed(LengthShrinkage, WidthShrinkage);

    /// <summary>Share of its length that it loses in the wash, from 0 up to but not including 1.</summary>
    public Fraction LengthShrinkage { get; init; }

    /// <summary>Share of its width that it loses in the wash, from 0 up to but not including 1.</summary>
    public Fraction WidthShrinkage { get; init; }

    /// <summary>Whether anyone has stated what it loses in the wash, were it nothing.</summary>
    public bool IsShrinkageKnown { get; init; } = true;

    /// <summary>Length lost to squaring the ends.</summary>
    public Length Squaring { get; init; }

    /// <summary>How it is sold.</summary>
    public required SaleRule Sold { get; init; }

    /// <summary>What one unit of sale costs; null when unknown.</summary>
    public ItemPriceSpecification? Price { get; init; }

    /// <summary>Whether the customer brings it: how much is asked for, and it has no price.</summary>
    public bool CustomerOwned { get; init; }

    /// <summary>The length that the customer has brought; null where it is not known, or not the customer's.</summary>
    public Length? Brought { get; init; }

    /// <summary>Its colour in pictures, a number sign and six hexadecimal digits; null when not given.</summary>
    public string? Colour { get; init; }

    /// <summary>The dye lot of its bolt, and of offcuts that name none; null when unknown.</summary>
    public string? Lot { get; init; }

    /// <summary>What one has of it, for a fit; empty when it is to be bought.</summary>
    public ImmutableArray<OffcutSpecification> OnHand { get; init; } = [];

    /// <summary>The width that pieces can be laid on: without selvedges, after shrinkage, down to the nanometre.</summary>
    /// <remarks>Usable width is the stated width less two selvedges (common practice, no source); what is washed before cutting
    /// keeps the share 1 − p.</remarks>
    public Length UsableWidth =>
        WidthShrinkage.Numerator == 0
            ? Width - 2 * Selvedge
            : Length.FromNanometres(Kept(WidthShrinkage).FloorOf((Width - 2 * Selvedge).Nanometres));

    /// <summary>The share that is left after a loss.</summary>
    public static Fraction Kept(Fraction loss) => Fraction.Of(loss.Denominator - loss.Numerator, loss.Denominator);
}
