namespace CushionService.Engine.Specifications.Outlines;

/// <summary>A side or face of a cushion, as one looks down on it with the front towards one.</summary>
public enum Side
{
    /// <summary>The side towards the person.</summary>
    Front,

    /// <summary>The right side.</summary>
    Right,

    /// <summary>The side away from the person.</summary>
    Back,

    /// <summary>The left side.</summary>
    Left,

    /// <summary>The underside.</summary>
    Bottom,
}
