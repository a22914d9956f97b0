namespace CushionService.Engine.Specifications.Trimmings;

/// <summary>The seam in which an edging lies.</summary>
public enum EdgingPlace
{
    /// <summary>Round the top face; of a cushion without thickness, its only edge.</summary>
    Top,

    /// <summary>Round the bottom face.</summary>
    Bottom,

    /// <summary>Round the left end or side panel.</summary>
    Left,

    /// <summary>Round the right end or side panel.</summary>
    Right,

    /// <summary>Up and down every corner of the boxing.</summary>
    Corners,
}
