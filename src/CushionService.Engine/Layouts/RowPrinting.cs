using CushionService.Engine.Geometry;
using CushionService.Engine.Measures;
using CushionService.Engine.Specifications;
using CushionService.Engine.Specifications.Fabrics;

namespace CushionService.Engine.Layouts;

/// <summary>How far the motif of a cushion is from its middle, where a print runs on along a row.</summary>
/// <remarks>The row has a motif in its own middle, half the depth of its first cushion from the front; every cushion continues from there
/// (follows from the lattice). Fronts are in one line. A row of backs is cut as if it stood on the back edge of its seats, from their left
/// end on.</remarks>
public static class RowPrinting
{
    /// <summary>From the middle of the cushion's face to the motif that it continues; nothing where its own middle has one.</summary>
    /// <param name="order">The order, with its rows.</param>
    /// <param name="cushion">One of its cushions.</param>
    public static Point Shift(OrderSpecification order, CushionSpecification cushion)
    {
        foreach (RowSpecification row in order.Rows)
        {
            if (row.Print == RowPrint.Continuous && row.Cushions.Contains(cushion.Id))
            {
                return Shift(order, row, cushion);
            }
        }

        return default;
    }

    private static Point Shift(OrderSpecification order, RowSpecification row, CushionSpecification cushion)
    {
        RowSpecification seats = order.Rows.FirstOrDefault(other => other.Id == row.Follows) ?? row;
        if (Cushions(order, row) is not { } all || Cushions(order, seats) is not { } first)
        {
            return default;
        }

        // How far along the row the cushion begins; the motif of the row is in the middle of all its widths.
        Length before = Along(all.TakeWhile(other => other.Id != cushion.Id)),
            middle = Along(first).HalfUp(),
            level = Deep(first[0]).HalfUp();
        Length below = seats == row ? Length.Zero : first.Max(Deep);
        return new Point(middle - before - Along([cushion]).HalfUp(), level - below - Deep(cushion).HalfUp());
    }

    // Cushions touch with their flanges, where they have them.
    private static Length Along(IEnumerable<CushionSpecification> cushions) =>
        cushions.Aggregate(Length.Zero, (sum, cushion) => sum + cushion.Width + Flanges(cushion));

    private static Length Deep(CushionSpecification cushion) => cushion.Depth + Flanges(cushion);

    private static Length Flanges(CushionSpecification cushion) => 2 * (cushion.Flange?.Width ?? Length.Zero);

    // Null where part of the row is looked at alone.
    private static CushionSpecification[]? Cushions(OrderSpecification order, RowSpecification row)
    {
        CushionSpecification[] found =
        [
            .. row.Cushions.Select(id => order.Cushions.FirstOrDefault(cushion => cushion.Id == id)).OfType<CushionSpecification>(),
        ];
        return found.Length == row.Cushions.Length ? found : null;
    }
}
