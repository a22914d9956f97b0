namespace CushionService.Engine.Specifications.Trimmings;

/// <summary>How the strips of a welt lie on the fabric.</summary>
public enum WeltCut
{
    /// <summary>At 45° to both thread systems: true bias.</summary>
    Bias,

    /// <summary>Straight across the fabric.</summary>
    Crosswise,

    /// <summary>Along the fabric.</summary>
    Lengthwise,
}
