using CushionService.Contract.Orders;

namespace CushionService.Intake;

/// <summary>How large an order is, before anything is drafted.</summary>
internal static class OrderSize
{
    // A cushion has at most some ten panels.
    private const long PiecesOfCushion = 10;

    /// <summary>The pieces of an order, a cushion counting as ten.</summary>
    /// <param name="order">The order as written; its quantities need not have passed their ranges.</param>
    /// <returns>The number, which bounds the search and what a caller may ask for.</returns>
    public static long Pieces(Order order)
    {
        long pieces = 0;
        for (int i = 0; i < order.Cushions?.Count; i++)
        {
            pieces += PiecesOfCushion * (order.Cushions[i]?.Quantity ?? 1);
        }

        for (int i = 0; i < order.Bays?.Count; i++)
        {
            pieces += PiecesOfCushion * (order.Bays[i]?.Quantity ?? 1) * (order.Bays[i]?.Walls?.Count ?? 0);
        }

        for (int i = 0; i < order.Pieces?.Count; i++)
        {
            pieces += order.Pieces[i]?.Quantity ?? 1;
        }

        return pieces;
    }
}
