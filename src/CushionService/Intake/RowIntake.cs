using System.Collections.Immutable;
using CushionService.Contract.Orders;
using CushionService.Engine.Specifications;
using CushionService.Engine.Specifications.Fabrics;

namespace CushionService.Intake;

/// <summary>Checks rows, and specifies them: each names cushions that the order has, no cushion lies in two, and the fabric runs one way
/// on all of a row.</summary>
/// <remarks>A row is a bench: its cushions lie side by side, and the eye compares their grain and their pattern.</remarks>
internal static class RowIntake
{
    /// <summary>The rows; without those that were refused.</summary>
    /// <param name="context">The order, and its cushions.</param>
    /// <param name="findings">Takes what is wrong with the whole order.</param>
    public static ImmutableArray<RowSpecification> Read(OrderContext context, Findings findings)
    {
        Order order = context.Order;
        if (order.Rows is not { Count: > 0 } rows)
        {
            return Bays(order, []);
        }

        // The form of every row, before what the rows have to do with each other.
        foreach ((int r, Row? row) in rows.Index())
        {
            if (row is not null)
            {
                RecordForm<Row>.Read(row, findings.Within(nameof(order.Rows), r));
            }
        }

        // The row of each cushion that has been seen in one.
        var rowOf = new Dictionary<string, string>(StringComparer.Ordinal);
        foreach ((int r, Row? row) in rows.Index())
        {
            Cushions(r, row, rowOf, context, findings);
        }

        foreach ((int r, Row? row) in rows.Index())
        {
            if (row is not null)
            {
                Prints(row, rows, context, findings.Within(nameof(order.Rows), r));
            }
        }

        return
        [
            .. rows.Where(row => row is { Id: not null, Cushions: not null })
                .Select(row => new RowSpecification(row!.Id!, [.. row.Cushions!], row.Print ?? RowPrint.Same, row.Follows)),
            .. Bays(order, [.. rowOf.Keys]),
        ];
    }

    // A row's cushions: each is one of the order's, is in no other row, and lies as the others do.
    private static void Cushions(int r, Row? row, Dictionary<string, string> rowOf, OrderContext context, Findings findings)
    {
        // The way of the first cushion that leaves no choice; those that leave it open follow.
        Grain? common = null;
        foreach ((int c, string? name) in (row?.Cushions ?? []).Index())
        {
            string place = $"{nameof(Order.Rows)}[{r}].{nameof(Row.Cushions)}[{c}]";
            if (context.Cushions.FirstOrDefault(cushion => cushion.Written.Id is { } id && id == name) is not { Written: var cushion })
            {
                findings.Refuse(place, "unknown-cushion", OrderTexts.UnknownCushion(name ?? "null"));
            }
            else if (!rowOf.TryAdd(name!, row!.Id ?? ""))
            {
                findings.Refuse(place, "duplicate", OrderTexts.TwoRows(name!));
            }
            // A cushion whose grain may run either way follows the row, so it contradicts nothing.
            else if (GrainOf(cushion, context.Order) is var grain and not Grain.Either)
            {
                if (common is { } known && known != grain)
                {
                    findings.Refuse(place, "not-combinable", OrderTexts.RowGrain(name!));
                }

                common ??= grain;
            }
        }
    }

    // A print runs on over one seat after the other, so each is a cushion of its own whose faces are matched.
    private static void Prints(Row row, IReadOnlyList<Row?> rows, OrderContext context, Findings at)
    {
        bool runsOn = row.Print == RowPrint.Continuous;
        foreach ((int c, string name) in (runsOn ? row.Cushions ?? [] : []).Index())
        {
            if (context.Cushions.FirstOrDefault(cushion => cushion.Written.Id == name) is not { Written: var cushion })
            {
                continue;
            }

            if (cushion.Quantity > 1)
            {
                at.Refuse($"{nameof(row.Cushions)}[{c}]", "not-combinable", OrderTexts.RowSeatOfMany(name, cushion.Quantity.Value));
            }
            else if (cushion.Match?.Faces == FaceMatch.Free)
            {
                at.Refuse($"{nameof(row.Cushions)}[{c}]", "not-combinable", OrderTexts.RowFacesFree(name));
            }
        }

        if (row.Follows is not { } follows)
        {
            return;
        }

        if (!runsOn)
        {
            at.NotApplicable(nameof(row.Follows), OrderTexts.RowFollowsSame);
        }
        else if (
            rows.FirstOrDefault(other => other?.Id == follows) is not { Print: RowPrint.Continuous, Follows: null }
            // Backs follow a row of seats, which follows none itself: two rows that followed each other would have no
            // beginning.
            || follows == row.Id
        )
        {
            at.Refuse(nameof(row.Follows), "not-combinable", OrderTexts.RowFollows(follows));
        }
    }

    // The seats of a bay lie beside each other, unless a row says what they lie beside.
    private static ImmutableArray<RowSpecification> Bays(Order order, ImmutableHashSet<string> inRows) =>
        [
            .. (order.Bays ?? [])
                .Where(bay => bay is { Id: not null, Walls: not null })
                .Select(bay => new RowSpecification(bay.Id!, BayIntake.Ids(bay)))
                .Where(row => !row.Cushions.Any(inRows.Contains)),
        ];

    // The cushion's own grain, or its fabric's, or the usual one.
    private static Grain GrainOf(Cushion cushion, Order order)
    {
        string? top = cushion.Fabrics?.Top ?? (order.Fabrics is { Count: > 0 } fabrics ? fabrics[0]?.Id : null);
        return cushion.Grain ?? order.Fabrics?.FirstOrDefault(fabric => fabric?.Id == top)?.Grain ?? Grain.UpTheBolt;
    }
}
