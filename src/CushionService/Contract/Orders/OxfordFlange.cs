using System.ComponentModel.DataAnnotations;
using CushionService.Engine.Specifications.Shapes;

namespace CushionService.Contract.Orders;

/// <summary>The flange round the body of a flanged cushion.</summary>
public sealed record OxfordFlange
{
    /// <summary>Whether each face's flange is single or folded back on itself; single when left out.</summary>
    public FlangeLayers? Layers { get; init; }

    /// <summary>Finished width.</summary>
    [Required]
    [LengthRange("1/4 in", "12 in")]
    public Measure? Width { get; init; }

    /// <summary>Fabric turned under behind a double flange; 1/2 in when left out.</summary>
    [LengthRange("1/8 in", "2 in", Default = "1/2 in, or 13 mm in a metric order")]
    public Measure? Turning { get; init; }
}
