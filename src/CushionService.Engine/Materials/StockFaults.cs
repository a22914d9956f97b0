using CushionService.Engine.Measures;
using CushionService.Engine.Patterns.Panels;
using CushionService.Engine.Specifications;
using CushionService.Engine.Specifications.Closures;
using CushionService.Engine.Specifications.Fillings;
using CushionService.Engine.Specifications.Stocks;
using CushionService.Engine.Specifications.Trimmings;

namespace CushionService.Engine.Materials;

/// <summary>What an order asks of its stocks and they do not have.</summary>
public static class StockFaults
{
    /// <summary>Blocks of foam that no sheet of their stock holds whole: they are glued from parts.</summary>
    /// <param name="order">The order, whole.</param>
    /// <returns>One notice a cushion and foam: the first block that is joined, code <c>foam-joined</c>.</returns>
    public static IEnumerable<Violation> Joined(OrderSpecification order)
    {
        Shop? shop = null;
        foreach (
            CushionSpecification cushion in order
                .Cushions.Where(cushion => cushion.Fill?.Kind == FillKind.Foam)
                .SelectMany(cushion => FoamBuildUp.Layers(cushion))
                .DistinctBy(layer => (layer.Pointer, layer.Fill!.Item))
        )
        {
            shop ??= new Shop(order);
            if (
                shop.Named(cushion.Fill!.Item, MaterialKind.Foam) is { Width: { } width, Length: { } length } stock
                && FoamBlock
                    .Of(cushion, paired: true, stock.Thickness)
                    .FirstOrDefault(block => block.PartsOn(stock, order.Workroom.Kerf).Count > 1)
                    is { } block
            )
            {
                yield return new Violation(
                    $"{cushion.Pointer}/fill/stock",
                    "foam-joined",
                    StockFaultTexts.FoamJoined(
                        cushion.Name,
                        block.Width,
                        block.Depth,
                        stock.Name,
                        width,
                        length,
                        block.PartsOn(stock, order.Workroom.Kerf).Count
                    )
                );
            }
        }
    }

    /// <summary>Sizes of notions that the order's stocks of their kind do not have; they are listed under their kind's own name.</summary>
    /// <param name="order">The order, whole.</param>
    /// <returns>Code <c>not-stocked</c> for a size that no stock of the kind has, and <c>form-size</c> for a form off the
    /// rule. A kind of which the order lists no stock gets no warning: the caller does not keep that stock
    /// here.</returns>
    public static IEnumerable<Violation> Warnings(OrderSpecification order)
    {
        foreach (CushionSpecification cushion in order.Cushions)
        {
            if (cushion.Fill?.Form is { } asked && FormFault(cushion, asked, order) is { } fault)
            {
                yield return fault;
            }

            foreach ((MaterialKind kind, string field, Length size, Func<StockSpecification, Length?> sizeOf) in Sizes(cushion))
            {
                StockSpecification[] stocks = [.. order.Stocks.Where(stock => stock.Kind == kind)];
                // A stock whose size is not said may be of any size.
                if (stocks.Length > 0 && stocks.All(stock => sizeOf(stock) is { } has && has != size))
                {
                    yield return new Violation($"{cushion.Pointer}/{field}", "not-stocked", StockFaultTexts.NotStocked(kind, size));
                }
            }
        }
    }

    /// <summary>Tape, webbing and twine of which every stock of the right size comes in packs that are too short for one length.</summary>
    /// <param name="order">The order, whole.</param>
    /// <param name="patterns">The pattern of each cushion, in the order's order.</param>
    /// <returns>Code <c>not-stocked</c>, with the longest pack there is.</returns>
    public static IEnumerable<Violation> TooShort(OrderSpecification order, IReadOnlyList<Pattern> patterns)
    {
        Shop? shop = null;
        foreach ((CushionSpecification cushion, Pattern pattern) in order.Cushions.Zip(patterns))
        {
            foreach ((MaterialKind kind, string field, Length? width, Length each) in WholeLengths(cushion, pattern))
            {
                StockSpecification? longest = order
                    .Stocks.Where(stock => stock.Kind == kind && (width is null || stock.Width is null || stock.Width == width))
                    .MaxBy(stock => stock.Length ?? Length.MaxValue);
                shop ??= new Shop(order);
                if (longest is { Length: { } content } && !shop.Holds(longest, each))
                {
                    yield return new Violation(
                        $"{cushion.Pointer}/{field}",
                        "not-stocked",
                        StockFaultTexts.StockTooShort(longest.Name, content, each)
                    );
                }
            }
        }
    }

    private static IEnumerable<(MaterialKind Kind, string Field, Length? Width, Length Each)> WholeLengths(
        CushionSpecification cushion,
        Pattern pattern
    )
    {
        if (cushion.Closure is HookAndLoopClosure hook)
        {
            yield return (MaterialKind.HookAndLoopTape, "closure", hook.TapeWidth, ClosureNeeds.TapeOf(cushion, pattern).Tape);
        }

        if (cushion.Handle is { HasWebbing: true } handle)
        {
            yield return (MaterialKind.Webbing, "handle/length", handle.Width, TrimmingNeeds.WebbingOf(cushion, handle));
        }

        if (cushion.Trim.Tufts is not null)
        {
            yield return (MaterialKind.Twine, "tufts", null, TrimmingNeeds.TwineOf(cushion));
        }
    }

    // A form of a size that no stock has is made to size; one that is too small or too large is named all the same.
    private static Violation? FormFault(CushionSpecification cushion, FormSpecification asked, OrderSpecification order)
    {
        var form = PillowForm.For(cushion, order.Stocks);
        if (form.Stock is null && order.Stocks.Any(stock => stock.Kind == MaterialKind.Form))
        {
            return new Violation($"{cushion.Pointer}/fill", "not-stocked", StockFaultTexts.FormNotStocked(form.Width, form.Depth));
        }

        if (form.IsOfOtherShape(cushion))
        {
            return new Violation(
                $"{cushion.Pointer}/fill",
                "form-size",
                StockFaultTexts.FormShape(cushion.Name, form.Stock!.Name, form.Stock.Diameter is not null)
            );
        }

        (Length width, Length depth) = PillowForm.Cover(cushion);
        (Length least, Length most) = PillowForm.Oversize(Length.Min(width, depth), cushion.Practice.Fills);
        return form.Fits
            ? null
            : new Violation(
                $"{cushion.Pointer}/fill",
                "form-size",
                StockFaultTexts.FormSize(cushion.Name, form.Width, form.Depth, width, depth, least, most > least ? most : null)
            );
    }

    private static IEnumerable<(MaterialKind Kind, string Field, Length Size, Func<StockSpecification, Length?> SizeOf)> Sizes(
        CushionSpecification cushion
    )
    {
        if (cushion.Closure is HookAndLoopClosure hook)
        {
            yield return (MaterialKind.HookAndLoopTape, "closure/tapeWidth", hook.TapeWidth, stock => stock.Width);
        }

        if (cushion.Closure is ButtonClosure buttons)
        {
            yield return (MaterialKind.Button, "closure/buttonDiameter", buttons.Diameter, stock => stock.Diameter);
        }

        if (cushion.Trim.Edging is WeltSpecification welt)
        {
            yield return (MaterialKind.Cord, "edging/cordDiameter", welt.CordDiameter, stock => stock.Diameter);
        }

        if (cushion.Trim.Edging is BoughtTrimSpecification trim)
        {
            yield return trim.Trim == EdgingKind.LipCord
                ? (MaterialKind.LipCord, "edging/cordDiameter", trim.Size, stock => stock.Diameter)
                : (TrimmingNeeds.KindOf(trim), "edging/depth", trim.Size, stock => stock.Width);
        }

        if (cushion.Trim.Tufts is { } tufts)
        {
            yield return (MaterialKind.Button, "tufts/buttonDiameter", tufts.ButtonDiameter, stock => stock.Diameter);
        }

        if (cushion.Handle is { HasWebbing: true } handle)
        {
            yield return (MaterialKind.Webbing, "handle/width", handle.Width, stock => stock.Width);
        }
    }
}
