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

    /// <summary>What one cushion line takes.</summary>
    public IEnumerable<Material> Of(CushionSpecification cushion, Pattern pattern)
    {
        if (WeltNeed.Of(cushion, pattern, order.Workroom.CuttingStep) is { } welt)
        {
            yield return ByLength(cushion, Cord, MaterialKind.Cord, welt.Total, $"{Text(welt.Welt.CordDiameter)} thick: {welt.Because(order.Unit)}");
        }
    }

    private Material ByLength(CushionSpecification cushion, string item, MaterialKind kind, Length length, string because)
    {
        SaleUnit unit = units.For(item, units.ByLength, SaleUnit.Yd, SaleUnit.M);
        return new Material(item, kind, SaleUnits.Sell(length, unit), unit, $"{cushion.Id}: {because}");
    }

    private string Text(Length length) => LengthText.Format(length, order.Unit);
}
