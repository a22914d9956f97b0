namespace CushionService.Engine.Specifications.Shapes;

/// <summary>How the ends of a bolster are closed.</summary>
public enum BolsterEndKind
{
    /// <summary>A panel of the bolster's outline is sewn into each end.</summary>
    Flat,

    /// <summary>The body runs on to the middle of each end and is gathered there.</summary>
    Gathered,

    /// <summary>The body runs on beyond each end and is tied, like a wrapped sweet.</summary>
    Tied,
}
