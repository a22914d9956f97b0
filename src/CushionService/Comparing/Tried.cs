using System.Collections.Immutable;
using CushionService.Contract.Orders;
using CushionService.Engine.Quoting;
using CushionService.Engine.Specifications;
using CushionService.Engine.Specifications.Pricing;
using CushionService.Intake;

namespace CushionService.Comparing;

/// <summary>An order sent through the rules and the pipeline.</summary>
/// <param name="Alternative">Its quotes; null when it cannot be made.</param>
/// <param name="Violations">Why it cannot be made.</param>
/// <param name="Warnings">What is allowed but unwise.</param>
internal sealed record Tried(Alternative? Alternative, ImmutableArray<Violation> Violations, ImmutableArray<Violation> Warnings)
{
    public static Tried Of(Order order, PriceBookSpecification? book, bool separate, CancellationToken cancellation)
    {
        var reading = new OrderReading(order, book);
        (ImmutableArray<Violation> violations, ImmutableArray<Violation> warnings) = OrderCheck.Run(order, reading);
        if (!violations.IsEmpty)
        {
            return new Tried(null, violations, warnings);
        }

        OrderSpecification whole = Specify.Order(reading);
        ImmutableArray<Drafting> parts = [.. (separate ? SeparateCutting.Of(whole) : [whole]).Select(Drafting.Of)];
        violations = [.. parts.SelectMany(part => part.Violations)];
        warnings = warnings.AddRange(parts.SelectMany(part => part.Warnings));
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
