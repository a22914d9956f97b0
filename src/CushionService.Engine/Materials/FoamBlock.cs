using CushionService.Engine.Measures;
using CushionService.Engine.Patterns.Constructions;
using CushionService.Engine.Specifications;
using CushionService.Engine.Specifications.Shapes;

namespace CushionService.Engine.Materials;

/// <summary>A block of foam from which a cushion's fill is cut: a rectangle that holds its outline, as high as it is thick.</summary>
/// <param name="Cushion">The cushion.</param>
/// <param name="Width">Of the block, oversize included.</param>
/// <param name="Depth">Of the block, oversize included.</param>
/// <param name="Height">Of the block, exact.</param>
/// <param name="Count">How many blocks.</param>
/// <param name="Makes">How many cushions one block makes.</param>
public sealed record FoamBlock(CushionSpecification Cushion, Length Width, Length Depth, Length Height, int Count, int Makes)
{
    /// <summary>The blocks of a cushion line that is filled with foam. A bolster lies on its side.</summary>
    /// <param name="cushion">The cushion.</param>
    /// <param name="paired">Whether two wedges come from one block as high as front and back together, cut along the slope (common
    /// practice, no source).</param>
    public static IEnumerable<FoamBlock> Of(CushionSpecification cushion, bool paired)
    {
        Length over = cushion.Fill!.Oversize;
        Length width = cushion.Width + over,
            depth = cushion.Depth + over;
        if (cushion.Construction == Construction.Bolster)
        {
            yield return new FoamBlock(cushion, width, cushion.Length + over, cushion.Depth, cushion.Quantity, 1);
        }
        else if (cushion.Construction != Construction.Wedge || !paired)
        {
            yield return new FoamBlock(cushion, width, depth, cushion.Thickness, cushion.Quantity, 1);
        }
        else
        {
            if (cushion.Quantity > 1)
            {
                yield return new FoamBlock(cushion, width, depth, cushion.Thickness + cushion.FrontThickness, cushion.Quantity / 2, 2);
            }

            if (cushion.Quantity % 2 == 1)
            {
                yield return new FoamBlock(cushion, width, depth, cushion.Thickness, 1, 1);
            }
        }
    }

    /// <summary>What the fill of one cushion weighs; less than its block where the outline is no rectangle.</summary>
    public static Mass Weight(CushionSpecification cushion, decimal kilogramsPerCubicMetre) =>
        ConstructionRegistry.Of(cushion.Construction).Block(cushion, cushion.Fill!.Oversize).At(kilogramsPerCubicMetre);

    /// <summary>How many layers of a stock make one block; the last is slit where they would come out higher.</summary>
    /// <param name="layer">Thickness of the stock, above zero.</param>
    public int Layers(Length layer) => (int)((Height.Nanometres + layer.Nanometres - 1) / layer.Nanometres);

    /// <summary>Square millimetres of adhesive in all blocks: both faces of each joint between layers (common practice, no
    /// source).</summary>
    public decimal Glued(Length layer) => 2m * Count * (Layers(layer) - 1) * Footprint;

    /// <summary>Area of its base, in square millimetres.</summary>
    public decimal Footprint => Width.In(LengthUnit.Millimetre) * Depth.In(LengthUnit.Millimetre);

    /// <summary>Whether its base can be cut from a sheet.</summary>
    public bool FitsOn(Length width, Length length) =>
        Length.Min(Width, Depth) <= Length.Min(width, length) && Length.Max(Width, Depth) <= Length.Max(width, length);

    /// <summary>Its sizes, and how many there are.</summary>
    public string Text(LengthUnit unit)
    {
        string each =
            $"{Count} × block of {LengthText.Format(Width, unit)} × {LengthText.Format(Depth, unit)} × {LengthText.Format(Height, unit)}";
        return Makes == 2 ? $"{each}, two wedges from each"
            : Cushion.Construction == Construction.Wedge ? $"{each}, {LengthText.Format(Cushion.FrontThickness, unit)} at the front"
            : each;
    }

    /// <summary>How its layers make it.</summary>
    public string LayersText(Length layer, LengthUnit unit)
    {
        int layers = Layers(layer);
        Length last = Height - (layers - 1) * layer;
        string slit = last == layer ? "" : $"{(layers == 1 ? "" : ", the last")} slit to {LengthText.Format(last, unit)}";
        return $"{layers} {(layers == 1 ? "layer" : "glued layers")} of {LengthText.Format(layer, unit)}{slit}";
    }
}
