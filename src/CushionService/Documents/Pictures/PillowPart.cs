using CushionService.Documents.Drawings;

namespace CushionService.Documents.Pictures;

/// <summary>A part of a cover without sides as it is seen, from left to right, in millimetres of the view.</summary>
internal sealed class PillowPart
{
    /// <summary>The seam line on the near side.</summary>
    public List<Spot> Near { get; } = [];

    /// <summary>The upper edge of what is seen.</summary>
    public List<Spot> High { get; } = [];

    /// <summary>The lower edge.</summary>
    public List<Spot> Low { get; } = [];

    /// <summary>How far away it is.</summary>
    public double Depth { get; set; } = double.MinValue;
}
