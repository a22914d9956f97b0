using System.Collections.Immutable;
using CushionService.Engine.Quoting;
using CushionService.Engine.Specifications;
using CushionService.Intake;

namespace CushionService.Desk;

/// <summary>An order sent through the rules and the pipeline.</summary>
/// <param name="Alternative">Its quotes; null when it cannot be made.</param>
/// <param name="Violations">Why it cannot be made.</param>
/// <param name="Warnings">What is allowed but unwise.</param>
internal sealed record Tried(Alternative? Alternative, ImmutableArray<Violation> Violations, ImmutableArray<Violation> Warnings)
{
    /// <summary>Tries an order.</summary>
    /// <param name="taken">The order, checked and specified.</param>
    /// <param name="separate">Whether each cushion is cut from fabric of its own.</param>
    /// <param name="cancellation">Ends the search.</param>
    public static Tried Of(IntakeResult taken, bool separate, CancellationToken cancellation)
    {
        if (taken.Specification is not { } whole)
        {
            return new Tried(null, taken.Violations, taken.Warnings);
        }

        ImmutableArray<Drafting> parts = [.. (separate ? SeparateCutting.Of(whole) : [whole]).Select(Drafting.Of)];
        ImmutableArray<Violation> violations = [.. parts.SelectMany(part => part.Violations)];
        ImmutableArray<Violation> warnings = taken.Warnings.AddRange(parts.SelectMany(part => part.Warnings));
        return violations.IsEmpty
            ? new Tried(new Alternative([.. parts.Select(part => QuotePipeline.Of(part, cancellation))]), [], warnings)
            : new Tried(null, violations, warnings);
    }

    /// <summary>Cheapest first; what cannot be made comes last.</summary>
    public static int ByCost(Tried one, Tried other) =>
        (one.Alternative, other.Alternative) switch
        {
            ({ } a, { } b) => Alternative.ByCost(a, b),
            (null, null) => 0,
            (null, _) => 1,
            _ => -1,
        };
}
