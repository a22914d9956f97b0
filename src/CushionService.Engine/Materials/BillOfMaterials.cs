using System.Collections.Immutable;
using CushionService.Engine.Layouts;
using CushionService.Engine.Measures;
using CushionService.Engine.Patterns;
using CushionService.Engine.Specifications;

namespace CushionService.Engine.Materials;

/// <summary>Everything to buy for an order.</summary>
public static class BillOfMaterials
{
    /// <summary>The item that a zipper is priced as.</summary>
    public const string Zipper = "zipper";

    /// <summary>The item that hook-and-loop tape is priced as.</summary>
    public const string HookAndLoopTape = "hook-and-loop-tape";

    /// <summary>The item that thread is priced as.</summary>
    public const string Thread = "thread";

    /// <summary>Lists cloth, fill, closures with trimmings, and thread, in that order.</summary>
    /// <param name="order">The order.</param>
    /// <param name="patterns">The pattern of each cushion, in the order's order.</param>
    /// <param name="yardages">How much of each cloth to buy.</param>
    public static ImmutableArray<Material> Of(OrderSpecification order, IReadOnlyList<Pattern> patterns, IReadOnlyList<Yardage> yardages)
    {
        var units = new SaleUnits(order);
        var materials = ImmutableArray.CreateBuilder<Material>();
        foreach (Yardage yardage in yardages)
        {
            FabricSpecification fabric = yardage.Layout.Fabric;
            materials.Add(new Material(fabric.Id, MaterialKind.Fabric, yardage.SoldUnits, fabric.Sold.Unit, yardage.Because(order.Unit)));
        }

        foreach (CushionSpecification cushion in order.Cushions)
        {
            if (cushion.Fill is { } fill)
            {
                materials.Add((fill.Kind == FillKind.Foam ? Foam(order, units, cushion, fill) : Loose(order, units, cushion, fill)).For(cushion.Id));
            }
        }

        for (var i = 0; i < patterns.Count; i++)
        {
            if (Closure(order, units, order.Cushions[i], patterns[i]) is { } closure)
            {
                materials.Add(closure.For(order.Cushions[i].Id));
            }

            materials.AddRange(new Trimmings(order, units).Of(order.Cushions[i], patterns[i]).Select(trimming => trimming.For(order.Cushions[i].Id)));
        }

        if (ThreadFor(order, units, patterns) is { } thread)
        {
            materials.Add(thread);
        }

        return materials.ToImmutable();
    }

    private static Material Foam(OrderSpecification order, SaleUnits units, CushionSpecification cushion, FillSpecification fill)
    {
        string size = $"{Text(cushion.Width + fill.Oversize, order)} × {Text(cushion.Depth + fill.Oversize, order)} × {Text(cushion.Thickness > Length.Zero ? cushion.Thickness : cushion.Length, order)}{Slope(cushion, order)}";
        SaleUnit unit = fill.Density is null ? SaleUnit.Each : units.For(fill.Item, SaleUnit.Each, SaleUnit.Lb, SaleUnit.Kg);
        if (fill.Density is not { } density)
        {
            return new Material(fill.Item, MaterialKind.Foam, cushion.Quantity, unit, $"{cushion.Id}: {cushion.Quantity} × block of {size}");
        }

        Mass mass = cushion.Quantity * Filling.Foam(cushion, fill.Oversize).At(density);
        decimal quantity = unit is SaleUnit.Lb or SaleUnit.Kg ? units.Sell(fill.Item, mass, unit) : cushion.Quantity;
        return new Material(fill.Item, MaterialKind.Foam, quantity, unit,
            $"{cushion.Id}: {cushion.Quantity} × block of {size}, {Number(density)} kg/m³: {Weight(mass, units.ByWeight)}");
    }

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
}
