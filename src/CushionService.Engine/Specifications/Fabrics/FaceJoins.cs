namespace CushionService.Engine.Specifications.Fabrics;

/// <summary>What is done with a face that is wider than its fabric.</summary>
public enum FaceJoins
{
    /// <summary>It is refused.</summary>
    Refuse,

    /// <summary>It is joined from a centre panel and two side panels.</summary>
    Allow,
}
