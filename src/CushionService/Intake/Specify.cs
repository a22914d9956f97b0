using System.Collections.Immutable;
using System.Runtime.InteropServices;
using CushionService.Contract.Orders;
using CushionService.Engine.Geometry;
using CushionService.Engine.Measures;
using CushionService.Engine.Specifications;
using CushionService.Engine.Specifications.Closures;
using CushionService.Engine.Specifications.Fabrics;
using CushionService.Engine.Specifications.Pricing;
using CushionService.Engine.Specifications.Trimmings;
using CushionService.Nesting;

namespace CushionService.Intake;

/// <summary>Turns an order that keeps every rule into the engine's specification.</summary>
internal static class Specify
{
    public static OrderSpecification Order(OrderReading reading)
    {
        Order order = reading.Order;
        Currency? currency = reading.Currency;
        return new OrderSpecification
        {
            Unit = reading.Unit,
            Currency = currency,
            Effort = order.Effort ?? Effort.Standard,
            Cushions = Each(order.Cushions, Cushion, reading),
            Pieces = Each(order.Pieces, Piece, reading),
            Fabrics = Each(order.Fabrics, Fabric, reading),
            Workroom = reading.Practice,
            Stocks = StockReading.Of(order.Stocks ?? [], reading),
            Prices = PriceReading.Of(order.Prices ?? [], reading.Book?.Prices ?? PriceReading.None, currency),
            PriceBook = reading.Book,
            Costing = CostingReading.Of(order.Costing, reading.Book?.Costing ?? CostingSpecification.None, currency),
        };
    }

    private static ImmutableArray<TTo> Each<TFrom, TTo>(
        IReadOnlyList<TFrom>? entries,
        Func<TFrom, int, OrderReading, TTo> read,
        OrderReading order
    )
    {
        if (entries is not { Count: > 0 })
        {
            return [];
        }

        var all = new TTo[entries.Count];
        for (int i = 0; i < all.Length; i++)
        {
            all[i] = read(entries[i], i, order);
        }

        return ImmutableCollectionsMarshal.AsImmutableArray(all);
    }

    private static CushionSpecification Cushion(Cushion cushion, int index, OrderReading order)
    {
        CushionReading reading = order.Cushion(cushion);
        string top = reading.Top!,
            sides = cushion.Fabrics?.Sides ?? top;
        var plain = new CushionSpecification
        {
            Id = cushion.Id!,
            Pointer = $"/cushions/{index}",
            Quantity = cushion.Quantity ?? 1,
            Construction = cushion.Construction!.Value,
            Outline = reading.Outline!,
            Thickness = reading.Thickness ?? Length.Zero,
            BoxingTautness = reading.Offer is { Thickness: true } ? order.Practice.BoxingTautness : Length.Zero,
            SeamAllowance = reading.SeamAllowance!.Value,
            Joins = reading.Joins,
            Closure = Closure(reading),
            Handle = cushion.Handle is { } handle
                ? new HandleSpecification(
                    handle.Kind!.Value,
                    reading.HandleSide,
                    order.Length(handle.Width)!.Value,
                    order.Length(handle.Length)!.Value,
                    order.Length(handle.Span)!.Value
                )
                : null,
            Trim = TrimReading.Of(cushion, reading, order),
            Fill = FillReading.Of(cushion.Fill, order),
            Fabrics = TrimReading.Fabrics(
                cushion,
                new FabricRoles(top, cushion.Fabrics?.Bottom ?? top, sides, cushion.Handle?.Fabric ?? sides)
            ),
        };
        return new ConstructionReading(cushion, order).Of(plain);
    }

    private static ClosureSpecification Closure(CushionReading reading)
    {
        Side side = reading.Side!.Value;
        return reading.Closure switch
        {
            ClosureKind.Zipper => new ZipperClosure(side, reading.Return!.Value, reading.TurnUnder!.Value, reading.Lap!.Value),
            ClosureKind.HookAndLoop => new HookAndLoopClosure(
                side,
                reading.Return!.Value,
                reading.Fold!.Value,
                reading.Overlap!.Value,
                reading.TapeWidth!.Value
            ),
            ClosureKind.Buttons => new ButtonClosure(
                side,
                reading.Return!.Value,
                reading.Fold!.Value,
                reading.Overlap!.Value,
                reading.ButtonDiameter!.Value
            ),
            ClosureKind.Ties => new TieClosure(
                side,
                reading.Return!.Value,
                reading.Fold!.Value,
                reading.Overlap!.Value,
                reading.TieLength!.Value
            ),
            ClosureKind.Envelope => new EnvelopeClosure(side, reading.Fold!.Value, reading.Overlap!.Value),
            _ => new HandSewnClosure(side),
        };
    }

    private static LoosePieceSpecification Piece(LoosePiece piece, int index, OrderReading order)
    {
        ImmutableArray<Point> corners = piece.Points is { } points ? OutlineReading.Corners(points, order)!.Value : [];
        Point low = corners.IsEmpty ? default : new Point(corners.Min(corner => corner.X), corners.Min(corner => corner.Y));
        return new LoosePieceSpecification(
            piece.Id!,
            $"/pieces/{index}",
            piece.Fabric ?? order.OnlyFabric!,
            piece.Quantity ?? 1,
            corners.IsEmpty ? order.Length(piece.Width)!.Value : corners.Max(corner => corner.X) - low.X,
            corners.IsEmpty ? order.Length(piece.Length)!.Value : corners.Max(corner => corner.Y) - low.Y,
            piece.Rotation,
            [.. corners.Select(corner => corner.Moved(-low.X, -low.Y))]
        );
    }

    private static FabricSpecification Fabric(Fabric fabric, int index, OrderReading order)
    {
        bool oneWay = fabric.OneWay ?? false;
        return new FabricSpecification
        {
            Id = fabric.Id!,
            Pointer = $"/fabrics/{index}",
            Width = order.Length(fabric.Width)!.Value,
            Selvedge = order.Length(fabric.Selvedge) ?? Length.Zero,
            OneWay = oneWay,
            Rotations = fabric.Rotation ?? (oneWay ? Rotations.None : Rotations.HalfTurn),
            Repeat = fabric.Repeat is { } repeat
                ? new RepeatSpecification(order.Length(repeat.Length)!.Value, order.Length(repeat.Width), repeat.Drop ?? DropKind.Straight)
                : null,
            LengthShrinkage = Share(fabric.Shrinkage?.Length),
            WidthShrinkage = Share(fabric.Shrinkage?.Width),
            Squaring = order.Length(fabric.Squaring) ?? order.Practice.Squaring,
            Sold = SaleReading.Rule(fabric, order)!,
            OnHand = fabric.OnHand is { } offcuts
                ?
                [
                    .. offcuts.SelectMany(offcut =>
                        Enumerable.Repeat(
                            new OffcutSpecification(order.Length(offcut.Width)!.Value, order.Length(offcut.Length)!.Value),
                            offcut.Quantity ?? 1
                        )
                    ),
                ]
                : [],
            Price = fabric.Price is { } price ? PriceReading.Of(price, order.Currency!.Value) : PriceReading.InBook(fabric, order),
        };
    }

    // Finer than a millionth is noise, and would outgrow exact arithmetic.
    private static Fraction Share(double? share) => share is { } lost ? Fraction.Of(decimal.Round((decimal)lost, 6)) : default;
}
