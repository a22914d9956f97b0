namespace CushionService.Nesting.Rectangles.Proofs;

/// <summary>The families of dual feasible functions. Each gives a number to an extent, and to the whole, such that extents which fit side
/// by side into the whole never add up to more than the whole's number.</summary>
internal enum DualRule
{
    /// <summary>The extent itself.</summary>
    Extent,

    /// <summary>u of Fekete and Schepers 2001: an extent counts as the part of the whole that a number of equal parts give it.</summary>
    Multiple,

    /// <summary>The threshold function of Martello, Monaci and Vigo 2003: small extents count nothing, those that leave room for small ones
    /// only count as the whole.</summary>
    Threshold,

    /// <summary>The rounding function of Carlier, Clautiaux and Moukrim 2007: extents count in whole multiples of a parameter, those above
    /// half of the whole by what they leave.</summary>
    Rounding,
}
