namespace CushionService.Engine.Specifications;

/// <summary>The finished outline of a cushion's face.</summary>
public enum OutlineKind
{
    /// <summary>Width across, depth from front to back.</summary>
    Rectangle,
}
