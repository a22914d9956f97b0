namespace CushionService.Engine.Geometry;

/// <summary>A word of an edge's name. The order is of no meaning; <see cref="EdgeName"/> puts words together.</summary>
public enum EdgeWord : byte
{
    /// <summary>No word.</summary>
    None,

    /// <summary>Towards the one who sits.</summary>
    Front,

    /// <summary>On the right, seen from the front.</summary>
    Right,

    /// <summary>Away from the one who sits.</summary>
    Back,

    /// <summary>On the left, seen from the front.</summary>
    Left,

    /// <summary>A side of a polygon, by its number.</summary>
    Side,

    /// <summary>The rim of a gore, by its number.</summary>
    Gore,

    /// <summary>The outer side of a tee's ear.</summary>
    Ear,

    /// <summary>Where an outline steps in.</summary>
    Step,

    /// <summary>An edge inside an outline's extent, or nearer to the body.</summary>
    Inner,

    /// <summary>An edge away from the body.</summary>
    Outer,

    /// <summary>Where a strip ends, or the end of an arm.</summary>
    End,

    /// <summary>Where a strip begins.</summary>
    Start,

    /// <summary>Where a closure's section runs on round a corner.</summary>
    Return,

    /// <summary>At the top face.</summary>
    Top,

    /// <summary>At the bottom face.</summary>
    Bottom,

    /// <summary>The upper edge of a panel as it lies.</summary>
    Upper,

    /// <summary>The lower edge of a panel as it lies.</summary>
    Lower,

    /// <summary>Between two others.</summary>
    Middle,

    /// <summary>A slanted edge that becomes half of a mitre.</summary>
    Mitre,

    /// <summary>The other half.</summary>
    Other,

    /// <summary>A second stretch of an edge that a line has divided.</summary>
    Again,

    /// <summary>The round edge of a sector.</summary>
    Rim,

    /// <summary>What lies over or under another edge.</summary>
    Lap,

    /// <summary>The first of two.</summary>
    First,

    /// <summary>The second of two.</summary>
    Second,
}
