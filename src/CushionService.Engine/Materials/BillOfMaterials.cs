using System.Collections.Immutable;
using CushionService.Engine.Layouts;
using CushionService.Engine.Patterns;
using CushionService.Engine.Specifications;

namespace CushionService.Engine.Materials;

/// <summary>Everything to buy for an order.</summary>
public static class BillOfMaterials
{
    /// <summary>Lists cloth, fill, closures with trimmings, and thread, in that order; what several cushions need of an item is one line.</summary>
    /// <param name="order">The order.</param>
    /// <param name="patterns">The pattern of each cushion, in the order's order.</param>
    /// <param name="yardages">How much of each cloth to buy.</param>
    /// <param name="cancellation">Gives up the search for foam sheets and rolls.</param>
    /// <exception cref="OperationCanceledException">The caller gave up.</exception>
    public static ImmutableArray<Material> Of(
        OrderSpecification order, IReadOnlyList<Pattern> patterns, IReadOnlyList<Yardage> yardages, CancellationToken cancellation)
    {
        var shop = new Shop(order);
        var basket = new Basket(order.Unit);
        new FillNeeds(order, shop, cancellation).AddTo(basket);
        (var closures, var trimmings) = (new ClosureNeeds(order, shop), new TrimmingNeeds(order, shop));
        foreach ((CushionSpecification cushion, Pattern pattern) in order.Cushions.Zip(patterns))
        {
            basket.Add(closures.Of(cushion, pattern));
            basket.Add(trimmings.Of(cushion, pattern));
        }

        AntiSlipBase.Lay(basket, order, patterns, shop, cancellation);
        new ThreadNeeds(order, shop).AddTo(basket, patterns);
        return [.. yardages.Select(yardage => Cloth(yardage, order)), .. basket.Lines()];
    }

    private static Material Cloth(Yardage yardage, OrderSpecification order)
    {
        FabricSpecification fabric = yardage.Layout.Fabric;
        return new Material(fabric.Id, MaterialKind.Fabric, yardage.SoldUnits, fabric.Sold.Unit, yardage.Because(order.Unit));
    }
<<<<<<< HEAD

    private static string Slope(CushionSpecification cushion, OrderSpecification order) =>
        cushion.Construction == Construction.Wedge ? $", {Text(cushion.FrontThickness, order)} at the front" : "";

    private static Material Loose(OrderSpecification order, SaleUnits units, CushionSpecification cushion, FillSpecification fill)
    {
        Volume room = Filling.Room(cushion);
        Mass mass = cushion.Quantity * new Volume(room.CubicMillimetres * fill.Plumpness).At(fill.Density ?? 0);
        SaleUnit unit = units.For(fill.Item, units.ByWeight, SaleUnit.Lb, SaleUnit.Kg);
        string space = order.Unit == LengthUnit.Inch ? $"{Number(room.CubicFeet)} ft³" : $"{Number(room.CubicMillimetres / 1_000_000)} l";
        return new Material(fill.Item, MaterialKind.LooseFill, units.Sell(fill.Item, mass, unit), unit,
            $"{cushion.Id}: {cushion.Quantity} × {space} × {Number(fill.Plumpness)} plumpness, packed at {Number(fill.Density ?? 0)} kg/m³: {Weight(mass, unit)}");
    }

    private static Material? Closure(OrderSpecification order, SaleUnits units, CushionSpecification cushion, Pattern pattern)
    {
        switch (cushion.Closure)
        {
            case ZipperClosure:
                Length chain = Closing.ZipperChain(cushion, pattern);
                SaleUnit unit = units.For(Zipper, SaleUnit.Each, SaleUnit.Yd, SaleUnit.M);
                decimal quantity = unit == SaleUnit.Each ? cushion.Quantity : units.Sell(Zipper, cushion.Quantity * chain, unit);
                return new Material(Zipper, MaterialKind.Zipper, quantity, unit, $"{cushion.Id}: {cushion.Quantity} × {Text(chain, order)} of chain");
            case HookAndLoopClosure hook:
                Length section = Fastenings.Run(pattern);
                Length tape = Closing.Tape(section);
                SaleUnit by = units.For(HookAndLoopTape, units.ByLength, SaleUnit.Yd, SaleUnit.M);
                return new Material(HookAndLoopTape, MaterialKind.HookAndLoopTape, units.Sell(HookAndLoopTape, cushion.Quantity * tape, by), by,
                    $"{cushion.Id}: {cushion.Quantity} × {Text(tape, order)} of hook and as much loop, {Text(hook.TapeWidth, order)} wide; section {Text(section, order)} less 1/2 in at each end");
            default:
                return null;
        }
    }

    private static Material? ThreadFor(OrderSpecification order, SaleUnits units, IReadOnlyList<Pattern> patterns)
    {
        ImmutableArray<(string Cushion, Length Sewn)> seams =
            [.. order.Cushions.Zip(patterns, (cushion, pattern) => (cushion.Id, cushion.Quantity * Threading.Stitching(cushion, pattern)))];
        Length stitching = seams.Aggregate(Length.Zero, (sum, seam) => sum + seam.Sewn);

        if (stitching == Length.Zero)
        {
            return null;
        }

        WorkroomPractice workroom = order.Workroom;
        SaleUnit unit = units.For(Thread, units.ByLength, SaleUnit.Yd, SaleUnit.M);
        Length thread = Threading.Thread(stitching, workroom.ThreadRatio, workroom.ThreadWaste);
        decimal quantity = units.Sell(Thread, thread.In(unit == SaleUnit.Yd ? LengthUnit.Yard : LengthUnit.Metre), unit, 1);
        return new Material(Thread, MaterialKind.Thread, quantity, unit,
            $"{Text(stitching, order)} of stitching × {Number(workroom.ThreadRatio)} × {Number(1 + workroom.ThreadWaste)} for waste, up to the next whole {(unit == SaleUnit.Yd ? "yard" : "metre")}")
        {
            Uses = [.. seams.Select(seam => new CushionUse(seam.Cushion, seam.Sewn.Nanometres))],
        };
    }

    private static string Text(Length length, OrderSpecification order) => LengthText.Format(length, order.Unit);

    private static string Number(decimal number) => FormattableString.Invariant($"{number:0.###}");

    private static string Weight(Mass mass, SaleUnit unit) =>
        unit == SaleUnit.Lb ? FormattableString.Invariant($"{mass.Pounds:0.00} lb") : FormattableString.Invariant($"{mass.Kilograms:0.000} kg");
=======
>>>>>>> main
}
