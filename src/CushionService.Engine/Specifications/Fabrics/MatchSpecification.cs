namespace CushionService.Engine.Specifications.Fabrics;

/// <summary>Which parts of a cushion are matched to the repeat of their fabric.</summary>
/// <param name="Faces">The faces.</param>
/// <param name="Underside">The underside, where the faces are matched.</param>
/// <param name="Boxing">The boxing; it carries the faces' pattern, so it is free where they are.</param>
public sealed record MatchSpecification(FaceMatch Faces, UndersideMatch Underside, BoxingMatch Boxing)
{
    /// <summary>Centred faces, the underside as the top, and the boxing at the front (common practice, no source).</summary>
    public static MatchSpecification Usual { get; } = new(FaceMatch.Centred, UndersideMatch.AsTop, BoxingMatch.Front);
}
