using CushionService.Engine.Specifications.Fabrics;

namespace CushionService.Contract.Orders;

/// <summary>Which parts of a cushion are matched to the repeat of their fabric.</summary>
public sealed record Matching
{
    /// <summary>The faces; centred when left out.</summary>
    public FaceMatch? Faces { get; init; }

    /// <summary>The underside; as the top when left out.</summary>
    public UndersideMatch? Underside { get; init; }

    /// <summary>The boxing; at the front when left out, free where the faces are free.</summary>
    public BoxingMatch? Boxing { get; init; }
}
