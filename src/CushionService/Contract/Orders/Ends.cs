using CushionService.Engine.Specifications.Shapes;

namespace CushionService.Contract.Orders;

/// <summary>The ends of a bolster.</summary>
public sealed record Ends
{
    /// <summary>How they are closed; flat when left out.</summary>
    public BolsterEndKind? Kind { get; init; }

    /// <summary>Fabric that extends beyond each tie of tied ends; 6 in when left out.</summary>
    [LengthRange("1 in", "24 in", Default = "6 in, or 150 mm in a metric order")]
    public Measure? Tail { get; init; }

    /// <summary>Fabric turned in at each end that is gathered or tied; 3/4 in when left out.</summary>
    [LengthRange("1/4 in", "3 in", Default = "3/4 in, or 20 mm in a metric order")]
    public Measure? Turning { get; init; }
}
