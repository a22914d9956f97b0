using System.Collections.Immutable;
using CushionService.Contract;
using CushionService.Engine.Specifications;

namespace CushionService.Intake;

/// <summary>What the rules have found in an order so far.</summary>
/// <remarks>Findings come out by pointer and code, each pair once, so that an order has the same answer however its parts are
/// read.</remarks>
internal sealed class FindingList
{
    private const string NotApplicable = "not-applicable";

    // In the order in which they were found.
    private readonly List<Violation> _violations = [];

    // The same, of what is unwise.
    private readonly List<Violation> _warnings = [];

    /// <summary>Whether no rule is broken.</summary>
    public bool IsSound => _violations.Count == 0;

    /// <summary>Every rule that is broken, by pointer; of a field that does not apply nothing else is said.</summary>
    public ImmutableArray<Violation> Violations => IsSound ? [] : Sorted(WithoutEcho(_violations));

    /// <summary>Everything that is allowed but unwise, by pointer.</summary>
    public ImmutableArray<Violation> Warnings => _warnings.Count < 2 ? [.. _warnings] : Sorted(_warnings);

    /// <summary>Adds a broken rule.</summary>
    public void Refuse(Violation violation) => _violations.Add(violation);

    /// <summary>Adds something unwise.</summary>
    public void Warn(Violation warning) => _warnings.Add(warning);

    // A field that does not apply is to be left out: whether its value is in range does not matter.
    private static IEnumerable<Violation> WithoutEcho(List<Violation> violations)
    {
        HashSet<string> pointless = [.. violations.Where(found => found.Code == NotApplicable).Select(found => found.Pointer)];
        return pointless.Count == 0 ? violations : violations.Where(found => !Echoes(found, pointless));
    }

    // Whether a finding is at one of the pointers, or within one.
    private static bool Echoes(Violation found, HashSet<string> pointless)
    {
        var within = pointless.GetAlternateLookup<ReadOnlySpan<char>>();
        ReadOnlySpan<char> pointer = found.Pointer;
        if (found.Code != NotApplicable && within.Contains(pointer))
        {
            return true;
        }

        for (int end = pointer.LastIndexOf('/'); end >= 0; end = pointer[..end].LastIndexOf('/'))
        {
            if (within.Contains(pointer[..end]))
            {
                return true;
            }
        }

        return false;
    }

    private static ImmutableArray<Violation> Sorted(IEnumerable<Violation> found) =>
        [
            .. found
                .DistinctBy(violation => (violation.Pointer, violation.Code))
                .OrderBy(violation => violation.Pointer, PointerOrder.Instance)
                .ThenBy(violation => violation.Code, StringComparer.Ordinal)
                .Take(Limits.Violations),
        ];
}
