using System.Collections.Immutable;
using CushionService.Engine.Layouts;
using CushionService.Engine.Measures;
using CushionService.Engine.Specifications;
using CushionService.Engine.Specifications.Pricing;

namespace CushionService.Engine.Costing;

/// <summary>What the workroom's time costs.</summary>
/// <param name="Lines">A line for each operation on each line of cushions.</param>
/// <param name="Unpriced">Operations without minutes, each as <c>labour/</c> and its word.</param>
internal sealed record LabourPricing(ImmutableArray<LabourLine> Lines, ImmutableArray<string> Unpriced)
{
    /// <summary>The operation of matching pieces to a repeat.</summary>
    public const string Matching = "matching";

    private const int MinutesInHour = 60;

    /// <summary>All minutes.</summary>
    /// <remarks>Over all copies of every cushion; what has no time is left out.</remarks>
    public decimal Minutes => Lines.Sum(line => line.Minutes);

    /// <summary>Times the operations of every cushion; matching to a repeat adds a share to all of a cushion's minutes.</summary>
    /// <param name="order">The order; without a costing of labour there are no lines.</param>
    /// <param name="yardages">The layout of each fabric, which says what is matched.</param>
    /// <returns>An operation without minutes is named once, however many cushions need it.</returns>
    public static LabourPricing Of(OrderSpecification order, IReadOnlyList<Yardage> yardages)
    {
        if (order.Costing.Labour is not { } labour)
        {
            return new LabourPricing([], []);
        }

        HashSet<string> matched =
        [
            .. yardages.SelectMany(yardage =>
                yardage
                    .Layout.Placements.Where(laid =>
                        laid.Piece.Cushion is not null && FabricNesting.IsMatched(yardage.Layout.Fabric, laid.Piece)
                    )
                    .Select(laid => laid.Piece.Cushion!.Id)
            ),
        ];
        var lines = ImmutableArray.CreateBuilder<LabourLine>();
        var unpriced = ImmutableArray.CreateBuilder<string>();
        foreach (CushionSpecification cushion in order.Cushions)
        {
            decimal all = 0;
            foreach ((Operation operation, int times) in Workload.Of(cushion))
            {
                if (labour.Minutes.TryGetValue(operation, out decimal minutes))
                {
                    all += times * minutes;
                    Add(cushion, operation.Word, times, times * minutes);
                }
                else if (!unpriced.Contains($"labour/{operation}"))
                {
                    unpriced.Add($"labour/{operation}");
                }
            }

            if (matched.Contains(cushion.Id) && labour.Matching > 0)
            {
                Add(cushion, Matching, 1, labour.Matching * all);
            }
        }

        return new LabourPricing(lines.ToImmutable(), unpriced.ToImmutable());

        void Add(CushionSpecification cushion, string operation, int times, decimal minutes) =>
            lines.Add(
                new LabourLine(
                    cushion.Id,
                    operation,
                    cushion.Quantity * times,
                    cushion.Quantity * minutes,
                    Hours(cushion.Quantity * minutes, labour.HourlyRate)
                )
            );
    }

    /// <summary>What a number of minutes costs, rounded half up to the smallest coin.</summary>
    /// <remarks>Multiplied before it is divided: a sixtieth of a rate is seldom exact, and half a coin must not be lost for it.</remarks>
    /// <param name="minutes">At least zero.</param>
    /// <param name="hourly">What an hour costs.</param>
    public static Money Hours(decimal minutes, Money hourly) =>
        (hourly with { Amount = minutes * hourly.Amount / MinutesInHour }).RoundHalfUp();
}
