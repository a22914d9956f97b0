using CushionService.Contract.Answers;
using CushionService.Engine.Measures;

namespace CushionService.Documents;

/// <summary>What is bought beside what it costs.</summary>
internal static class CostLines
{
    /// <summary>The line of the cost that prices what is bought; null where it has no price.</summary>
    /// <param name="cost">The cost; null where the order has none.</param>
    /// <param name="item">What is bought. It may be bought for several cushions, or by several units, a line for each.</param>
    /// <param name="quantity">How much of it, in <paramref name="unit"/>.</param>
    /// <param name="unit">The unit of sale.</param>
    public static CostLineAnswer? LineOf(this CostAnswer? cost, string item, double quantity, SaleUnit unit) =>
        cost?.Lines.Where(line => line.Item == item && line.Unit == unit).MinBy(line => Math.Abs(line.Quantity - quantity));
}
