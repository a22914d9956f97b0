using System.Numerics;

namespace CushionService.Nesting.Audit;

/// <summary>The audit's own arithmetic of what is sold. It tries steps one way or the other instead of dividing, so that an error in the
/// ladder's formulas, which the search uses, cannot hide here.</summary>
internal static class SaleSteps
{
    // No strip is sold in more steps than this; the search for a step halves it.
    private const int MostDoublings = 80;

    /// <summary>The number of sale steps, from 0, that a layout of the given length needs.</summary>
    /// <param name="sale">Where the steps end.</param>
    /// <param name="length">In grid units.</param>
    /// <exception cref="LayoutAuditException">No number of steps is enough.</exception>
    public static BigInteger For(SaleLadder sale, long length)
    {
        if (IsEnough(sale, 0, length))
        {
            return 0;
        }

        // Doubles until it is enough, then halves the difference: the first number that is enough lies above tooFew, at or below enough.
        BigInteger tooFew = 0;
        BigInteger enough = 1;
        for (var doubling = 0; !IsEnough(sale, enough, length); doubling++)
        {
            if (doubling == MostDoublings)
            {
                throw new LayoutAuditException($"No number of sale steps reaches {length}.");
            }

            (tooFew, enough) = (enough, enough * 2);
        }

        while (enough - tooFew > 1)
        {
            var middle = (tooFew + enough) / 2;
            (tooFew, enough) = IsEnough(sale, middle, length) ? (tooFew, middle) : (middle, enough);
        }

        return enough;
    }

    // A layout fits when its length, unscaled, is at most the minimum sale and the steps after it.
    /// <remarks>In whole numbers of any size, so that no product can overflow.</remarks>
    private static bool IsEnough(SaleLadder sale, BigInteger steps, long length) =>
        (sale.First + steps * sale.Step) * sale.Numerator >= (BigInteger)length * sale.Denominator;
}
