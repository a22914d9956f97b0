namespace CushionService.Engine.Instructions;

/// <summary>A tool that a step asks for.</summary>
public enum Tool
{
    /// <summary>A long ruler, and a square.</summary>
    Ruler,

    /// <summary>Chalk or a marking pen that comes out again.</summary>
    Marker,

    /// <summary>Fabric shears, or a rotary cutter.</summary>
    Shears,

    /// <summary>A tape measure.</summary>
    TapeMeasure,

    /// <summary>An iron.</summary>
    Iron,

    /// <summary>A steamer, or an iron with steam.</summary>
    Steamer,

    /// <summary>A sewing machine.</summary>
    SewingMachine,

    /// <summary>Pins.</summary>
    Pins,

    /// <summary>Sewing clips.</summary>
    Clips,

    /// <summary>A sharp machine needle, for coated fabric.</summary>
    SharpNeedle,

    /// <summary>A universal machine needle.</summary>
    UniversalNeedle,

    /// <summary>An overedge machine, or an overedge stitch.</summary>
    OveredgeMachine,

    /// <summary>Pinking shears.</summary>
    PinkingShears,

    /// <summary>A zipper foot.</summary>
    ZipperFoot,

    /// <summary>A cording foot.</summary>
    CordingFoot,

    /// <summary>A seam ripper.</summary>
    SeamRipper,

    /// <summary>A buttonhole foot.</summary>
    ButtonholeFoot,

    /// <summary>A punch and a setter for eyelets.</summary>
    EyeletSetter,

    /// <summary>A bodkin.</summary>
    Bodkin,

    /// <summary>A needle for sewing by hand.</summary>
    HandNeedle,

    /// <summary>A long needle for tufting.</summary>
    TuftingNeedle,

    /// <summary>A tool to cover buttons with.</summary>
    ButtonPress,

    /// <summary>A point turner.</summary>
    PointTurner,

    /// <summary>A knife or a saw for foam.</summary>
    FoamKnife,
}
