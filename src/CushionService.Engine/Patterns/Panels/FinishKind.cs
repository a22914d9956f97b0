namespace CushionService.Engine.Patterns.Panels;

/// <summary>What happens at a panel's edge.</summary>
public enum FinishKind
{
    /// <summary>Sewn to another edge.</summary>
    Seam,

    /// <summary>Turned under and sewn to a zipper.</summary>
    ZipperTurnUnder,

    /// <summary>Turned over and sewn down; joined to nothing.</summary>
    Hem,

    /// <summary>Turned in and caught by other stitching.</summary>
    TurnIn,

    /// <summary>Caught in a seam that joins other edges.</summary>
    Caught,

    /// <summary>Left as it is cut.</summary>
    Raw,

    /// <summary>Turned in, gathered on a thread and drawn up.</summary>
    Drawn,
}
