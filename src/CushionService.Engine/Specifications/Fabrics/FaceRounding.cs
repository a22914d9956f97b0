namespace CushionService.Engine.Specifications.Fabrics;

/// <summary>How the cut sizes of rectangular faces meet the cutting step. Every other part is rounded up.</summary>
public enum FaceRounding
{
    /// <summary>Up, so that no piece is cut too small.</summary>
    Up,

    /// <summary>To the nearest, so that the fit is kept.</summary>
    Nearest,
}
