namespace CushionService.Engine.Specifications.Stocks;

/// <summary>What kind of thing a bought material is.</summary>
public enum MaterialKind
{
    /// <summary>Fabric from the bolt.</summary>
    Fabric,

    /// <summary>Foam, in sheets or cut to size.</summary>
    Foam,

    /// <summary>Loose filling, by weight.</summary>
    LooseFill,

    /// <summary>Zippers, by length of chain or closed at their ends.</summary>
    Zipper,

    /// <summary>Hook-and-loop tape, by length; one length is hook and as much loop.</summary>
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

    /// <summary>Anti-slip material, by area, or by length off a roll.</summary>
    AntiSlip,

    /// <summary>Eyelets, one by one.</summary>
    Eyelet,

    /// <summary>Batting to wrap foam, by length off a roll.</summary>
    Batting,

    /// <summary>Sliders for zipper chain, one by one.</summary>
    Slider,

    /// <summary>Adhesive for layers of foam, by the area that it covers.</summary>
    Adhesive,

    /// <summary>Tape that binds raw edges, by length.</summary>
    Binding,

    /// <summary>Ready-made forms: filled pads, one by one.</summary>
    Form,

    /// <summary>Cord with a lip, by length.</summary>
    LipCord,

    /// <summary>Fringe, by length.</summary>
    Fringe,

    /// <summary>Flat braid, by length.</summary>
    Gimp,
}
