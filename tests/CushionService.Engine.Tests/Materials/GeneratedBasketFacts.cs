using CushionService.Engine.Materials;
using CushionService.Engine.Measures;
using CushionService.Engine.Quoting;
using CushionService.Engine.Specifications;
using CushionService.Engine.Specifications.Fillings;
using CushionService.Engine.Specifications.Stocks;
using CushionService.Engine.Tests.Quoting;
using CushionService.Nesting;

namespace CushionService.Engine.Tests.Materials;

/// <summary>What holds for the basket of every order, over generated orders that are bought from stock.</summary>
public sealed class GeneratedBasketFacts
{
    private const int Orders = 150;
    private static readonly UnitSale ByQuarterYard = new(SaleUnit.Yd, 0.25m, 0);

    private static readonly StockSpecification[] Stocks =
    [
        new()
        {
            Id = "sheet",
            Kind = MaterialKind.Foam,
            Width = In(200),
            Length = In(200),
            Thickness = In(1.5m),
            Density = 30,
        },
        new()
        {
            Id = "roll",
            Kind = MaterialKind.Batting,
            Width = In(48),
            Sold = ByQuarterYard,
        },
        new()
        {
            Id = "glue",
            Kind = MaterialKind.Adhesive,
            Coverage = 1.5m,
        },
        new()
        {
            Id = "chain",
            Kind = MaterialKind.Zipper,
            Sold = ByQuarterYard,
        },
        new()
        {
            Id = "tape",
            Kind = MaterialKind.HookAndLoopTape,
            Sold = ByQuarterYard,
        },
        new()
        {
            Id = "cord",
            Kind = MaterialKind.Cord,
            Sold = ByQuarterYard,
        },
        new()
        {
            Id = "twine",
            Kind = MaterialKind.Twine,
            Sold = ByQuarterYard,
        },
        new()
        {
            Id = "spool",
            Kind = MaterialKind.Thread,
            Length = In(3600),
            Sold = new UnitSale(SaleUnit.Each, 1, 0),
        },
    ];

    [Fact]
    public void No_line_buys_less_than_is_needed_or_a_step_too_much() =>
        Parallel.For(
            0,
            Orders,
            number =>
            {
                Drafting drafting = Drafting.Of(Stocked(TrimmedOrders.Order(number)));
                if (!drafting.Violations.IsEmpty)
                {
                    return;
                }

                foreach (
                    Material material in QuotePipeline
                        .Of(drafting, CancellationToken.None)
                        .Materials.Where(material => material.Kind != MaterialKind.Fabric)
                )
                {
                    Holds(material, drafting, $"Generated order {number}: {material.Item}: {material.Because}");
                }
            }
        );

    private static void Holds(Material material, Drafting drafting, string of)
    {
        decimal used = material.Uses.Sum(use => use.Amount);
        Assert.True(
            material.Uses.All(use => use.Amount > 0) && material.Uses.Select(use => use.Cushion).Distinct().Count() == material.Uses.Length,
            of
        );
        switch (material.Kind)
        {
            case MaterialKind.Zipper or MaterialKind.HookAndLoopTape or MaterialKind.Cord or MaterialKind.Twine:
                Within(used / 914_400_000m, (decimal)material.Quantity, 0.25m, of);
                break;
            case MaterialKind.Thread:
                Within(used / 914_400_000m / 100, (decimal)material.Quantity, 1, of);
                break;
            case MaterialKind.Adhesive:
                Within(used / 1_500_000m, (decimal)material.Quantity, 1, of);
                break;
            case MaterialKind.Foam:
                // Exact in whole layers: each cushion's layers reach its thickness, and no layer more.
                Assert.True((decimal)material.Quantity * 200 * 200 * 645.16m >= used, of);
                Assert.Equal(drafting.Order.Cushions.Where(cushion => cushion.Fill?.Kind == FillKind.Foam).Sum(Layers), used);
                break;
            case MaterialKind.Form:
                Assert.Equal(material.Quantity, used);
                Assert.True(
                    material.Uses.All(use => drafting.Order.Cushions.Single(one => one.Id == use.Cushion) is { Fill.Kind: FillKind.Form }),
                    of
                );
                break;
            case MaterialKind.Batting:
                Assert.True(material.Quantity * 36 * 48 * 645.16m >= used - 1, of);
                break;
        }
    }

    private static void Within(decimal needed, decimal sold, decimal step, string of) =>
        Assert.True(sold >= needed && sold - needed < step && sold % step == 0, of);

    // Width × depth × layers, summed here anew.
    private static decimal Layers(CushionSpecification cushion)
    {
        decimal Mm(Length length) => length.In(LengthUnit.Millimetre);
        Length over = cushion.Fill!.Oversize;
        return cushion.Quantity * Math.Ceiling(Mm(cushion.Thickness) / 38.1m) * Mm(cushion.Width + over) * Mm(cushion.Depth + over);
    }

    private static OrderSpecification Stocked(OrderSpecification order) =>
        order with
        {
            Effort = Effort.Quick,
            Stocks = [.. Stocks],
            Prices = order.Prices.Clear(),
            Cushions =
            [
                .. order.Cushions.Select(cushion =>
                    cushion.Fill?.Kind == FillKind.Foam
                        ? cushion with
                        {
                            Fill = cushion.Fill with
                            {
                                Item = "sheet",
                                Density = 30,
                                Wrap = new WrapSpecification("roll", WrapSides.FourSides, 1),
                            },
                        }
                        : cushion
                ),
            ],
        };
}
