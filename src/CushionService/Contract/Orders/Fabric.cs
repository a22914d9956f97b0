using System.ComponentModel.DataAnnotations;
using CushionService.Engine.Specifications.Fabrics;

namespace CushionService.Contract.Orders;

/// <summary>A fabric on the bolt.</summary>
public sealed record Fabric
{
    /// <summary>Names the fabric within the order.</summary>
    [Required]
    [RegularExpression(Identifier.Pattern)]
    public string? Id { get; init; }

    /// <summary>A name for people; at most 200 characters; a blank one counts as none.</summary>
    [MaxLength(200)]
    public string? Label
    {
        get;
        init => field = string.IsNullOrWhiteSpace(value) ? null : value;
    }

    /// <summary>Stated width, selvedge to selvedge.</summary>
    [Required]
    [LengthRange("4 in", "240 in")]
    public Measure? Width { get; init; }

    /// <summary>Width of each selvedge that cannot be used; nothing when left out.</summary>
    [LengthRange("0 in", "4 in", Default = "0 in")]
    public Measure? Selvedge { get; init; }

    /// <summary>Whether nap, pile or print run one way, so that all pieces of a cushion lie the same way up.</summary>
    public bool? OneWay { get; init; }

    /// <summary>Which way it runs on cushions that do not say so themselves; up the bolt when left out.</summary>
    public Grain? Grain { get; init; }

    /// <summary>The repeat of its motif, to which cushions are matched; none when left out.</summary>
    public Repeat? Repeat { get; init; }

    /// <summary>How much it shrinks when washed before cutting; nothing when left out.</summary>
    public Shrinkage? Shrinkage { get; init; }

    /// <summary>Length lost to squaring the ends; the workroom's when left out.</summary>
    [LengthRange("0 in", "36 in", Default = "the workroom's")]
    public Measure? Squaring { get; init; }

    /// <summary>What the price book names it by; its id when left out.</summary>
    [RegularExpression(Identifier.Pattern)]
    public string? Item { get; init; }

    /// <summary>How it is sold; needed unless the order's price book says it.</summary>
    public Sale? Sold { get; init; }

    /// <summary>Whether it is coated, so that air does not pass through it; not when left out.</summary>
    public bool? Coated { get; init; }

    /// <summary>Whether it has a pile, as velvet and corduroy have; then it is one-way. Not when left out.</summary>
    public bool? Pile { get; init; }

    /// <summary>What it weighs, in grams a square metre, selvedges and all; needed where it is sold by weight.</summary>
    [NumberRange(10, 5000)]
    public double? Weight { get; init; }

    /// <summary>Its price; the price book's when left out, and without one the cost leaves it out, saying so.</summary>
    public Price? Price { get; init; }

    /// <summary>Its colour, for pictures only; pictures tell it from others by a hatch when left out.</summary>
    [RegularExpression(HexColour.Pattern)]
    public string? Colour { get; init; }

    /// <summary>The dye lot of the bolt, and of fabric on hand that names none; at most 64 characters.</summary>
    [MaxLength(64)]
    public string? Lot { get; init; }

    /// <summary>Whether the customer brings it: the quantity is what to ask for, and it has no price. Not when left out.</summary>
    public bool? CustomerOwned { get; init; }

    /// <summary>The length that the customer has brought, which is checked against what the order takes; of a fabric that is customer
    /// owned only.</summary>
    [LengthRange("1 in", "20000 in")]
    public Measure? Brought { get; init; }

    /// <summary>What one has of it; in a fit only.</summary>
    [NumberRange(1, 20)]
    public IReadOnlyList<Offcut>? OnHand { get; init; }
}
