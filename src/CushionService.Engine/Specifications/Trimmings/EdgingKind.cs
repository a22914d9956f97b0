namespace CushionService.Engine.Specifications.Trimmings;

/// <summary>The kind of edging in the seam round a face.</summary>
public enum EdgingKind
{
    /// <summary>Nothing: a plain seam.</summary>
    Plain,

    /// <summary>A cord in a wrapped strip of fabric.</summary>
    Welt,

    /// <summary>A gathered strip.</summary>
    Ruffle,

    /// <summary>A flat strip, folded lengthwise and mitred at the corners.</summary>
    Flange,

    /// <summary>A flat strip, folded lengthwise, without a cord.</summary>
    FlatPiping,

    /// <summary>Bought cord with a lip that is caught in the seam.</summary>
    LipCord,

    /// <summary>Bought fringe.</summary>
    Fringe,

    /// <summary>Bought flat braid, sewn on along the seam.</summary>
    Gimp,

    /// <summary>Rows of stitching beside the seam.</summary>
    Topstitched,

    /// <summary>A seam sewn twice, its raw edges enclosed.</summary>
    FrenchSeam,
}
