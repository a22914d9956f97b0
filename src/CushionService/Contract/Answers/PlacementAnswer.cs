namespace CushionService.Contract.Answers;

/// <summary>Where one copy of a piece lies on the fabric.</summary>
public sealed record PlacementAnswer
{
    /// <summary>The piece's id.</summary>
    public required string Piece { get; init; }

    /// <summary>Which copy, from 1.</summary>
    public required int Copy { get; init; }

    /// <summary>From the left edge of the usable width.</summary>
    public required double X { get; init; }

    /// <summary>From the start of the fabric.</summary>
    public required double Y { get; init; }

    /// <summary>Counter-clockwise turn in degrees: 0, 90, 180 or 270.</summary>
    public required int Rotation { get; init; }

    /// <summary>Extent across the fabric as it lies.</summary>
    public required double Width { get; init; }

    /// <summary>Extent along the fabric as it lies.</summary>
    public required double Length { get; init; }
}
