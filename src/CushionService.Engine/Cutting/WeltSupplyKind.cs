namespace CushionService.Engine.Cutting;

/// <summary>How the strips of a welt are cut.</summary>
public enum WeltSupplyKind
{
    /// <summary>Straight strips, joined on the slant.</summary>
    StraightStrips,

    /// <summary>Bias strips from selvedge to selvedge, cut side by side.</summary>
    BiasStrips,

    /// <summary>One continuous bias strip from a square.</summary>
    ContinuousSquare,
}
