namespace CushionService.Contract;

/// <summary>Where a code is met.</summary>
[Flags]
internal enum CodeUse
{
    /// <summary>A broken rule, in <c>violations</c>.</summary>
    Violation = 1,

    /// <summary>Something allowed but unwise, in <c>warnings</c>.</summary>
    Warning = 2,

    /// <summary>What to beware of, in <c>cautions</c>.</summary>
    Caution = 4,

    /// <summary>Why a call has no answer, as the problem's own <c>code</c>.</summary>
    Problem = 8,
}
