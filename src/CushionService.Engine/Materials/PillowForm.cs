using CushionService.Engine.Measures;
using CushionService.Engine.Specifications;
using CushionService.Engine.Specifications.Fillings;
using CushionService.Engine.Specifications.Outlines;
using CushionService.Engine.Specifications.Practices;
using CushionService.Engine.Specifications.Shapes;
using CushionService.Engine.Specifications.Stocks;

namespace CushionService.Engine.Materials;

/// <summary>The ready-made form that goes into a cushion.</summary>
/// <param name="Stock">The stock; null where the order has no such forms, and one of this size is bought.</param>
/// <param name="Width">Its width as it lies in the cover; of a roll, its diameter.</param>
/// <param name="Depth">Its depth as it lies in the cover; of a roll, its length.</param>
/// <param name="Thickness">Its thickness; null for one that is sewn flat.</param>
/// <param name="Fits">Whether it is as much larger than its cover as the rule asks.</param>
/// <remarks>A form is larger than its cover, so that it fills the corners: 1 in for a firm cushion to 2 in for a plump one each way, and
/// 1 in below 12 in; 2 to 5 cm in a metric workroom (common practice, no source).</remarks>
public sealed record PillowForm(StockSpecification? Stock, Length Width, Length Depth, Length? Thickness, bool Fits)
{
    /// <summary>The form of a cushion that is filled with one: the stock that it names, the size that it names, or else the first in
    /// stock that fits by the rule. Where none fits, the one that is least off, unless it is smaller than its cover or as much too large as
    /// the largest may be larger.</summary>
    /// <param name="cushion">A cushion with a form.</param>
    /// <param name="stocks">What the shop stocks, forms among it.</param>
    public static PillowForm For(CushionSpecification cushion, IEnumerable<StockSpecification> stocks)
    {
        FormSpecification asked = cushion.Fill!.Form!;
        StockSpecification[] forms = [.. stocks.Where(stock => stock.Kind == MaterialKind.Form)];
        StockSpecification? named = forms.FirstOrDefault(form => form.Id == asked.Stock);
        if (named is not null)
        {
            return Lying(named, cushion, asked) ?? Made(named, cushion, asked);
        }

        PillowForm[] lying =
        [
            .. forms
                .Where(form => HasShape(form, cushion))
                .Select(form => Lying(form, cushion, asked))
                .OfType<PillowForm>()
                .Where(form => asked.Width is null ? form.MayServe(cushion) : form.Width == asked.Width && form.Depth == asked.Depth),
        ];
        // Sorting is stable: of equals, the first in the order's list.
        return lying.OrderBy(form => form.Misfit(cushion)).ThenBy(form => form.Distance(cushion)).FirstOrDefault()
            ?? Made(null, cushion, asked);
    }

    /// <summary>How much larger than its cover it should be along a side: from the least to the most.</summary>
    /// <param name="side">A finished side of the cover.</param>
    /// <param name="practice">The workroom's rule.</param>
    /// <returns>Equal for a small cover, which takes the least alone.</returns>
    public static (Length Least, Length Most) Oversize(Length side, FillPractice practice) =>
        (practice.FormOversize, side < practice.SmallCover ? practice.FormOversize : practice.LargestFormOversize);

    /// <summary>The finished sides of a cover that a form fills: its width and depth, or a bolster's diameter and length.</summary>
    public static (Length Width, Length Depth) Cover(CushionSpecification cushion) =>
        cushion.Construction == Construction.Bolster ? (cushion.Width, cushion.Length) : (cushion.Width, cushion.Depth);

    /// <summary>Whether a stock that is named is round and its cover is not, or the other way about; a roll is neither.</summary>
    public bool IsOfOtherShape(CushionSpecification cushion) =>
        Stock is { Length: null } stock
        && cushion.Construction != Construction.Bolster
        && cushion.Outline is CircleOutline != stock.Diameter is not null;

    // Whether it is round as the cover is, or has corners, and a height where the cover has a boxing.
    // A form that is thinner than the boxing would leave the cover slack; one without a thickness is sewn flat and may go
    // in.
    private static bool HasShape(StockSpecification form, CushionSpecification cushion) =>
        cushion.Construction == Construction.Bolster
            ? form is { Diameter: not null, Length: not null }
            : form.Length is null
                && (cushion.Outline is CircleOutline == form.Diameter is not null)
                && (form.Thickness is null || form.Thickness >= cushion.Thickness);

    // The form turned as it lies better; null for one without sizes.
    private static PillowForm? Lying(StockSpecification form, CushionSpecification cushion, FormSpecification asked)
    {
        if ((form.Width ?? form.Diameter) is not { } width || (form.Depth ?? form.Length ?? form.Diameter) is not { } depth)
        {
            return null;
        }

        PillowForm one = Judged(form, width, depth, form.Thickness ?? asked.Thickness, cushion);
        if (form.Diameter is not null || width == depth)
        {
            return one;
        }

        PillowForm turned = Judged(form, depth, width, form.Thickness ?? asked.Thickness, cushion);
        return turned.Misfit(cushion) < one.Misfit(cushion) ? turned : one;
    }

    // One of the size that is asked for, or of the least that the rule asks.
    private static PillowForm Made(StockSpecification? stock, CushionSpecification cushion, FormSpecification asked)
    {
        (Length width, Length depth) = Cover(cushion);
        return Judged(
            stock,
            asked.Width ?? width + Wanted(width, cushion),
            asked.Depth ?? depth + Wanted(depth, cushion),
            asked.Thickness ?? (cushion.Thickness > Length.Zero ? cushion.Thickness : null),
            cushion
        );
    }

    private static PillowForm Judged(StockSpecification? stock, Length width, Length depth, Length? thickness, CushionSpecification cushion)
    {
        var form = new PillowForm(stock, width, depth, thickness, true);
        return form with { Fits = form.Misfit(cushion) == Length.Zero };
    }

    // A plump cushion takes the largest form that the rule allows, another the smallest.
    private static Length Wanted(Length side, CushionSpecification cushion)
    {
        (Length least, Length most) = Oversize(side, cushion.Practice.Fills);
        return cushion.Fill!.Fullness == Fullness.Plump ? most : least;
    }

    // Whether it fills its cover, if too tightly.
    private bool MayServe(CushionSpecification cushion)
    {
        (Length width, Length depth) = Cover(cushion);
        return May(Width, width) && May(Depth, depth);

        bool May(Length form, Length side) => form >= side && form <= side + 2 * Oversize(side, cushion.Practice.Fills).Most;
    }

    // How far it is from what the rule allows, both ways together. A form that is smaller than its cover leaves the corners empty, which
    // counts as much as one that is too large.
    private Length Misfit(CushionSpecification cushion)
    {
        (Length width, Length depth) = Cover(cushion);
        return Off(Width - width, width) + Off(Depth - depth, depth);

        Length Off(Length over, Length side)
        {
            (Length least, Length most) = Oversize(side, cushion.Practice.Fills);
            return over < least ? least - over
                : over > most ? over - most
                : Length.Zero;
        }
    }

    // How far it is from what suits the cushion best, both ways together; a higher one comes after one of the cushion's height.
    private Length Distance(CushionSpecification cushion)
    {
        (Length width, Length depth) = Cover(cushion);
        return Apart(Width - width, Wanted(width, cushion))
            + Apart(Depth - depth, Wanted(depth, cushion))
            + ((Thickness ?? cushion.Thickness) - cushion.Thickness);

        static Length Apart(Length one, Length other) => Length.Max(one, other) - Length.Min(one, other);
    }
}
