namespace CushionService.Engine.Patterns.Panels;

/// <summary>What a panel becomes.</summary>
public enum PartKind
{
    /// <summary>Nothing yet.</summary>
    None,

    /// <summary>The upper face.</summary>
    Top,

    /// <summary>The underside.</summary>
    Bottom,

    /// <summary>A strip of the boxing that runs round corners.</summary>
    Boxing,

    /// <summary>A panel on one side of the outline.</summary>
    Side,

    /// <summary>An end of a bolster.</summary>
    End,

    /// <summary>The tube of a bolster.</summary>
    Body,

    /// <summary>The panel that runs over the front of a waterfall.</summary>
    Main,

    /// <summary>The wall of a pouf.</summary>
    Wall,

    /// <summary>A sector of a pouf's top.</summary>
    Gore,

    /// <summary>The strip above a zipper.</summary>
    ZipperUpper,

    /// <summary>The strip below a zipper.</summary>
    ZipperLower,

    /// <summary>The strip that laps over at an overlapping closure.</summary>
    ClosureUpper,

    /// <summary>The strip under it.</summary>
    ClosureLower,

    /// <summary>A tie of the closure.</summary>
    ClosureTie,

    /// <summary>The covering of a cord.</summary>
    Welt,

    /// <summary>A flat strip that shows beyond a seam.</summary>
    FlatPiping,

    /// <summary>A gathered strip.</summary>
    Ruffle,

    /// <summary>A flat strip with mitred corners.</summary>
    Flange,

    /// <summary>A carrying handle.</summary>
    Handle,

    /// <summary>A tie that holds the cushion to a chair.</summary>
    Tie,

    /// <summary>A strap across the underside.</summary>
    Strap,

    /// <summary>A pocket sewn onto a side.</summary>
    Pocket,

    /// <summary>The round that covers a button.</summary>
    ButtonCover,

    /// <summary>A piece of the maker's own.</summary>
    Piece,
}
