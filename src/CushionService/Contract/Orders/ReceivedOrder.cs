using System.Collections.Immutable;
using CushionService.Engine.Messages;
using CushionService.Engine.Specifications;

namespace CushionService.Contract.Orders;

/// <summary>An order as it arrived, over REST or gRPC.</summary>
/// <param name="Order">What could be read; null when the order is not of the contract's types.</param>
/// <param name="Violations">What was found wrong while it was read; empty for an order that reads cleanly.</param>
internal readonly record struct ReceivedOrder(Order? Order, IReadOnlyList<Violation> Violations)
{
    /// <summary>The language of who reads the answer.</summary>
    public Language Language { get; init; }

    /// <summary>What the order asks for beyond its caller's grant, reported with every other violation; null for nothing.</summary>
    public IReadOnlyList<Violation>? Forbidden { get; init; }

    /// <summary>How long it took to read, which its caller is charged for.</summary>
    public TimeSpan Reading { get; init; }

    /// <summary>What the caller calls the fields, by their JSON Pointers in the order; null when it knows them by the pointers themselves.
    /// A field without an entry has no name, and a violation of it concerns the whole call.</summary>
    public IReadOnlyDictionary<string, string>? Names { get; init; }

    /// <summary>Words what is wrong for a caller who knows the fields by other names, from the finding with its place in the order; null to
    /// say it as the rule does.</summary>
    public Func<Violation, Message>? Wording { get; init; }

    /// <summary>Findings of rules with the places as the caller knows them.</summary>
    public ImmutableArray<Violation> Placed(ImmutableArray<Violation> findings)
    {
        if (Names is not { } names)
        {
            return findings;
        }

        Func<Violation, Message>? wording = Wording;
        return
        [
            .. findings.Select(finding =>
                finding with
                {
                    Pointer = names.GetValueOrDefault(finding.Pointer, ""),
                    Detail = wording?.Invoke(finding) ?? finding.Detail,
                }
            ),
        ];
    }

    /// <summary>What is forbidden, then the violations of reading and those of the rules. What could not be read was left out of the
    /// order, and a rule may report it as missing: one violation for each place is enough.</summary>
    public ImmutableArray<Violation> WithRules(ImmutableArray<Violation> broken)
    {
        ImmutableArray<Violation> placed = Placed(broken);
        if (Violations.Count == 0)
        {
            return Forbidden is null ? placed : [.. Forbidden, .. placed];
        }

        HashSet<string> places = [.. Violations.Select(violation => violation.Pointer)];
        return [.. Forbidden ?? [], .. Violations, .. placed.Where(violation => !places.Contains(violation.Pointer))];
    }
}
