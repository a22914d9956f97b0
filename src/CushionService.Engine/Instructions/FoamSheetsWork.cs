using System.Collections.Immutable;
using CushionService.Engine.Materials;
using CushionService.Engine.Messages;
using CushionService.Engine.Specifications;
using CushionService.Engine.Specifications.Shapes;
using CushionService.Engine.Specifications.Stocks;

namespace CushionService.Engine.Instructions;

/// <summary>The blocks of a cushion that are glued from sheets, because those are thinner than a layer of it, or smaller.</summary>
/// <param name="Blocks">One of each height; empty where no block is glued.</param>
/// <param name="First">Whether they are glued before the foam is cut.</param>
/// <remarks>Walls that stand upright are the same in every sheet, so each is cut by the outline, as they are laid out, and glued then. A
/// slope or a roll is sawn through all of them, and an outline through all parts (common practice, no source).</remarks>
internal sealed record FoamSheetsWork(ImmutableArray<GluedBlock> Blocks, bool First)
{
    /// <summary>The steps that glue them.</summary>
    public ImmutableArray<Message> Glued =>
        [.. Blocks.Select(block => StepTexts.GlueSheets(block.Slit, block.Height, block.Sheets, block.Parts))];

    /// <summary>The blocks of a cover's foam.</summary>
    /// <param name="plan">The cover, filled with foam; stocks whose thickness is not known are as thick as what is cut from them.</param>
    public static FoamSheetsWork Of(CoverPlan plan)
    {
        CushionSpecification[] layers = [.. FoamBuildUp.Layers(plan.Cushion)];
        GluedBlock[] blocks = [.. layers.SelectMany(layer => BlocksOf(plan, layer)).Distinct()];
        bool isSawnThrough = plan.Cushion.Construction is Construction.Wedge or Construction.Bolster;
        // A crown is bevelled as it is cut.
        bool crown = layers.Any(layer => !ReferenceEquals(layer.Outline, plan.Cushion.Outline) && BlocksOf(plan, layer).Any());
        return new FoamSheetsWork([.. blocks], isSawnThrough || crown || blocks.Any(block => block.Parts > 1));
    }

    /// <summary>How many sheets a layer is cut from one by one.</summary>
    /// <param name="layer">The cushion, or a layer of its foam.</param>
    /// <returns>1 for a layer that is cut whole.</returns>
    public int Cut(CushionSpecification layer) =>
        First ? 1 : Blocks.FirstOrDefault(block => block.Height == layer.Thickness && block.Item == layer.Fill!.Item)?.Sheets ?? 1;

    private static IEnumerable<GluedBlock> BlocksOf(CoverPlan plan, CushionSpecification layer) =>
        plan.Stocks.FirstOrDefault(stock => stock.Id == layer.Fill!.Item) is not { Kind: MaterialKind.Foam } stock
            ? []
            : FoamBlock
                .Of(layer, stock.Width is not null, stock.Thickness)
                .Select(block => new GluedBlock(
                    stock.Id,
                    block.Height,
                    stock.Thickness is { } thickness ? block.Layers(thickness) : 1,
                    stock.Thickness is { } sheet ? block.Slit(sheet) : null,
                    block.PartsOn(stock, plan.Workroom.Kerf).Count
                ))
                .Where(block => block.Sheets > 1 || block.Parts > 1);
}
