namespace CushionService.Engine.Specifications;

/// <summary>The seam in which an edging stands.</summary>
public enum EdgingPlace
{
    /// <summary>Round the top face; of a cushion without thickness, its only edge.</summary>
    Top,

    /// <summary>Round the bottom face.</summary>
    Bottom,
}
