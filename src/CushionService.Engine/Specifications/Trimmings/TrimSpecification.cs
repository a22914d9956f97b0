using CushionService.Engine.Specifications.Fabrics;
using CushionService.Engine.Specifications.Outlines;

namespace CushionService.Engine.Specifications.Trimmings;

/// <summary>What is added to a cover whatever its construction.</summary>
public sealed record TrimSpecification
{
    /// <summary>Nothing.</summary>
    public static TrimSpecification None { get; } = new();

    /// <summary>The edging in the seams; null for plain seams.</summary>
    public EdgingSpecification? Edging { get; init; }

    /// <summary>Ties; null for none.</summary>
    public TieSpecification? Ties { get; init; }

    /// <summary>Straps across the underside; null for none.</summary>
    public StrapSpecification? Straps { get; init; }

    /// <summary>Tufts; null for none.</summary>
    public TuftSpecification? Tufts { get; init; }

    /// <summary>A pocket; null for none.</summary>
    public PocketSpecification? Pocket { get; init; }

    /// <summary>What is on the underside.</summary>
    public BaseKind Base { get; init; }

    /// <summary>How many eyelets let the air out of coated fabric, on the side named by <see cref="VentSide"/>; 0 for none.</summary>
    public int Vents { get; init; }

    /// <summary>The side of the boxing that has the vents.</summary>
    public Side VentSide { get; init; } = Side.Back;

    /// <summary>What is done with a face that is wider than its fabric.</summary>
    public FaceJoins FaceJoins { get; init; }
}
