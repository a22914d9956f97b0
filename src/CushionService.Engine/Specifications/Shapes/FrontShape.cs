namespace CushionService.Engine.Specifications.Shapes;

/// <summary>The front of a waterfall cushion, seen from the side.</summary>
public enum FrontShape
{
    /// <summary>Upright, with a corner at the top and one at the bottom.</summary>
    Square,

    /// <summary>Half a circle as high as the cushion is thick.</summary>
    BullNose,
}
