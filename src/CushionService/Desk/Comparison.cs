using System.Collections.Immutable;
using CushionService.Contract.Answers;
using CushionService.Contract.Orders;
using CushionService.Engine.Specifications;
using CushionService.Engine.Specifications.Pricing;
using CushionService.Intake;
using CushionService.Wording;

namespace CushionService.Desk;

/// <summary>Quotes an order as given, and with each candidate in its place, all by the one pipeline.</summary>
internal static class Comparison
{
    /// <summary>Compares a sound order's candidates.</summary>
    /// <param name="order">The order as written.</param>
    /// <param name="taken">The same, checked and specified: a fabric's candidates are no part of it.</param>
    /// <param name="cancellation">Ends the search.</param>
    public static ComparisonAnswer Of(Order order, IntakeResult taken, CancellationToken cancellation)
    {
        Order given = order with { Candidates = null };
        PriceBookSpecification? book = taken.Specification?.PriceBook;
        Tried asGiven = Tried.Of(taken, separate: false, cancellation);
        List<(Tried Tried, OptionAnswer Answer)> options = [];
        foreach ((int c, Candidate candidate) in order.Candidates!.Index())
        {
            foreach ((int o, Fabric option) in candidate.Options!.Index())
            {
                foreach (bool separate in candidate.Separate == true ? [false, true] : new[] { false })
                {
                    options.Add(
                        Try(given, book, asGiven, candidate.Fabric!, option, $"/candidates/{c}/options/{o}", separate, cancellation)
                    );
                }
            }
        }

        return new ComparisonAnswer
        {
            Reference = order.Reference,
            Units = order.Units!.Value,
            Engine = EngineVersion.Current,
            Currency = order.Currency ?? book?.Currency.Code,
            Given = Word(asGiven, "as given", asGiven.Violations),
            Options =
            [
                .. options
                    .Order(Comparer<(Tried Tried, OptionAnswer Answer)>.Create((one, other) => Tried.ByCost(one.Tried, other.Tried)))
                    .Select(option => option.Answer),
            ],
        };
    }

    private static (Tried, OptionAnswer) Try(
        Order given,
        PriceBookSpecification? book,
        Tried asGiven,
        string replaced,
        Fabric option,
        string pointer,
        bool separate,
        CancellationToken cancellation
    )
    {
        int at = given.Fabrics!.Index().First(fabric => fabric.Item.Id == replaced).Index;
        // In a price book it stands under its own name.
        Fabric fabric = option with
        {
            Id = replaced,
            Item = option.Item ?? option.Id,
        };
        Order changed = given with { Fabrics = [.. given.Fabrics!.Select((own, i) => i == at ? fabric : own)] };
        Tried tried = Tried.Of(OrderIntake.Read(changed, book, Purpose.Making), separate, cancellation);
        string change = ChangeWording.Of(given.Fabrics![at], fabric, separate, asGiven.Alternative, tried.Alternative);
        return (
            tried,
            Word(tried, change, Placed(tried.Violations)) with
            {
                Pointer = pointer,
                Fabric = replaced,
                Option = option.Id ?? replaced,
                Separate = separate,
                Warnings = Placed(tried.Warnings),
            }
        );

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

    private static OptionAnswer Word(Tried tried, string change, ImmutableArray<Violation> violations) =>
        new()
        {
            Pointer = "",
            Separate = false,
            Total = tried.Alternative?.Total?.ToString(),
            Unpriced = tried.Alternative?.Unpriced ?? [],
            Yardage = tried.Alternative is { } alternative
                ? [.. alternative.Quotes.SelectMany(quote => new AnswerWording(quote.Drafting.Order.Unit, []).Yardage(quote.Yardages))]
                : [],
            Change = change,
            Violations = violations,
            Warnings = tried.Warnings,
        };
}
