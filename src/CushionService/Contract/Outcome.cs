using System.Diagnostics.CodeAnalysis;

namespace CushionService.Contract;

/// <summary>An answer, or why there is none.</summary>
public readonly record struct Outcome<T>
    where T : class
{
    private Outcome(T? answer, Refusal? refusal) => (Answer, Refusal) = (answer, refusal);

    /// <summary>The answer; null when refused.</summary>
    public T? Answer { get; }

    /// <summary>The refusal; null when answered.</summary>
    public Refusal? Refusal { get; }

    /// <summary>Whether there is an answer.</summary>
    [MemberNotNullWhen(true, nameof(Answer))]
    [MemberNotNullWhen(false, nameof(Refusal))]
    public bool Answered => Answer is not null;

    public static implicit operator Outcome<T>(T answer) => new(answer, null);

    public static implicit operator Outcome<T>(Refusal refusal) => new(null, refusal);
}
