using CushionService.Engine.Specifications.Outlines;

namespace CushionService.Contract.Answers;

/// <summary>Pieces of foam of one size that are sawn for one cushion line.</summary>
public sealed record FoamCutAnswer
{
    /// <summary>The cushion's id.</summary>
    public required string Cushion { get; init; }

    /// <summary>How many, over all cushions and layers.</summary>
    public required int Quantity { get; init; }

    /// <summary>The outline that they have.</summary>
    public required OutlineKind Shape { get; init; }

    /// <summary>Extent of one.</summary>
    public required MaterialSizeAnswer Size { get; init; }

    /// <summary>Area of its base, in square units of the order.</summary>
    public required double Area { get; init; }

    /// <summary>Corners of the template, counter-clockwise, to saw by; empty for a rectangle.</summary>
    public required IReadOnlyList<PointAnswer> Template { get; init; }
}
