namespace CushionService.Engine.Specifications;

/// <summary>How the strips of a welt lie on the cloth.</summary>
public enum WeltCut
{
    /// <summary>At 45° to both thread systems: true bias.</summary>
    Bias,

    /// <summary>Straight across the cloth.</summary>
    Crosswise,

    /// <summary>Along the cloth.</summary>
    Lengthwise,
}
