using System.Collections.Immutable;
using CushionService.Contract.Answers;
using CushionService.Contract.Orders;
using CushionService.Engine.Measures;
using CushionService.Engine.Messages;
using CushionService.Engine.Specifications;
using CushionService.Engine.Specifications.Pricing;
using CushionService.Intake;
using CushionService.Wording;

namespace CushionService.Desk;

/// <summary>Quotes an order as given, and once for each candidate with the candidate instead of one of its fabrics.
/// Every quote is an order of its own to the engine, so that an option costs in the comparison what it would cost
/// alone.</summary>
internal static class Comparison
{
    /// <summary>Compares a sound order's candidates.</summary>
    /// <param name="compared">The order, with at least one candidate. The candidates are no part of its specification.</param>
    /// <param name="cancellation">Cancels the search.</param>
    /// <returns>The order as given, and the options: the cheapest first, those that cannot be made last.</returns>
    /// <exception cref="OperationCanceledException">The search was cancelled.</exception>
    public static ComparisonAnswer Of(CheckedOrder compared, CancellationToken cancellation)
    {
        (Order order, IntakeResult intake) = (compared.Order, compared.Intake);
        Order given = order with { Candidates = null };
        PriceBookSpecification? book = intake.Specification?.PriceBook;
        QuoteAttempt asGiven = QuoteAttempt.Of(intake, separate: false, cancellation);
        List<(QuoteAttempt Attempt, OptionAnswer Answer)> options = [];
        foreach ((int c, Candidate candidate) in order.Candidates!.Index())
        {
            foreach ((int o, Fabric option) in candidate.Options!.Index())
            {
                string pointer = $"/candidates/{c}/options/{o}";
                foreach (bool separate in candidate.Separate == true ? [false, true] : new[] { false })
                {
                    options.Add(Quote(compared, given, book, asGiven, candidate.Fabric!, option, pointer, separate, cancellation));
                }
            }
        }

        // Sorting is stable: options of the same cost stay in the order of the candidates.
        IEnumerable<(QuoteAttempt, OptionAnswer Answer)> sorted = options.Order(
            Comparer<(QuoteAttempt Attempt, OptionAnswer)>.Create((one, other) => QuoteAttempt.ByCost(one.Attempt, other.Attempt))
        );
        return new ComparisonAnswer
        {
            Reference = order.Reference,
            Units = order.Units!.Value,
            Engine = EngineVersion.Current,
            Currency = order.Currency ?? book?.Currency.Code,
            Given = Word(asGiven, ChangeTexts.AsGiven, asGiven.Violations, asGiven.Warnings, compared),
            Options = [.. sorted.Select(option => option.Answer)],
        };
    }

    // One option, with its findings placed in the candidate: the caller has sent no order in which the option is a
    // fabric.
    private static (QuoteAttempt, OptionAnswer) Quote(
        CheckedOrder compared,
        Order given,
        PriceBookSpecification? book,
        QuoteAttempt asGiven,
        string replaced,
        Fabric option,
        string pointer,
        bool separate,
        CancellationToken cancellation
    )
    {
        // The rules have found the fabric that the candidate names.
        int at = given.Fabrics!.Index().First(fabric => fabric.Item.Id == replaced).Index;
        // The cushions name the fabric by its id. In a price book the option is under its own name.
        // So that every cushion that named the old fabric is cut from the option, with no change to the cushions.
        Fabric fabric = option with
        {
            Id = replaced,
            Item = option.Item ?? option.Id,
        };
        Order changed = given with { Fabrics = [.. given.Fabrics!.Select((own, i) => i == at ? fabric : own)] };
        QuoteAttempt attempt = QuoteAttempt.Of(OrderIntake.Read(changed, book, Purpose.Making), separate, cancellation);
        Message change = ChangeWording.Of(
            compared.Unit,
            (given.Currency ?? book?.Currency.Code) is { } code ? new Currency(code) : null,
            given.Fabrics![at],
            fabric,
            separate,
            asGiven.Alternative,
            attempt.Alternative
        );
        return (
            attempt,
            Word(attempt, change, Placed(attempt.Violations), Placed(attempt.Warnings), compared) with
            {
                Pointer = pointer,
                Fabric = replaced,
                Option = option.Id ?? replaced,
                Separate = separate,
            }
        );

        // A finding of the fabric is one of the option; all others are where they are in the order.
        ImmutableArray<Violation> Placed(ImmutableArray<Violation> findings) =>
            [
                .. findings.Select(finding =>
                    finding.Pointer.StartsWith($"/fabrics/{at}/", StringComparison.Ordinal)
                        ? finding with
                        {
                            Pointer = pointer + finding.Pointer[$"/fabrics/{at}".Length..],
                        }
                        : finding
                ),
            ];
    }

    // What an attempt costs and takes. The caller adds where the option comes from.
    private static OptionAnswer Word(
        QuoteAttempt attempt,
        Message change,
        ImmutableArray<Violation> violations,
        ImmutableArray<Violation> warnings,
        CheckedOrder compared
    ) =>
        new()
        {
            Pointer = "",
            Separate = false,
            Total = attempt.Alternative?.Total?.ToString(),
            Unpriced = attempt.Alternative?.Unpriced ?? [],
            Yardage = attempt.Alternative is { } alternative
                ?
                [
                    .. alternative.Quotes.SelectMany(quote =>
                        new AnswerWording(compared.Language, compared.Unit, []).Yardage(quote.Yardages)
                    ),
                ]
                : [],
            Change = new MessageWriter(compared.Language, compared.Unit).Text(change),
            Violations = ViolationWording.Of(violations, compared.Language, compared.Unit),
            Warnings = ViolationWording.Of(warnings, compared.Language, compared.Unit),
        };
}
