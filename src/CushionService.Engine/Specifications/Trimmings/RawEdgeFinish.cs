namespace CushionService.Engine.Specifications.Trimmings;

/// <summary>What is done to raw edges so that a cover can be washed without fraying.</summary>
public enum RawEdgeFinish
{
    /// <summary>Sewn over with an overedge stitch, ISO 4915 type 504.</summary>
    Overedge,

    /// <summary>Sewn over with a zigzag stitch.</summary>
    Zigzag,

    /// <summary>Cut with pinking shears.</summary>
    Pinked,

    /// <summary>Bound with tape.</summary>
    Bound,

    /// <summary>Left as they are cut.</summary>
    None,
}
