namespace CushionService.Engine.Patterns.Panels;

/// <summary>What a mark on a cut piece is.</summary>
public enum MarkKind
{
    /// <summary>A notch in the seam allowance, to be matched with the one it will meet.</summary>
    Notch,

    /// <summary>Where an end of a handle is sewn down.</summary>
    HandleEnd,

    /// <summary>A line along which the piece is folded.</summary>
    FoldLine,

    /// <summary>A line along which the piece is cut further.</summary>
    CutLine,

    /// <summary>Where the end of a tie or a strap is caught in the seam.</summary>
    TieEnd,

    /// <summary>Where a tuft goes through.</summary>
    Tuft,

    /// <summary>Where an eyelet is set.</summary>
    Vent,

    /// <summary>Where a button is sewn on, or its hole begins.</summary>
    Button,

    /// <summary>A corner of the seam line, where stitching turns.</summary>
    SeamDot,

    /// <summary>A line that is stitched along.</summary>
    StitchLine,

    /// <summary>A line along which a corner is trimmed before it is sewn.</summary>
    TaperLine,

    /// <summary>An arrow that points up, on fabric that may not be turned.</summary>
    UpArrow,

    /// <summary>Where to write which face of a lopsided cushion it is.</summary>
    FaceName,

    /// <summary>Two notches side by side, at the back alone, so that a face cannot be sewn in the wrong way round.</summary>
    DoubleNotch,

    /// <summary>Where the opening for a zipper in a seam starts or stops.</summary>
    ZipperStop,
}
