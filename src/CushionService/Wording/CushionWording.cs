using System.Collections.Immutable;
using CushionService.Contract.Answers;
using CushionService.Engine.Materials;
using CushionService.Engine.Measures;
using CushionService.Engine.Quoting;
using CushionService.Engine.Specifications;
using CushionService.Engine.Specifications.Fillings;

namespace CushionService.Wording;

/// <summary>Puts a finished cushion into the contract's record, with lengths as numbers in the order's unit.</summary>
internal static class CushionWording
{
    /// <summary>The record of a finished cushion.</summary>
    /// <param name="finished">Sizes on the seam line, as the cushion will be.</param>
    /// <param name="unit">The order's unit.</param>
    public static CushionAnswer Of(FinishedCushion finished, LengthUnit unit) =>
        new()
        {
            Id = finished.Cushion.Id,
            Label = finished.Cushion.Label,
            Group = finished.Cushion.Group,
            Quantity = finished.Cushion.Quantity,
            Finished = new FinishedSizeAnswer
            {
                Width = (double)finished.Width.In(unit),
                Depth = (double)finished.Depth.In(unit),
                Thickness = finished.Thickness is { } thickness ? (double)thickness.In(unit) : null,
                Tolerance = (double)finished.Tolerance.In(unit),
            },
            Grain = finished.Grain,
            Loop = finished.Loop is { } loop ? (double)loop.In(unit) : null,
            Fill = finished.Cushion.Fill is { } fill ? Fill(fill, finished, unit) : null,
        };

    private static CushionFillAnswer Fill(FillSpecification fill, FinishedCushion finished, LengthUnit unit) =>
        new()
        {
            Kind = fill.Kind,
            Stock = finished.Form?.Stock?.Id ?? fill.Item,
            Shape = finished.Block?.Shape,
            Size =
                finished.Form is { } form
                    ? new MaterialSizeAnswer
                    {
                        Width = (double)form.Width.In(unit),
                        Depth = (double)form.Depth.In(unit),
                        Thickness = form.Thickness is { } thick ? (double)thick.In(unit) : null,
                    }
                : finished.Block is { } block
                    ? new MaterialSizeAnswer
                    {
                        Width = (double)block.Width.In(unit),
                        Depth = (double)block.Depth.In(unit),
                        Thickness = (double)block.Height.In(unit),
                    }
                : null,
            Layers = [.. Layers(finished.Cushion).Select(layer => Layer(layer, finished.Cushion, unit))],
        };

    // One block needs no list.
    private static ImmutableArray<CushionSpecification> Layers(CushionSpecification cushion) =>
        cushion.Fill is { Kind: FillKind.Foam } && FoamBuildUp.Layers(cushion) is { Length: > 1 } layers ? layers : [];

    private static FoamLayerAnswer Layer(CushionSpecification layer, CushionSpecification cushion, LengthUnit unit) =>
        new()
        {
            Stock = layer.Fill!.Item,
            Size = new MaterialSizeAnswer
            {
                Width = (double)(layer.Width + layer.Fill.Oversize).In(unit),
                Depth = (double)(layer.Depth + layer.Fill.Oversize).In(unit),
                Thickness = (double)layer.Thickness.In(unit),
            },
            // A crown is the one layer with an outline of its own: all others keep the cushion's.
            Crown = !ReferenceEquals(layer.Outline, cushion.Outline),
        };
}
