namespace CushionService.Engine.Patterns.Panels;

/// <summary>How two edges are joined.</summary>
public enum SeamKind
{
    /// <summary>Right sides together, stitched on the seam line.</summary>
    Plain,

    /// <summary>The end of a strip joined to the next, stitched from raw edge to raw edge.</summary>
    StripJoin,

    /// <summary>Two edges sewn to the tapes of one zipper.</summary>
    Zipper,

    /// <summary>Gathered to the stated fullness and caught in a seam that joins the edges it is gathered to.</summary>
    Gathered,

    /// <summary>Laid flat into a seam that joins the edges it lies on to what is beyond.</summary>
    Inset,

    /// <summary>Stitched but for a gap in the middle, for turning and filling.</summary>
    Gap,
}
