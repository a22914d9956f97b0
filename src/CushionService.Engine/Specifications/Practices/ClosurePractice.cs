using CushionService.Engine.Measures;

namespace CushionService.Engine.Specifications.Practices;

/// <summary>The sizes of closures where an order does not say, and what a closure needs at least.</summary>
/// <remarks>Common practice, no source. The overlaps that follow from a size stand with their closures.</remarks>
public sealed record ClosurePractice
{
    /// <summary>A workroom that measures in inches.</summary>
    public static ClosurePractice Imperial { get; } =
        new()
        {
            TapeWidth = Length.FromInches(0.75m),
            ButtonDiameter = Length.FromInches(0.75m),
            TieLength = Length.FromInches(8),
            TiedOverlap = Length.FromInches(1.5m),
            ShortestZipper = Length.FromInches(2),
        };

    /// <summary>A workroom that measures in millimetres: it buys the same tapes and buttons.</summary>
    public static ClosurePractice Metric { get; } = Imperial;

    /// <summary>Width of hook-and-loop tape.</summary>
    public required Length TapeWidth { get; init; }

    /// <summary>Diameter of a button.</summary>
    public required Length ButtonDiameter { get; init; }

    /// <summary>Finished length of each tie of a closure.</summary>
    public required Length TieLength { get; init; }

    /// <summary>How far the strips of a boxing overlap under ties.</summary>
    public required Length TiedOverlap { get; init; }

    /// <summary>The shortest zipper that is worth setting into a seam.</summary>
    public required Length ShortestZipper { get; init; }
}
