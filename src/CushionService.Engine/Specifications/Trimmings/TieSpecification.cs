using CushionService.Engine.Measures;
using CushionService.Engine.Specifications.Outlines;

namespace CushionService.Engine.Specifications.Trimmings;

/// <summary>Ties, two by two in the seam of a side.</summary>
/// <param name="Pairs">How many pairs, at least 1.</param>
/// <param name="Side">The side in whose seam they are caught.</param>
/// <param name="Length">Finished length of each.</param>
/// <param name="Width">Finished width.</param>
/// <param name="Make">How each is made.</param>
public sealed record TieSpecification(int Pairs, Side Side, Length Length, Length Width, StrapMake Make)
{
    /// <summary>Fabric turned in at the free end: 1/2 in (common practice, no source).</summary>
    public static Length EndFold { get; } = Length.FromInches(0.5m);

    /// <summary>Seam of a tube: 1/4 in (common practice, no source).</summary>
    public static Length TubeSeam { get; } = Length.FromInches(0.25m);

    /// <summary>How far the outermost pairs stand from the ends of their side: 1 in (common practice, no source).</summary>
    public static Length FromCorner { get; } = Length.FromInches(1);
}
