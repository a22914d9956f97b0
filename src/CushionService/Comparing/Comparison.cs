using System.Collections.Immutable;
using CushionService.Contract.Answers;
using CushionService.Contract.Orders;
using CushionService.Engine.Specifications;
using CushionService.Engine.Specifications.Pricing;
using CushionService.Wording;

namespace CushionService.Comparing;

/// <summary>Quotes an order as given, and with each candidate in its place, all by the one pipeline.</summary>
internal static class Comparison
{
    /// <summary>Compares a sound order's candidates.</summary>
    public static ComparisonAnswer Of(Order order, PriceBookSpecification? book, CancellationToken cancellation)
    {
        Order given = order with { Candidates = null };
        Tried asGiven = Tried.Of(given, book, separate: false, cancellation);
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
        Tried tried = Tried.Of(
            given with
            {
                Fabrics = [.. given.Fabrics!.Select((own, i) => i == at ? fabric : own)],
            },
            book,
            separate,
            cancellation
        );
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
