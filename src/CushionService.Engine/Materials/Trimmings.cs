using CushionService.Engine.Cutting;
using CushionService.Engine.Measures;
using CushionService.Engine.Patterns;
using CushionService.Engine.Specifications;

namespace CushionService.Engine.Materials;

/// <summary>What the additions of a cover take besides cloth.</summary>
internal sealed class Trimmings(OrderSpecification order, SaleUnits units)
{
    /// <summary>The item that cord is priced as.</summary>
    public const string Cord = "cord";

    /// <summary>The item that a handle's webbing is priced as.</summary>
    public const string Webbing = "webbing";

    /// <summary>The item that buttons are priced as.</summary>
    public const string Buttons = "buttons";

    /// <summary>The item that a tuft's twine is priced as.</summary>
    public const string Twine = "twine";

    /// <summary>The item that an anti-slip base is priced as.</summary>
    public const string AntiSlip = "anti-slip";

    /// <summary>The item that eyelets are priced as.</summary>
    public const string Eyelets = "eyelets";

    // Common practice, no source: about twice the thickness and 12 in to pull and knot with.
    private static readonly Length TwineToKnot = Length.FromInches(12);

    /// <summary>What one cushion line takes.</summary>
    public IEnumerable<Material> Of(CushionSpecification cushion, Pattern pattern)
    {
        if (WeltNeed.Of(cushion, pattern, order.Workroom.CuttingStep) is { } welt)
        {
            yield return ByLength(cushion, Cord, MaterialKind.Cord, welt.Total, $"{Text(welt.Welt.CordDiameter)} thick: {welt.Because(order.Unit)}");
        }

        if (cushion.Handle is { HasWebbing: true } handle)
        {
            yield return ByLength(cushion, Webbing, MaterialKind.Webbing, cushion.Quantity * handle.Webbing,
                $"{cushion.Quantity} × ({Text(handle.Length)} + 2 × {Text(HandleSpecification.EndFold)} turned under), {Text(handle.Width)} wide");
        }

        if (cushion.Trim.Tufts is { } tufts)
        {
            string all = cushion.Quantity == 1 ? $"{tufts.Count} tufts" : $"{cushion.Quantity} × {tufts.Count} tufts";
            yield return Each(cushion, Buttons, MaterialKind.Button, 2 * cushion.Quantity * tufts.Count, $"2 for each of {all}, {Text(tufts.ButtonDiameter)} across");
            yield return ByLength(cushion, Twine, MaterialKind.Twine, cushion.Quantity * tufts.Count * (2 * cushion.Thickness + TwineToKnot),
                $"{all} × (2 × {Text(cushion.Thickness)} thickness + {Text(TwineToKnot)} to knot)");
        }

        if (cushion.Closure is ButtonClosure closure)
        {
            int count = Fastenings.Buttons(pattern);
            yield return Each(cushion, Buttons, MaterialKind.Button, cushion.Quantity * count,
                $"{cushion.Quantity} × {count} along the overlap, no more than {Text(ButtonClosure.Spacing)} apart, {Text(closure.Diameter)} across");
        }

        if (cushion.Trim.Base == BaseKind.AntiSlip)
        {
            SaleUnit unit = units.For(AntiSlip, units.ByArea, SaleUnit.SqYd, SaleUnit.SqM);
            Area area = pattern.Panels.Where(panel => panel.Role == FabricRole.Bottom).Aggregate(default(Area), (sum, panel) => sum + OutlineOffset.AreaOf(panel));
            yield return new Material(AntiSlip, MaterialKind.AntiSlip, units.Sell(AntiSlip, new Area(cushion.Quantity * area.SquareNanometres), unit), unit,
                $"{cushion.Id}: {cushion.Quantity} × the underside with its allowances, {area.In(order.Unit).ToString("0.##", System.Globalization.CultureInfo.InvariantCulture)} {LengthText.Symbol(order.Unit)}²");
        }

        if (cushion.Trim.Vents > 0)
        {
            yield return Each(cushion, Eyelets, MaterialKind.Eyelet, cushion.Quantity * cushion.Trim.Vents, $"{cushion.Quantity} × {cushion.Trim.Vents}");
        }
    }

    private static Material Each(CushionSpecification cushion, string item, MaterialKind kind, int count, string because) =>
        new(item, kind, count, SaleUnit.Each, $"{cushion.Id}: {because}");

    private Material ByLength(CushionSpecification cushion, string item, MaterialKind kind, Length length, string because)
    {
        SaleUnit unit = units.For(item, units.ByLength, SaleUnit.Yd, SaleUnit.M);
        return new Material(item, kind, units.Sell(item, length, unit), unit, $"{cushion.Id}: {because}");
    }

    private string Text(Length length) => LengthText.Format(length, order.Unit);
}
