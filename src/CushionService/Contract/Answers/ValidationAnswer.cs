namespace CushionService.Contract.Answers;

/// <summary>Whether an order can be made.</summary>
public sealed record ValidationAnswer
{
    /// <summary>Whether it breaks no rule.</summary>
    public required bool Valid { get; init; }

    /// <summary>Every rule that it breaks.</summary>
    public required IReadOnlyList<ViolationAnswer> Violations { get; init; }

    /// <summary>What is allowed but unwise.</summary>
    public required IReadOnlyList<ViolationAnswer> Warnings { get; init; }
}
