using CushionService.Engine.Measures;
using CushionService.Engine.Specifications;

namespace CushionService.Engine.Patterns.Constructions;

/// <summary>The block that fills a cover.</summary>
public static class FillBlock
{
    /// <summary>A block of one height whose base is moved outward by half the oversize all round; exact in height.</summary>
    /// <param name="area">Area of the base.</param>
    /// <param name="perimeter">Length round the base.</param>
    /// <param name="height">Its height.</param>
    /// <param name="oversize">How much larger than the cover it is, in width and depth.</param>
    /// <remarks>A smooth outline of area A and perimeter P grows to A + aP + πa² when moved by a, a rectangle to A + aP + 4a² (general
    /// geometry); the rectangle's rule is taken, which is never too little.</remarks>
    public static Volume Prism(Area area, Length perimeter, Length height, Length oversize)
    {
        decimal half = oversize.In(LengthUnit.Millimetre) / 2;
        decimal grown = (decimal)area.In(LengthUnit.Millimetre) + (half * perimeter.In(LengthUnit.Millimetre)) + (4 * half * half);
        return new Volume(grown * height.In(LengthUnit.Millimetre));
    }

    /// <summary>A block as high as the cushion is thick over its outline.</summary>
    /// <param name="cushion">The cushion.</param>
    /// <param name="oversize">How much larger than the cover it is, in width and depth.</param>
    public static Volume OfOutline(CushionSpecification cushion, Length oversize) =>
        Prism(cushion.Outline.Area, cushion.Outline.Perimeter, cushion.Thickness, oversize);
}
