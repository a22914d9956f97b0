using CushionService.Engine.Quoting;
using CushionService.Engine.Specifications;

namespace CushionService.Engine.Tests.Instructions;

/// <summary>Whether the steps of sewing say some things, in this order.</summary>
internal static class StepOrder
{
    public static void InOrder(CushionSpecification cushion, params string[] parts) => InOrder(Order(cushion), parts);

    public static void InOrder(OrderSpecification order, params string[] parts)
    {
        Drafting drafting = Drafting.Of(order);
        string steps = string.Join(
            '\n',
            Engine.Instructions.SewingOrder.Of(order, drafting.Patterns, drafting.Pieces).Select(step => step.Text.ToString())
        );
        var from = 0;
        foreach (string part in parts)
        {
            int at = steps.IndexOf(part, from, StringComparison.Ordinal);
            Assert.True(at >= from, $"\"{part}\" is missing or out of order in:\n{steps}");
            from = at + 1;
        }
    }
}
