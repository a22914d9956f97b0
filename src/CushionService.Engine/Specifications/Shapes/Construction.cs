namespace CushionService.Engine.Specifications.Shapes;

/// <summary>How a cushion is built.</summary>
public enum Construction
{
    /// <summary>Two faces joined by a boxing as high as the cushion is thick.</summary>
    Boxed,

    /// <summary>Two faces sewn to each other at the edge.</summary>
    KnifeEdge,

    /// <summary>Two sheets whose notched corners make the box: no boxing.</summary>
    Mitred,

    /// <summary>Two sheets with rounded corners that are gathered to the depth of the edge.</summary>
    GatheredCorner,

    /// <summary>One sheet over top, front and underside, with a panel at each side and the closure at the back.</summary>
    Waterfall,

    /// <summary>A roll: a body round the outline, its ends flat, gathered or tied.</summary>
    Bolster,

    /// <summary>A box that is lower at the front than at the back.</summary>
    Wedge,

    /// <summary>Two faces that stand out beyond a stitched line round the body.</summary>
    Flanged,

    /// <summary>A round floor cushion: a drum, or one whose top and wall are gored.</summary>
    Pouf,
}
