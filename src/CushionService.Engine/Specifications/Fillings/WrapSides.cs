namespace CushionService.Engine.Specifications.Fillings;

/// <summary>Which sides of a block of foam a wrap covers. The left and right sides take half of it down from the top and half up from
/// below, except where the whole skin is covered piece by piece.</summary>
public enum WrapSides
{
    /// <summary>Top, front and underside; the back is left bare for the closure.</summary>
    ThreeSides,

    /// <summary>Top, front, underside and back.</summary>
    FourSides,

    /// <summary>Every face of the block, each with a piece of its own.</summary>
    WholeSkin,
}
