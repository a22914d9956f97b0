using System.Collections.Immutable;
using CushionService.Engine.Layouts;
using CushionService.Engine.Quoting;
using CushionService.Engine.Specifications;
using CushionService.Intake;

namespace CushionService.Desk;

/// <summary>An order of a comparison, quoted if it can be made.</summary>
/// <param name="Alternative">Its quotes: one, or one for each cushion; null when it cannot be made.</param>
/// <param name="Violations">Why it cannot be made; empty when it can.</param>
/// <param name="Warnings">What is allowed but unwise.</param>
internal sealed record QuoteAttempt(Alternative? Alternative, ImmutableArray<Violation> Violations, ImmutableArray<Violation> Warnings)
{
    /// <summary>Quotes an order by the pipeline of any quote.</summary>
    /// <param name="intake">The order, checked and specified.</param>
    /// <param name="separate">Whether each cushion is cut from fabric of its own.</param>
    /// <param name="cancellation">Cancels the search.</param>
    /// <exception cref="OperationCanceledException">The search was cancelled.</exception>
    public static QuoteAttempt Of(IntakeResult intake, bool separate, CancellationToken cancellation)
    {
        if (intake.Specification is not { } whole)
        {
            return new QuoteAttempt(null, intake.Violations, intake.Warnings);
        }

        OrderSpecification[] orders = [.. separate ? SeparateCutting.Of(whole) : [whole]];
        // Cut apart, its cushions share the steps of one effort.
        int each = orders.Length;
        ImmutableArray<Drafting> parts = [.. orders.Select(part => Drafting.Of(part, each, cancellation))];
        ImmutableArray<Violation> violations = [.. parts.SelectMany(part => part.Violations)];
        ImmutableArray<Violation> warnings = intake.Warnings.AddRange(parts.SelectMany(part => part.Warnings));
        if (!violations.IsEmpty)
        {
            return new QuoteAttempt(null, violations, warnings);
        }

        Alternative alternative = new([.. parts.Select(part => QuotePipeline.Of(part, cancellation, each))])
        {
            Minimum = whole.Costing.Minimum,
            Tax = whole.Costing.Tax,
        };
        return new QuoteAttempt(alternative, [], [.. warnings, .. Shown([.. alternative.Quotes.SelectMany(quote => quote.Yardages)])]);
    }

    // What the layouts show, as a quote of the option would say; once for a fabric, though it is cut from several lengths.
    private static IEnumerable<Violation> Shown(Yardage[] yardages) =>
        [
            .. yardages.Select(MotifNote.Of).OfType<Violation>().DistinctBy(note => note.Pointer),
            .. yardages.Select(WeltNote.Of).OfType<Violation>().DistinctBy(note => note.Pointer),
            .. CutsNote.Of(yardages),
        ];

    /// <summary>Compares two attempts: the cheaper comes first, and what cannot be made comes last.</summary>
    /// <param name="one">One attempt.</param>
    /// <param name="other">The other.</param>
    /// <returns>Below zero where the first comes first; zero for two that cannot be made, which keep their
    /// places.</returns>
    public static int ByCost(QuoteAttempt one, QuoteAttempt other) =>
        (one.Alternative, other.Alternative) switch
        {
            ({ } a, { } b) => Alternative.ByCost(a, b),
            (null, null) => 0,
            (null, _) => 1,
            _ => -1,
        };
}
