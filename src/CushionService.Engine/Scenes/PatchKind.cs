namespace CushionService.Engine.Scenes;

/// <summary>What a part of a panel is on the finished cushion.</summary>
public enum PatchKind
{
    /// <summary>A face, which the filling rounds up.</summary>
    Face,

    /// <summary>A side of the cushion, or the round of a roll.</summary>
    Wall,

    /// <summary>A face of a cushion without sides: it rises from its edge.</summary>
    Pillow,

    /// <summary>Flat round the body, or reaching out from a seam.</summary>
    Flange,

    /// <summary>Gathered and reaching out from a seam.</summary>
    Ruffle,

    /// <summary>Folded under, or drawn together: not seen.</summary>
    Hidden,
}
