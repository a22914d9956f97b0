namespace CushionService.Engine.Specifications.Trimmings;

/// <summary>Work that a cushion takes besides its construction and its closure.</summary>
public enum Addition
{
    /// <summary>An outline that is curved all round.</summary>
    Round,

    /// <summary>Welt, for each loop of it.</summary>
    Welt,

    /// <summary>A ruffle, for each loop of it.</summary>
    Ruffle,

    /// <summary>Flat piping, for each loop of it.</summary>
    FlatPiping,

    /// <summary>A bought trim, for each loop of it.</summary>
    BoughtTrim,

    /// <summary>Topstitching, for each loop of it.</summary>
    Topstitching,

    /// <summary>A French seam.</summary>
    FrenchSeam,

    /// <summary>Channels, for each.</summary>
    Channel,

    /// <summary>Tufts, for each.</summary>
    Tuft,

    /// <summary>Ties, for each pair.</summary>
    Tie,

    /// <summary>Straps, for each.</summary>
    Strap,

    /// <summary>A handle.</summary>
    Handle,

    /// <summary>A pocket.</summary>
    Pocket,

    /// <summary>Eyelets, for each.</summary>
    Eyelet,

    /// <summary>An anti-slip base.</summary>
    AntiSlip,

    /// <summary>An inner cover.</summary>
    InnerCover,
}
