using CushionService.Engine.Measures;
using CushionService.Engine.Specifications;
using CushionService.Engine.Specifications.Outlines;
using CushionService.Engine.Specifications.Shapes;
using CushionService.Engine.Specifications.Stocks;

namespace CushionService.Engine.Materials;

/// <summary>The ready-made forms of an order's cushions.</summary>
/// <param name="order">The order, for the forms that it stocks.</param>
/// <param name="shop">How forms are sold: one by one.</param>
internal sealed class FormNeeds(OrderSpecification order, Shop shop)
{
    /// <summary>What one cushion line takes: a form for each cushion.</summary>
    /// <param name="cushion">A cushion line that is filled with a form.</param>
    /// <returns>One form a copy; of the stock that <see cref="PillowForm.For"/> chooses, else one that is made to
    /// size.</returns>
    public Need Of(CushionSpecification cushion)
    {
        var form = PillowForm.For(cushion, order.Stocks);
        (Length width, Length depth) = PillowForm.Cover(cushion);
        bool roll = cushion.Construction == Construction.Bolster;
        Goods goods = shop.Each(cushion.Fill!.Item, MaterialKind.Form, form.Stock);
        var size = new MaterialSize(form.Width, roll ? null : form.Depth, form.Thickness);
        goods = goods.Size is null
            ? goods with
            {
                Apart = (size, form.Depth),
                Size = size,
                Length = roll ? form.Depth : null,
                IsMadeToSize = form.Stock is null,
            }
            : goods;
        return new Need(
            cushion,
            goods,
            cushion.Quantity,
            MaterialTexts.Form(cushion.Quantity, roll || cushion.Outline is CircleOutline, form.Width, form.Depth, width, depth)
        );
    }
}
