using CushionService.Contract.Orders;
using CushionService.Engine.Instructions;
using CushionService.Engine.Specifications;

namespace CushionService.Intake;

/// <summary>Says where a cover will be washed and nobody has stated how much its fabric shrinks: it may come out too small.</summary>
internal static class UnknownShrinkage
{
    /// <summary>Reports each such fabric.</summary>
    /// <param name="order">The order as read.</param>
    /// <param name="findings">Takes what is unwise.</param>
    public static void Check(OrderSpecification order, Findings findings)
    {
        for (var i = 0; i < order.Fabrics.Length; i++)
        {
            if (SewingOrder.IsUnknown(order, order.Fabrics[i]))
            {
                findings
                    .Within(nameof(Order.Fabrics), i)
                    .Warn(nameof(Fabric.Shrinkage), "shrinkage-unknown", FabricTexts.ShrinkageUnknown(order.Fabrics[i].Name));
            }
        }
    }
}
