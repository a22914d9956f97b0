using CushionService.Engine.Cutting;
using CushionService.Engine.Layouts;
using CushionService.Engine.Measures;
using CushionService.Engine.Patterns.Panels;
using CushionService.Engine.Quoting;
using CushionService.Engine.Specifications;
using CushionService.Engine.Specifications.Closures;
using CushionService.Engine.Specifications.Shapes;

namespace CushionService.Engine.Tests.Quoting;

/// <summary>What holds for every order, over 2 000 generated ones.</summary>
public sealed class GeneratedOrderFacts
{
    private const int Orders = 2000;

    [Fact]
    public void Every_order_is_quoted_and_every_figure_of_it_holds() =>
        Parallel.For(
            0,
            Orders,
            number =>
            {
                OrderSpecification order = GeneratedOrders.Order(number);
                try
                {
                    Drafting drafting = Drafting.Of(order);
                    Assert.All(drafting.Patterns, pattern => Assert.Same(pattern, pattern.Closed()));
                    Assert.All(drafting.Pieces, NoSmallerThanItsPanel);
                    Assert.Equal(CannotLie(drafting), drafting.Violations.Length > 0);
                    if (drafting.Violations.IsEmpty)
                    {
                        Holds(QuotePipeline.Of(drafting, CancellationToken.None), order);
                    }
                }
                catch (Exception fault)
                {
                    throw new InvalidOperationException($"Generated order {number}: {fault.Message}", fault);
                }
            }
        );

    [Fact]
    public void Few_generated_orders_cannot_be_made_and_all_kinds_are_among_them()
    {
        OrderSpecification[] orders = [.. Enumerable.Range(0, Orders).Select(GeneratedOrders.Order)];
        CushionSpecification[] cushions = [.. orders.SelectMany(order => order.Cushions)];

        Assert.InRange(orders.Count(order => CannotLie(Drafting.Of(order))), 1, Orders / 3);
        Assert.Equal(
            2 * Enum.GetValues<ClosureKind>().Length,
            cushions.Select(cushion => (cushion.Construction, cushion.Closure.Kind)).Distinct().Count()
        );
        Assert.Equal(
            2,
            cushions.Where(cushion => cushion.Construction == Construction.Boxed).Select(cushion => cushion.Joins).Distinct().Count()
        );
        Assert.Equal(3, orders.Select(order => order.Unit).Distinct().Count());
        Assert.InRange(cushions.Count(cushion => cushion.Handle is not null), 100, Orders);
        Assert.InRange(orders.Count(order => order.Fabrics.Any(fabric => fabric.Repeat is not null)), 100, Orders);
        Assert.InRange(
            orders.Count(order =>
                Drafting.Of(order).Pieces.Any(piece => piece.Part.ToString().StartsWith("boxing-", StringComparison.Ordinal))
            ),
            20,
            Orders
        );
    }

    [Fact]
    public void The_same_order_gives_the_same_answer()
    {
        for (var number = 0; number < 100; number++)
        {
            if (Drafting.Of(GeneratedOrders.Order(number)).Violations.IsEmpty)
            {
                Assert.Equal(Fingerprint(number), Fingerprint(number));
            }
        }
    }

    private static void Holds(Quote quote, OrderSpecification order)
    {
        foreach (Yardage yardage in quote.Yardages)
        {
            FabricLayout layout = yardage.Layout;
            SaleRule rule = layout.Fabric.Sold;
            Length needed = FabricSale.Needed(layout.Fabric, layout.Length, layout.Start);

            LayoutCheck.Passes(layout, quote.Drafting);
            Assert.True(Length.Zero < layout.LowerBound && layout.LowerBound <= layout.Length, "The bound is above the layout.");
            Assert.True(layout.Length <= needed && needed <= yardage.Sold, "Less is sold than is needed.");
            Assert.Equal(0, yardage.Sold.Nanometres % rule.Step.Nanometres);
            Assert.True(yardage.Sold - needed < rule.Step || yardage.Sold == rule.Least, "More than a step too much is sold.");
            Assert.True(
                !layout.ProvenMinimal || FabricSale.Sold(layout.Fabric, layout.LowerBound, layout.Start) == yardage.Sold,
                "The proof of the least does not hold."
            );
        }

        Assert.All(quote.Materials, material => Assert.True(material.Quantity > 0, $"{material.Item}: {material.Because}"));
        Assert.Equal(order.Currency is null, quote.Cost is null);
        Assert.Equal(quote.Cost?.Lines.Sum(line => line.Amount.Amount), quote.Cost?.Total.Amount);
    }

    // Finished outline and allowances, edge by edge, summed here anew from the panel's edges.
    private static void NoSmallerThanItsPanel(CutPiece piece)
    {
        if (piece.Panel is not { } panel)
        {
            return;
        }

        long Deepest(Func<Edge, bool> on) => panel.Edges.Where(on).Max(edge => edge.Finish.Turns * edge.Finish.Depth.Nanometres);
        long across =
            panel.Edges.Max(edge => edge.To.X.Nanometres)
            + Deepest(edge => edge.To.Y < edge.From.Y)
            + Deepest(edge => edge.To.Y > edge.From.Y);
        long along =
            panel.Edges.Max(edge => edge.To.Y.Nanometres)
            + Deepest(edge => edge.To.X > edge.From.X)
            + Deepest(edge => edge.To.X < edge.From.X);

        Assert.True(piece.Width.Nanometres >= across && piece.Length.Nanometres >= along, $"{piece.Id} is cut too small.");
        Assert.True(
            piece.Width.Nanometres - across < In(1).Nanometres && piece.Length.Nanometres - along < In(1).Nanometres,
            $"{piece.Id} is cut too large."
        );
    }

    private static bool CannotLie(Drafting drafting) =>
        drafting.Pieces.Any(piece =>
            (piece.IsRailroaded ? piece.Length : piece.Width) > drafting.Fabric(piece).UsableWidth
            && !(piece.Rotations == Nesting.Rotations.QuarterTurns && piece.Length <= drafting.Fabric(piece).UsableWidth)
        );

    private static string Fingerprint(int number)
    {
        Quote quote = Quote(GeneratedOrders.Order(number));
        return string.Join(
            '\n',
            (string[])
                [
                    .. quote.Yardages.Select(yardage => yardage.Because.ToString()),
                    .. quote
                        .Yardages.SelectMany(yardage => yardage.Layout.Placements)
                        .Select(laid => $"{laid.Piece.Id} {laid.Copy} {laid.X.Nanometres} {laid.Y.Nanometres} {laid.Turn}"),
                    .. quote.Materials.Select(material => material.Because.ToString()),
                    .. quote.Steps.Select(step => step.Text.ToString()),
                ]
        );
    }
}
