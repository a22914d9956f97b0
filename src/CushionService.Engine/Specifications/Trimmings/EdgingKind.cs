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
}
