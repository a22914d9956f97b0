using System.Collections.Immutable;
using CushionService.Engine.Geometry;
using CushionService.Engine.Measures;
using CushionService.Engine.Messages;
using CushionService.Engine.Patterns.Constructions;
using CushionService.Engine.Specifications;
using CushionService.Engine.Specifications.Outlines;
using CushionService.Engine.Specifications.Shapes;
using CushionService.Engine.Specifications.Stocks;

namespace CushionService.Engine.Materials;

/// <summary>A block of foam that fills a cushion: its outline, as high as it is thick.</summary>
/// <param name="Cushion">The cushion.</param>
/// <param name="Width">Of the block, oversize included.</param>
/// <param name="Depth">Of the block, oversize included.</param>
/// <param name="Height">Of the block, exact.</param>
/// <param name="Count">How many blocks.</param>
/// <param name="Makes">How many cushions one block makes.</param>
public sealed record FoamBlock(CushionSpecification Cushion, Length Width, Length Depth, Length Height, int Count, int Makes)
{
    /// <summary>Corners of its base, counter-clockwise; empty for a rectangle.</summary>
    public ImmutableArray<Point> Template { get; } = FoamTemplate.Of(Cushion, Cushion.Fill!.Oversize.HalfUp());

    /// <summary>The outline of its base.</summary>
    public OutlineKind Shape => Template.IsEmpty ? OutlineKind.Rectangle : Cushion.Outline.Kind;

    /// <summary>The blocks of a cushion line that is filled with foam. A bolster lies on its side.</summary>
    /// <param name="cushion">The cushion.</param>
    /// <param name="paired">Whether two wedges may come from one block as high as front and back together, cut along the slope (common
    /// practice, no source).</param>
    /// <param name="sheet">Thickness of the sheets that blocks are glued from: then wedges are paired only where that takes fewer layers;
    /// null where it is not known.</param>
    public static IEnumerable<FoamBlock> Of(CushionSpecification cushion, bool paired, Length? sheet = null)
    {
        Length over = cushion.Fill!.Oversize;
        Length width = cushion.Width + over,
            depth = cushion.Depth + over;
        if (cushion.Construction == Construction.Bolster)
        {
            yield return new FoamBlock(cushion, width, cushion.Length + over, cushion.Depth, cushion.Quantity, 1);
        }
        else if (cushion.Construction != Construction.Wedge || !paired || !SavesLayers(cushion, sheet))
        {
            yield return new FoamBlock(cushion, width, depth, cushion.Thickness, cushion.Quantity, 1);
        }
        else
        {
            if (cushion.Quantity > 1)
            {
                // Two slopes of a and b laid head to tail are a box a + b high; an odd wedge has a block of its own.
                yield return new FoamBlock(cushion, width, depth, cushion.Thickness + cushion.FrontThickness, cushion.Quantity / 2, 2);
            }

            if (cushion.Quantity % 2 == 1)
            {
                yield return new FoamBlock(cushion, width, depth, cushion.Thickness, 1, 1);
            }
        }
    }

    private static bool SavesLayers(CushionSpecification wedge, Length? sheet) =>
        sheet is not { } layer || LayersIn(wedge.Thickness + wedge.FrontThickness, layer) < 2 * LayersIn(wedge.Thickness, layer);

    private static int LayersIn(Length height, Length layer) => (int)((height.Nanometres + layer.Nanometres - 1) / layer.Nanometres);

    /// <summary>What the fill of one cushion weighs; less than its block where that is sawn to a roll or a slope.</summary>
    /// <param name="cushion">The cushion, filled with foam.</param>
    /// <param name="kilogramsPerCubicMetre">Density of the foam, above zero.</param>
    public static Mass Weight(CushionSpecification cushion, decimal kilogramsPerCubicMetre) =>
        ConstructionRegistry.Of(cushion.Construction).Block(cushion, cushion.Fill!.Oversize).At(kilogramsPerCubicMetre);

    /// <summary>How many layers of a stock make one block; the last is slit where they would come out higher.</summary>
    /// <param name="layer">Thickness of the stock, above zero.</param>
    /// <returns>At least 1.</returns>
    public int Layers(Length layer) => LayersIn(Height, layer);

    /// <summary>The thickness that the last layer is slit to; null where it stays as thick as it is.</summary>
    /// <param name="layer">Thickness of the stock, above zero.</param>
    public Length? Slit(Length layer)
    {
        Length last = Height - (Layers(layer) - 1) * layer;
        return last == layer ? null : last;
    }

    /// <summary>Square millimetres of adhesive in all blocks: both faces of each joint between layers (common practice, no
    /// source).</summary>
    /// <param name="layer">Thickness of the stock, above zero.</param>
    /// <returns>Zero for a block of one layer.</returns>
    public decimal Glued(Length layer) => 2m * Count * (Layers(layer) - 1) * Footprint;

    /// <summary>Area of its base, in square millimetres: of a template, that of the outline itself where the foam is no larger than the
    /// cover.</summary>
    public decimal Footprint { get; } =
        FoamTemplate.Of(Cushion, Cushion.Fill!.Oversize.HalfUp()) is { IsEmpty: false } template
            ? (decimal)(Cushion.Fill!.Oversize == Length.Zero ? Cushion.Outline.Area : Polygon.Area(template)).In(LengthUnit.Millimetre)
            : Width.In(LengthUnit.Millimetre) * Depth.In(LengthUnit.Millimetre);

    /// <summary>The parts that its base is glued from where no sheet of a stock holds it whole.</summary>
    /// <param name="stock">The stock; null for foam that is made to size.</param>
    /// <param name="kerf">Width of a cut.</param>
    public FoamParts PartsOn(StockSpecification? stock, Length kerf) => FoamParts.Of(this, stock, kerf);

    /// <summary>What is sawn: its layers, all of one size but the last, which may be slit.</summary>
    /// <param name="layers">How many layers make one block.</param>
    /// <param name="thickness">Thickness of a layer; null where the block is one.</param>
    public FoamCut Cut(int layers, Length? thickness) =>
        new(Cushion.Id, Count * layers, Shape, new MaterialSize(Width, Depth, thickness ?? Height), Footprint, Template);

    /// <summary>Its sizes, how many there are, and how it is shaped.</summary>
    internal IEnumerable<Message> Facts()
    {
        yield return FoamTexts.Block(
            Count,
            Cushion.Construction == Construction.Bolster ? OutlineKind.Rectangle : Cushion.Outline.Kind,
            Cushion.Outline.Sides.Length,
            Width,
            Depth,
            Height
        );
        Message? shaped =
            Makes == 2 ? FoamTexts.TwoWedges
            : Cushion.Construction == Construction.Wedge ? FoamTexts.Wedge(Cushion.FrontThickness)
            : Cushion is { Construction: Construction.Bolster, Outline: CircleOutline } ? FoamTexts.Roll
            : Cushion.Construction == Construction.Bolster ? FoamTexts.HalfRoll
            : Cushion is { Construction: Construction.Waterfall, Front: FrontShape.BullNose } ? FoamTexts.BullNose
            : Template.IsEmpty ? null
            : FoamTexts.Template(Area.FromSquareMillimetres(Footprint));
        if (shaped is not null)
        {
            yield return shaped;
        }
    }

    /// <summary>How its layers make it.</summary>
    internal Message LayersText(Length layer) => FoamTexts.Layers(Layers(layer), layer, Slit(layer));
}
