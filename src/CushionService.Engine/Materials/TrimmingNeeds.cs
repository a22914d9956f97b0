using CushionService.Engine.Cutting;
using CushionService.Engine.Measures;
using CushionService.Engine.Patterns.Additions;
using CushionService.Engine.Patterns.Panels;
using CushionService.Engine.Specifications;
using CushionService.Engine.Specifications.Closures;
using CushionService.Engine.Specifications.Shapes;
using CushionService.Engine.Specifications.Stocks;
using CushionService.Engine.Specifications.Trimmings;

namespace CushionService.Engine.Materials;

/// <summary>What the additions of a cover take besides fabric.</summary>
internal sealed class TrimmingNeeds(OrderSpecification order, Shop shop)
{
    /// <summary>The item that cord is priced as where no stock is known.</summary>
    public const string Cord = "cord";

    /// <summary>The item that the cord of a bolster's tied ends is priced as.</summary>
    public const string EndCord = "end-cord";

    /// <summary>The item that binding for raw edges is priced as where no stock is known.</summary>
    public const string Binding = "binding";

    /// <summary>The item that a handle's webbing is priced as where no stock is known.</summary>
    public const string Webbing = "webbing";

    /// <summary>The item that buttons are priced as where no stock is known.</summary>
    public const string Buttons = "buttons";

    /// <summary>The item that a tuft's twine is priced as where no stock is known.</summary>
    public const string Twine = "twine";

    /// <summary>The item that an anti-slip base is priced as where no stock is known.</summary>
    public const string AntiSlip = "anti-slip";

    /// <summary>The item that eyelets are priced as where no stock is known.</summary>
    public const string Eyelets = "eyelets";

    /// <summary>What one cushion line takes.</summary>
    public IEnumerable<Need> Of(CushionSpecification cushion, Pattern pattern)
    {
        if (WeltNeed.Of(cushion, pattern, order.Workroom.CuttingStep) is { } welt)
        {
            Length diameter = welt.Welt.CordDiameter;
            yield return ByLength(
                cushion,
                Cord,
                MaterialKind.Cord,
                stock => stock.Diameter,
                diameter,
                welt.Total,
                new Messages.MessageWriter(Messages.Language.English, order.Unit).Text(WeltTexts.Cord(diameter, welt.Because))
            );
        }

        if (cushion.Ends?.Kind == BolsterEndKind.Tied)
        {
            Length each = cushion.Practice.Trims.EndCord;
            yield return new Need(
                cushion,
                shop.ByLength(EndCord, MaterialKind.Cord, shop.Named(EndCord, MaterialKind.Cord)),
                2 * cushion.Quantity * each.Nanometres,
                $"{cushion.Quantity} × 2 ends tied with {Text(each)} each"
            );
        }

        if (cushion.EdgeFinish == RawEdgeFinish.Bound)
        {
            Length edges = Threading.RawEdges(pattern).RoundUpTo(cushion.Practice.MeasuringStep);
            yield return new Need(
                cushion,
                shop.ByLength(Binding, MaterialKind.Binding, shop.Stocked(MaterialKind.Binding)),
                cushion.Quantity * edges.Nanometres,
                $"{cushion.Quantity} × {Text(edges)} of raw edge"
            );
        }

        if (cushion.Handle is { HasWebbing: true } handle)
        {
            Length fold = cushion.Practice.Trims.HandleEndFold;
            yield return ByLength(
                cushion,
                Webbing,
                MaterialKind.Webbing,
                stock => stock.Width,
                handle.Width,
                cushion.Quantity * (handle.Length + 2 * fold),
                $"{cushion.Quantity} × ({Text(handle.Length)} + 2 × {Text(fold)} turned under), {Text(handle.Width)} wide"
            );
        }

        if (cushion.Trim.Tufts is { } tufts)
        {
            string all = cushion.Quantity == 1 ? $"{tufts.Count} tufts" : $"{cushion.Quantity} × {tufts.Count} tufts";
            yield return Button(cushion, tufts.ButtonDiameter, 2 * cushion.Quantity * tufts.Count, $"2 for each of {all}");
            yield return ByLength(
                cushion,
                Twine,
                MaterialKind.Twine,
                null,
                null,
                cushion.Quantity * tufts.Count * (2 * cushion.Thickness + cushion.Practice.Trims.TwineToKnot),
                $"{all} × (2 × {Text(cushion.Thickness)} thickness + {Text(cushion.Practice.Trims.TwineToKnot)} to knot)"
            );
        }

        if (cushion.Closure is ButtonClosure closure)
        {
            int count = Fastenings.Buttons(pattern);
            yield return Button(
                cushion,
                closure.Diameter,
                cushion.Quantity * count,
                $"{cushion.Quantity} × {count} along the overlap, no more than {Text(cushion.Practice.Closures.ButtonSpacing)} apart"
            );
        }

        if (cushion.Trim.Base == BaseKind.AntiSlip)
        {
            decimal area = (decimal)
                AntiSlipBase
                    .PanelsOf(pattern)
                    .Aggregate(default(Area), (sum, panel) => sum + OutlineOffset.AreaOf(panel))
                    .In(LengthUnit.Millimetre);
            yield return new Need(
                cushion,
                AntiSlipBase.Goods(shop),
                cushion.Quantity * area,
                $"{cushion.Quantity} × the underside with its allowances, {AmountText.Area(area, order.Unit)}"
            );
        }

        if (cushion.Trim.Vents > 0)
        {
            yield return new Need(
                cushion,
                shop.Each(Eyelets, MaterialKind.Eyelet, shop.Stocked(MaterialKind.Eyelet)),
                cushion.Quantity * cushion.Trim.Vents,
                $"{cushion.Quantity} × {cushion.Trim.Vents} vents"
            );
        }
    }

    private Need Button(CushionSpecification cushion, Length diameter, int count, string because)
    {
        StockSpecification? stock = shop.Stocked(MaterialKind.Button, button => button.Diameter is null || button.Diameter == diameter);
        return new Need(
            cushion,
            shop.Each(Buttons, MaterialKind.Button, stock) with
            {
                Apart = Text(diameter),
            },
            count,
            $"{because}, {Text(diameter)} across"
        );
    }

    private Need ByLength(
        CushionSpecification cushion,
        string item,
        MaterialKind kind,
        Func<StockSpecification, Length?>? sizeOf,
        Length? size,
        Length length,
        string because
    )
    {
        StockSpecification? stock = shop.Stocked(kind, one => sizeOf?.Invoke(one) is not { } sized || sized == size);
        return new Need(
            cushion,
            shop.ByLength(item, kind, stock) with
            {
                Apart = size is { } known ? Text(known) : "",
            },
            length.Nanometres,
            because
        );
    }

    private string Text(Length length) => LengthText.Format(length, order.Unit);
}
