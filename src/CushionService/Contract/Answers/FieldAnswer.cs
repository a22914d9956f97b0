namespace CushionService.Contract.Answers;

/// <summary>A field of an order.</summary>
public sealed record FieldAnswer
{
    /// <summary>Where it is, with <c>*</c> for any index: <c>/cushions/*/thickness</c>.</summary>
    public required string Pointer { get; init; }

    /// <summary>What it holds: length, number, text, choice, switch, list or group.</summary>
    public required FieldType Type { get; init; }

    /// <summary>What it means.</summary>
    public required string Description { get; init; }

    /// <summary>Whether its parent must have it.</summary>
    public required bool Required { get; init; }

    /// <summary>Smallest value, with its unit when it is a length; null when there is no range.</summary>
    public string? Minimum { get; init; }

    /// <summary>Largest value, with its unit when it is a length; null when there is no range.</summary>
    public string? Maximum { get; init; }

    /// <summary>What applies when it is left out; null when nothing does.</summary>
    public string? Default { get; init; }

    /// <summary>The values of a choice; empty otherwise.</summary>
    public required IReadOnlyList<string> Choices { get; init; }
}
