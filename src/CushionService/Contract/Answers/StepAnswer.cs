namespace CushionService.Contract.Answers;

/// <summary>A step of the making.</summary>
public sealed record StepAnswer
{
    /// <summary>From 1.</summary>
    public required int Number { get; init; }

    /// <summary>What to do.</summary>
    public required string Text { get; init; }

    /// <summary>The ids of the pieces that it handles.</summary>
    public required IReadOnlyList<string> Pieces { get; init; }
}
