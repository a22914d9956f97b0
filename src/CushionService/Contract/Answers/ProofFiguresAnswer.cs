namespace CushionService.Contract.Answers;

/// <summary>The figures behind a proof, in the order's units.</summary>
public sealed record ProofFiguresAnswer
{
    /// <summary>The length that no layout can beat.</summary>
    public required double Length { get; init; }

    /// <summary>Usable width that it is proven for.</summary>
    public required double Width { get; init; }

    /// <summary>Area of all pieces, in square units; null where the proof does not rest on it.</summary>
    public double? Area { get; init; }
}
