namespace CushionService.Engine.Specifications.Shapes;

/// <summary>Where the boxing's panels join.</summary>
public enum BoxingJoins
{
    /// <summary>A panel for each side, joined at the corners.</summary>
    Corners,

    /// <summary>One strip wraps the front and both sides; the closure section is at the back.</summary>
    Back,
}
