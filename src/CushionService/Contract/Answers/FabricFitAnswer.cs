using CushionService.Engine.Fitting;

namespace CushionService.Contract.Answers;

/// <summary>Whether the pieces of one fabric fit onto what one has of it, all offcuts together.</summary>
public sealed record FabricFitAnswer
{
    /// <summary>The fabric.</summary>
    public required string Fabric { get; init; }

    /// <summary>Whether they fit, and how that is known.</summary>
    public required FitVerdict Verdict { get; init; }

    /// <summary>Every offcut, in the order of the request, equal ones one by one.</summary>
    public required IReadOnlyList<OffcutAnswer> Offcuts { get; init; }

    /// <summary>Pieces that found no place; empty when they fit.</summary>
    public required IReadOnlyList<UnplacedAnswer> Unplaced { get; init; }
}
