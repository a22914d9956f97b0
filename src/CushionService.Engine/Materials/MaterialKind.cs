namespace CushionService.Engine.Materials;

/// <summary>What kind of thing a bought material is.</summary>
public enum MaterialKind
{
    /// <summary>Cloth from the bolt.</summary>
    Fabric,

    /// <summary>Foam, cut to size.</summary>
    Foam,

    /// <summary>Loose filling, by weight.</summary>
    LooseFill,

    /// <summary>A zipper, by length of chain.</summary>
    Zipper,

    /// <summary>Hook-and-loop tape, by length.</summary>
    HookAndLoopTape,

    /// <summary>Sewing thread, by length.</summary>
    Thread,

    /// <summary>Cord for a welt, by length.</summary>
    Cord,

    /// <summary>Webbing, by length.</summary>
    Webbing,

    /// <summary>Buttons, one by one.</summary>
    Button,

    /// <summary>Twine for tufts, by length.</summary>
    Twine,

    /// <summary>Anti-slip material, by area.</summary>
    AntiSlip,

    /// <summary>Eyelets, one by one.</summary>
    Eyelet,
}
