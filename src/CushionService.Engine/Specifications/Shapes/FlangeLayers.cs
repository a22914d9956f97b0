namespace CushionService.Engine.Specifications.Shapes;

/// <summary>How a flange is made.</summary>
public enum FlangeLayers
{
    /// <summary>The two faces are sewn at the outer edge, turned, and stitched round the body.</summary>
    Single,

    /// <summary>Each face is folded back behind its own flange, its corners mitred.</summary>
    Double,
}
