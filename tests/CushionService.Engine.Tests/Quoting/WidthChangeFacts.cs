using System.Text.Json;
using CushionService.Engine.Layouts;
using CushionService.Engine.Measures;
using CushionService.Engine.Messages;
using CushionService.Engine.Quoting;
using CushionService.Engine.Specifications;
using CushionService.Nesting;

namespace CushionService.Engine.Tests.Quoting;

/// <summary>What is said to help an order that is wider than its fabric, beside what the changed order then buys.</summary>
public sealed class WidthChangeFacts
{
    private const int Orders = 40;

    [Fact]
    public void A_changed_order_buys_no_more_than_was_said()
    {
        int compared = 0;
        Parallel.For(
            0,
            Orders,
            number =>
            {
                OrderSpecification order = PrintedOrders.Order(number);
                order = order with
                {
                    Effort = number % 2 == 0 ? Effort.Standard : Effort.Quick,
                    Fabrics = [.. order.Fabrics.Select(fabric => fabric with { Width = In(22) })],
                };
                Drafting drafting = Drafting.Of(order);
                if (drafting.Violations.IsEmpty || WidthChanges.Said(drafting, CancellationToken.None)[0].Detail is not { } said)
                {
                    return;
                }

                string narrow = drafting.Pieces.First(piece => !FabricNesting.Fits(drafting.Fabric(piece), piece)).Fabric;
                foreach (ChangedOrder change in ChangedOrder.Of(drafting.Order, drafting.Order.Fabric(narrow)))
                {
                    Drafting changed = Drafting.Of(change.Order);
                    if (!changed.Violations.IsEmpty || Promised(said, change.Change) is not { } promised)
                    {
                        continue;
                    }

                    Interlocked.Increment(ref compared);
                    foreach (var yardage in QuotePipeline.LayOut(changed, CancellationToken.None))
                    {
                        SaleAmount most = promised[yardage.Layout.Fabric.Name];
                        Assert.True(
                            yardage.SoldAmount.Units.CompareTo(most.Units) <= 0,
                            $"Order {number}, {change.Change}: {yardage.SoldAmount}, where at most {most} was said."
                        );
                    }
                }
            }
        );
        Assert.True(compared > Orders / 4, $"Only {compared} changes were compared.");
    }

    private static Dictionary<string, SaleAmount>? Promised(Message said, FabricChange change) =>
        Inner(said)
            .Where(message => message.Key == "draft.change-takes")
            .Where(message =>
                message.Arguments[0].Value is ContractWord word
                && word.Text == JsonNamingPolicy.KebabCaseLower.ConvertName(change.ToString())
            )
            .Select(message =>
                Inner(message)
                    .Where(taken => taken.Key.StartsWith("draft.fabric-taken", StringComparison.Ordinal))
                    .ToDictionary(taken => (string)taken.Arguments[1].Value!, taken => (SaleAmount)taken.Arguments[0].Value!)
            )
            .FirstOrDefault();

    private static IEnumerable<Message> Inner(Message message) =>
        message
            .Arguments.SelectMany(argument =>
                argument.Value switch
                {
                    Message one => [one],
                    ArgumentList many => many.Values.Select(one => one.Value).OfType<Message>(),
                    _ => Enumerable.Empty<Message>(),
                }
            )
            .SelectMany(one => Inner(one).Prepend(one));
}
