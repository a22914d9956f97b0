namespace CushionService.Engine.Patterns.Constructions;

/// <summary>A field of a cushion that belongs to some constructions and not to others.</summary>
public enum ConstructionField
{
    /// <summary>Finished length, end to end.</summary>
    Length,

    /// <summary>Finished thickness at the front.</summary>
    FrontThickness,

    /// <summary>The front, seen from the side.</summary>
    Front,

    /// <summary>How the ends are closed.</summary>
    Ends,

    /// <summary>The flange round the body.</summary>
    Flange,

    /// <summary>Number of gores.</summary>
    Gores,

    /// <summary>Channels in the top.</summary>
    Channels,

    /// <summary>How far the corners are drawn in.</summary>
    CornerTaper,

    /// <summary>A cover for the fill, within the cover.</summary>
    InnerCover,
}
