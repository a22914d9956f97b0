using CushionService.Engine.Measures;

namespace CushionService.Engine.Specifications.Practices;

/// <summary>The stitch that a workroom sews its seams with.</summary>
/// <param name="Type">Its type.</param>
/// <param name="StitchLength">Length of one stitch, above zero.</param>
/// <param name="Thickness">Thickness of what is sewn, all layers together.</param>
/// <param name="Bight">Width of the overedge; zero for a stitch without one.</param>
public sealed record StitchSpecification(StitchType Type, Length StitchLength, Length Thickness, Length Bight)
{
    /// <summary>Whether the type has an overedge, and so a width.</summary>
    public static bool HasBight(StitchType type) => type is StitchType.Overedge or StitchType.SafetyStitch;
}
