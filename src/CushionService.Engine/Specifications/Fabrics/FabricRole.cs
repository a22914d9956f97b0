namespace CushionService.Engine.Specifications.Fabrics;

/// <summary>The part of a cushion that a fabric dresses.</summary>
public enum FabricRole
{
    /// <summary>The top face.</summary>
    Top,

    /// <summary>The bottom face.</summary>
    Bottom,

    /// <summary>Every side panel, the closure's strips too.</summary>
    Sides,

    /// <summary>The handle.</summary>
    Handle,

    /// <summary>The welt or the ruffle.</summary>
    Edging,

    /// <summary>The ties.</summary>
    Ties,

    /// <summary>The straps.</summary>
    Straps,

    /// <summary>The pocket.</summary>
    Pocket,

    /// <summary>The covers of buttons.</summary>
    Buttons,

    /// <summary>The inner cover, which holds a loose fill.</summary>
    InnerCover,
}
