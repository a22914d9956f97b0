namespace CushionService.Engine.Patterns.Panels;

/// <summary>The way that the outside of an edge faces.</summary>
public enum EdgeFacing
{
    /// <summary>The lower edge of a panel.</summary>
    Down,

    /// <summary>The right edge of a panel.</summary>
    Right,

    /// <summary>The upper edge of a panel.</summary>
    Up,

    /// <summary>The left edge of a panel.</summary>
    Left,

    /// <summary>A slanted or curved edge.</summary>
    Aslant,
}
