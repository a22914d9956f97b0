using CushionService.Contract;
using CushionService.Engine.Specifications;

namespace CushionService.Json;

/// <summary>The violations of form that a diagnosis finds, and whether what is left of the text can be read without
/// them.</summary>
internal sealed class FormViolations
{
    private readonly List<Violation> _all = [];

    /// <summary>The violations, in the order of the text; at most 1 000.</summary>
    public IReadOnlyList<Violation> All => _all;

    /// <summary>Whether every violation is one of names or words, so that the text can be read once the members at
    /// fault are left out. A value of another type, as an object instead of a list, leaves nothing that could be
    /// read.</summary>
    public bool IsReadable { get; private set; } = true;

    /// <summary>Adds a violation. Beyond the limit only the first that makes the text unreadable is kept, instead of
    /// the last: it decides the status of the answer.</summary>
    public void Add(Violation violation)
    {
        bool unreadable = Statuses.IsUnreadable(violation.Code);
        if (_all.Count < Limits.Violations)
        {
            _all.Add(violation);
        }
        else if (unreadable && IsReadable)
        {
            _all[^1] = violation;
        }

        IsReadable &= !unreadable;
    }
}
