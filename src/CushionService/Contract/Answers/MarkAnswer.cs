using CushionService.Engine.Patterns.Panels;

namespace CushionService.Contract.Answers;

/// <summary>A mark on a cut piece.</summary>
public sealed record MarkAnswer
{
    /// <summary>The kind of mark.</summary>
    public required MarkKind Kind { get; init; }

    /// <summary>Where it is, or starts: across the piece, from its lower left corner.</summary>
    public required double X { get; init; }

    /// <summary>Where it is, or starts: along the piece.</summary>
    public required double Y { get; init; }

    /// <summary>Where a line ends, across the piece; null for a point.</summary>
    public double? ToX { get; init; }

    /// <summary>Where a line ends, along the piece; null for a point.</summary>
    public double? ToY { get; init; }

    /// <summary>What it is for, with its distances.</summary>
    public required string Because { get; init; }
}
