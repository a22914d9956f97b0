using CushionService.Contract.Answers;
using CushionService.Engine.Materials;
using CushionService.Engine.Measures;
using CushionService.Engine.Messages;

namespace CushionService.Wording;

/// <summary>Puts what is bought into the contract's record, with lengths as numbers in the order's unit.</summary>
internal static class MaterialWording
{
    /// <summary>The record of a material.</summary>
    /// <param name="material">What is bought.</param>
    /// <param name="unit">The order's unit: with inches, weights are pounds; else kilograms, to the gram.</param>
    /// <param name="writer">Writes how the quantity comes about.</param>
    public static MaterialAnswer Of(Material material, LengthUnit unit, MessageWriter writer) =>
        new()
        {
            Item = material.Item,
            Label = material.Label,
            Kind = material.Kind,
            Quantity = (double)material.Quantity,
            Unit = material.Unit,
            Size = material.Size is { } size ? Size(size, unit) : null,
            Length = Number(material.Length, unit),
            Cuts = [.. material.Cuts.Select(cut => Cut(cut, unit))],
            Because = writer.Text(material.Because),
            Weight = material.Weight is { } weight
                ? (double)decimal.Round(unit == LengthUnit.Inch ? weight.Pounds : weight.Kilograms, 3)
                : null,
            WeightUnit =
                material.Weight is null ? null
                : unit == LengthUnit.Inch ? SaleUnit.Lb
                : SaleUnit.Kg,
        };

    private static FoamCutAnswer Cut(FoamCut cut, LengthUnit unit)
    {
        // The engine's areas are in square millimetres, those of the answer in the square of the order's unit.
        decimal side = Length.From(1, unit).In(LengthUnit.Millimetre);
        return new FoamCutAnswer
        {
            Cushion = cut.Cushion,
            Quantity = cut.Quantity,
            Shape = cut.Shape,
            Size = Size(cut.Size, unit),
            Area = (double)decimal.Round(cut.Area / (side * side), 4),
            Template = [.. cut.Template.Select(corner => new PointAnswer((double)corner.X.In(unit), (double)corner.Y.In(unit)))],
        };
    }

    private static MaterialSizeAnswer Size(MaterialSize size, LengthUnit unit) =>
        new()
        {
            Width = Number(size.Width, unit),
            Depth = Number(size.Depth, unit),
            Thickness = Number(size.Thickness, unit),
        };

    private static double? Number(Length? length, LengthUnit unit) => length is { } known ? (double)known.In(unit) : null;
}
