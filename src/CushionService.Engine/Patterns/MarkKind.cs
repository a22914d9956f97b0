namespace CushionService.Engine.Patterns;

/// <summary>What a mark on a cut piece is.</summary>
public enum MarkKind
{
    /// <summary>A notch in the seam allowance, to be matched with the one it will meet.</summary>
    Notch,

    /// <summary>Where an end of a handle is sewn down.</summary>
    HandleEnd,

    /// <summary>A line along which the piece is folded.</summary>
    FoldLine,

    /// <summary>A line along which the piece is cut further.</summary>
    CutLine,
}
