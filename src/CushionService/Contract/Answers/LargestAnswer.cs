using CushionService.Engine.Fitting;

namespace CushionService.Contract.Answers;

/// <summary>The largest cushion that would fit onto the fabric on hand, in cutting steps.</summary>
public sealed record LargestAnswer
{
    /// <summary>The cushion.</summary>
    public required string Cushion { get; init; }

    /// <summary>Which sizes were free.</summary>
    public required FreeSize Free { get; init; }

    /// <summary>Finished width over all.</summary>
    public required double Width { get; init; }

    /// <summary>Finished depth over all.</summary>
    public required double Depth { get; init; }

    /// <summary>
    /// What is known of one cutting step more: that it is impossible, by a bound or by a rule, or that a thorough search found no layout.
    /// </summary>
    public required FitVerdict Next { get; init; }
}
