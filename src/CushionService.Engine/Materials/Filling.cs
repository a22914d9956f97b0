using CushionService.Engine.Measures;
using CushionService.Engine.Patterns.Constructions;
using CushionService.Engine.Specifications;
using CushionService.Engine.Specifications.Fillings;
using CushionService.Engine.Specifications.Outlines;
using CushionService.Engine.Specifications.Practices;

namespace CushionService.Engine.Materials;

/// <summary>How much fill a cushion takes.</summary>
public static class Filling
{
    /// <summary>The foam: a block that fills the cover, larger by the oversize in width and depth.</summary>
    /// <param name="cushion">The cushion; its construction knows the shape of its block.</param>
    /// <param name="oversize">Added to width and depth, at least zero; the thickness is not enlarged.</param>
    /// <returns>Zero for a cushion without thickness.</returns>
    public static Volume Foam(CushionSpecification cushion, Length oversize) =>
        ConstructionRegistry.Of(cushion.Construction).Block(cushion, oversize);

    /// <summary>What a sealed flat bag of a material that bends but does not stretch holds:
    /// V = w³ (h / (πw) − 0.142 (1 − 10^(−h/w))) for w ≤ h (the paper bag problem, A. C. Robin, Mathematics Today, June 2004).</summary>
    /// <param name="one">One finished side, above zero.</param>
    /// <param name="other">The other finished side, above zero.</param>
    public static Volume Bag(Length one, Length other)
    {
        decimal width = Length.Min(one, other).In(LengthUnit.Millimetre),
            height = Length.Max(one, other).In(LengthUnit.Millimetre);
        double ratio = (double)(height / width);
        double share = (ratio / Math.PI) - (0.142 * (1 - Math.Pow(10, -ratio)));
        return new Volume(width * width * width * (decimal)share);
    }

    /// <summary>The room that a loose fill has when the cover is as full as can be: the block, or the bag of a cushion without
    /// thickness.</summary>
    /// <param name="cushion">A cushion of any construction.</param>
    /// <returns>Of one cushion, above zero.</returns>
    public static Volume Room(CushionSpecification cushion) =>
        Foam(cushion, Length.Zero) is { CubicMillimetres: > 0 } block ? block : Bag(cushion);

    // Of another outline the bag holds as much less than that of the rectangle round it as its area is less: for a flat round bag of 18 in
    // 873 in³, where 1.2185 r³ = 888 in³ is exact (W. Paulsen, American Mathematical Monthly 101(10), 1994; from memory).
    private static Volume Bag(CushionSpecification cushion)
    {
        Volume round = Bag(cushion.Width, cushion.Depth);
        decimal rectangle = cushion.Width.In(LengthUnit.Millimetre) * cushion.Depth.In(LengthUnit.Millimetre),
            area = (decimal)cushion.Outline.Area.In(LengthUnit.Millimetre);
        return cushion.Outline.Kind == OutlineKind.Rectangle ? round : new Volume(round.CubicMillimetres * area / rectangle);
    }

    /// <summary>The least weight of a loose fill that fills a cushion.</summary>
    /// <param name="cushion">A cushion.</param>
    /// <param name="density">Of the fill as packed, in kilograms a cubic metre.</param>
    /// <returns>Of one cushion; an order that names less is refused.</returns>
    public static Mass Least(CushionSpecification cushion, decimal density) =>
        new Volume(Room(cushion).CubicMillimetres * FillPractice.LeastPlumpness).At(density);

    /// <summary>The most of a loose fill that a cushion takes before its seams strain: its room, overfilled by a fifth, at the firmest
    /// packing, 4/3 of the usual (common practice, no source: 1.6 to 1.25, 4 to 3.25 and 3 to 2.25 lb/ft³ are all within it).</summary>
    /// <param name="cushion">A cushion.</param>
    /// <param name="density">Of the fill as packed, in kilograms a cubic metre.</param>
    /// <returns>Of one cushion; an order that names more is warned.</returns>
    public static Mass Most(CushionSpecification cushion, decimal density) =>
        new Volume(Room(cushion).CubicMillimetres * FillPractice.MostPlumpness).At(density * 4 / 3);

    /// <summary>Density of a loose fill at sitting firmness, in kilograms a cubic metre (common practice, no source: the middle of 0.9 to
    /// 1.6, 2.5 to 4 and 1.5 to 3 lb/ft³).</summary>
    public static decimal PackedDensity(LooseFill fill) =>
        fill switch
        {
            LooseFill.PolyesterFibre => 20,
            LooseFill.Feather => 52,
            LooseFill.ShreddedFoam => 36,
            _ => throw new ArgumentOutOfRangeException(nameof(fill)),
        };
}
