namespace CushionService.Engine.Specifications.Closures;

/// <summary>How high the two hemmed strips of a hook-and-loop closure are cut.</summary>
public enum HookAndLoopStrips
{
    /// <summary>As high as the overlap asks.</summary>
    ByOverlap,

    /// <summary>As high as the other sides, a common shortcut; the overlap is what that leaves.</summary>
    AsSides,
}
