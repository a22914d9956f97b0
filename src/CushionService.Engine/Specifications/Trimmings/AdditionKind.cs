namespace CushionService.Engine.Specifications.Trimmings;

/// <summary>What may be added to a cover besides its handle and its edging.</summary>
public enum AdditionKind
{
    /// <summary>Ties in a seam.</summary>
    Ties,

    /// <summary>Straps across the underside.</summary>
    Straps,

    /// <summary>Tufts.</summary>
    Tufts,

    /// <summary>A pocket on the boxing.</summary>
    Pocket,

    /// <summary>An anti-slip base.</summary>
    Base,

    /// <summary>Eyelets that let the air out.</summary>
    Vents,
}
