using System.Collections.Immutable;
using CushionService.Contract.Orders;
using CushionService.Engine.Measures;
using CushionService.Engine.Specifications;

namespace CushionService.Intake;

/// <summary>The rules of the fields that have a meaning in one call only.</summary>
internal static class PurposeRules
{
    private const int MostOptions = 40;
    private const int MostOffcuts = 50;

    public static ImmutableArray<Violation> Check(Order order, OrderReading reading, Purpose purpose)
    {
        ImmutableArray<Violation> broken = [.. Candidates(order, purpose), .. Nothing(order, purpose)];
        for (int i = 0; i < order.Fabrics?.Count; i++)
        {
            if (order.Fabrics[i] is { OnHand: { } offcuts } fabric)
            {
                broken = [.. broken, .. OnHand(fabric, offcuts, $"/fabrics/{i}/onHand", reading, purpose)];
            }
        }

        return broken;
    }

    private static IEnumerable<Violation> Candidates(Order order, Purpose purpose)
    {
        if (purpose != Purpose.Comparing)
        {
            return order.Candidates is null ? [] : [new Violation("/candidates", "not-applicable", "Candidates belong to a comparison.")];
        }

        HashSet<string?> known = [.. (order.Fabrics ?? []).Select(fabric => fabric?.Id)];
        int options = (order.Candidates ?? []).Sum(candidate => candidate?.Options?.Count ?? 0);
        return
        [
            .. order.Candidates is { Count: > 0 }
                ? []
                : new[] { new Violation("/candidates", "required", "A comparison needs at least one candidate.") },
            .. options <= MostOptions
                ? []
                : new[]
                {
                    new Violation(
                        "/candidates",
                        "out-of-range",
                        $"A comparison may have at most {MostOptions} options.",
                        null,
                        MostOptions
                    ),
                },
            .. (order.Candidates ?? [])
                .Index()
                .Where(at => at.Item?.Fabric is { } fabric && !known.Contains(fabric))
                .Select(at => new Violation(
                    $"/candidates/{at.Index}/fabric",
                    "unknown-fabric",
                    $"Fabric names the fabric {at.Item.Fabric}, which the order does not have."
                )),
            .. (order.Candidates ?? []).SelectMany(
                (candidate, c) =>
                    (candidate?.Options ?? [])
                        .Index()
                        .Where(at => at.Item?.OnHand is not null)
                        .Select(at => new Violation(
                            $"/candidates/{c}/options/{at.Index}/onHand",
                            "not-applicable",
                            "Fabric on hand belongs to a fit."
                        ))
            ),
        ];
    }

    private static IEnumerable<Violation> OnHand(
        Fabric fabric,
        IReadOnlyList<Offcut> offcuts,
        string pointer,
        OrderReading reading,
        Purpose purpose
    ) =>
        purpose != Purpose.Fitting
            ? [new Violation(pointer, "not-applicable", "Fabric on hand belongs to a fit.")]
            :
            [
                .. offcuts.Sum(offcut => (long)(offcut?.Quantity ?? 1)) <= MostOffcuts
                    ? []
                    : new[]
                    {
                        new Violation(pointer, "out-of-range", $"A fabric may have at most {MostOffcuts} offcuts.", null, MostOffcuts),
                    },
                .. offcuts
                    .Index()
                    .Where(at => reading.Length(at.Item?.Width) is { } width && reading.Length(fabric.Width) is { } whole && width > whole)
                    .Select(at => TooWide($"{pointer}/{at.Index}/width", reading.Length(fabric.Width)!.Value, reading)),
            ];

    private static Violation TooWide(string pointer, Length fabric, OrderReading reading) =>
        new(pointer, "out-of-range", $"An offcut is no wider than its fabric, {reading.Text(fabric)}.", null, reading.Number(fabric));

    private static IEnumerable<Violation> Nothing(Order order, Purpose purpose) =>
        purpose == Purpose.Fitting && (order.Fabrics ?? []).All(fabric => fabric?.OnHand is null)
            ? [new Violation("/fabrics/0/onHand", "required", "A fit needs at least one fabric on hand.")]
            : [];
}
