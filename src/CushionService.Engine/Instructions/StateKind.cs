namespace CushionService.Engine.Instructions;

/// <summary>What a piece of work leaves done.</summary>
internal enum StateKind
{
    /// <summary>What is cut off the pieces by their marks is off.</summary>
    Trimmed,

    /// <summary>The raw edges of the pieces are finished.</summary>
    RawEdges,

    /// <summary>The strips or panels that a part is joined from are one.</summary>
    Joined,

    /// <summary>A hem of the part is stitched.</summary>
    Hemmed,

    /// <summary>The edges of the closure are sewn beyond its ends.</summary>
    Begun,

    /// <summary>The closure of the unit is in: what it divides is one again.</summary>
    Fastened,

    /// <summary>The unit is stay-stitched, quilted and tapered.</summary>
    Shaped,

    /// <summary>The edges of the unit are gathered or pleated to the length of what they are sewn to.</summary>
    Drawn,

    /// <summary>The zipper is as long as it is set in.</summary>
    Cut,

    /// <summary>Handles, pockets and eyelets are on the unit.</summary>
    Mounted,

    /// <summary>The base lies on the unit.</summary>
    Based,

    /// <summary>A loose part is ready to be basted on: the welt, the ruffle, the ties.</summary>
    Made,

    /// <summary>The edging is basted to the unit.</summary>
    Edged,

    /// <summary>Ties and straps are basted to the unit.</summary>
    Tied,

    /// <summary>The unit is closed to a loop.</summary>
    Looped,

    /// <summary>A seam is sewn, by its number in the pattern.</summary>
    Sewn,

    /// <summary>The cover is turned right side out.</summary>
    Turned,

    /// <summary>The line round the body is stitched, or the ends are drawn up.</summary>
    Lined,

    /// <summary>The foam is cut and wrapped.</summary>
    Prepared,

    /// <summary>The cover is filled.</summary>
    Filled,

    /// <summary>The opening is closed.</summary>
    Closed,
}
