namespace CushionService.Engine.Patterns.Panels;

/// <summary>Why a panel that shows the pattern does not carry it on, or not over all of its edges.</summary>
public enum MatchLimit
{
    /// <summary>It carries all that is asked of it.</summary>
    None,

    /// <summary>It runs round a curve, so that it is matched at one place alone.</summary>
    Curve,

    /// <summary>It runs round corners on from the front.</summary>
    RunsOn,

    /// <summary>It is a part of a joined strip that is matched elsewhere, and continues the pattern from there.</summary>
    Continues,

    /// <summary>The pattern is upright on it, and the face's does not run on over its edge.</summary>
    Upright,

    /// <summary>It lies on a slanted edge.</summary>
    Slant,

    /// <summary>Its corners and its side seams cut across the pattern.</summary>
    Corners,

    /// <summary>Its underside runs on from the front, upside down.</summary>
    Underside,
}
