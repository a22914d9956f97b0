using CushionService.Engine.Materials;
using CushionService.Engine.Measures;
using CushionService.Engine.Messages;
using CushionService.Engine.Specifications;
using CushionService.Engine.Specifications.Fillings;
using CushionService.Engine.Specifications.Outlines;
using CushionService.Engine.Specifications.Shapes;
using CushionService.Engine.Specifications.Stocks;

namespace CushionService.Engine.Instructions;

/// <summary>The filling made ready and put in.</summary>
internal static class FillWork
{
    // Foam without a wrap is ready once it is cut: nothing makes this state then, and what no work makes is not waited for.
    private static readonly State Ready = new(StateKind.Prepared);

    // Sheets are glued to blocks, and blocks to each other.
    private static readonly State Block = new(StateKind.Joined),
        Glued = new(StateKind.Shaped),
        Rounded = new(StateKind.Mounted);

    /// <summary>The work; nothing for a cover without a filling.</summary>
    /// <param name="plan">The cover; an outer cover around an inner one is filled with that.</param>
    public static IEnumerable<Work> Of(CoverPlan plan) =>
        plan.Cushion.Fabrics.InnerCover is not null ? [Put(StepTexts.InsertInner(plan.HasCorners))]
        : plan.Cushion.Fill is not { } fill ? []
        : fill.Kind == FillKind.Foam ? Foam(plan, fill)
        : fill.Kind == FillKind.Form ? [Put(Turns(plan) ? StepTexts.InsertRoll(form: true) : StepTexts.InsertForm(plan.HasCorners))]
        : [Put(StepTexts.FillLoose(plan.IsInner, First(plan)))];

    // Cut, then wrapped, then put in. Neither waits for the cover, so the foam may be made ready at any time before it is turned.
    private static IEnumerable<Work> Foam(CoverPlan plan, FillSpecification fill)
    {
        var cut = new State(StateKind.Made);
        var sheets = FoamSheetsWork.Of(plan);
        int joints = FoamBuildUp.Joints(plan.Cushion);
        // A half-round goes over all layers, so a block that is glued is rounded once it is whole.
        bool hasNose = plan.Cushion is { Construction: Construction.Waterfall, Front: not FrontShape.Square },
            roundsLater = hasNose && (!sheets.Glued.IsEmpty || joints > 0);
        Work cutting = new Work(
            IsBuiltUp(fill) ? CutLayers(plan, sheets) : Cut(plan, fill.Oversize, hasNose && !roundsLater, sheets.Cut(plan.Cushion))
        ).Making(cut);
        yield return sheets.First ? cutting.After(Block) : cutting;
        // Each block is whole before it is glued to the next.
        foreach (Message glued in sheets.Glued)
        {
            yield return (sheets.First ? new Work(glued) : new Work(glued).After(cut)).Making(Block);
        }

        if (joints > 0)
        {
            yield return new Work(StepTexts.GlueFoam(joints, fill.Crown > Length.Zero)).After(cut, Block).Making(Glued);
        }

        if (roundsLater)
        {
            yield return new Work(StepTexts.RoundFoam(plan.Cushion.Thickness.HalfUp())).After(cut, Block, Glued).Making(Rounded);
        }

        if (fill.Wrap is { } wrap)
        {
            Message text =
                plan.Cushion.Construction == Construction.Bolster
                    ? StepTexts.WrapRoll(wrap.Layers, wrap.Sides == WrapSides.WholeSkin)
                    : StepTexts.Wrap(wrap.Layers, wrap.Sides);
            yield return new Work(text).After(cut, Block, Glued, Rounded).Making(Ready);
        }

        yield return Put(
                Turns(plan)
                    ? StepTexts.InsertRoll(form: false)
                    : StepTexts.InsertFoam(FoamPassage.Folds(plan.Cushion, plan.Stocks), IsLong(plan), plan.HasCorners)
            )
            .After(cut, Block, Glued, Rounded, Ready);
    }

    // A round block, or one as wide as it is deep, has no narrow end.
    private static bool IsLong(CoverPlan plan) =>
        plan.Cushion.Width != plan.Cushion.Depth && plan.Cushion.Outline is not RegularPolygonOutline;

    // Half a roll has corners, and does not turn in its cover.
    private static bool Turns(CoverPlan plan) => plan.Cushion.Construction == Construction.Bolster && !plan.HasCorners;

    private static FirstFilled First(CoverPlan plan) =>
        plan.Cushion.Construction == Construction.Bolster ? FirstFilled.Ends
        : plan.HasCorners ? FirstFilled.Corners
        : FirstFilled.Edge;

    private static bool IsBuiltUp(FillSpecification fill) => !fill.Layers.IsEmpty || fill.Crown > Length.Zero;

    // The layers from top to bottom, named as a shop does.
    private static Message CutLayers(CoverPlan plan, FoamSheetsWork sheets) =>
        StepTexts.CutFoamLayers(
            plan.Cushion.Outline.Kind,
            FoamBuildUp
                .Layers(plan.Cushion)
                .Select(layer =>
                {
                    string foam = plan.Stocks.FirstOrDefault(stock => stock.Id == layer.Fill!.Item)?.Name ?? layer.Fill!.Item;
                    Length over = layer.Fill!.Oversize;
                    bool crown = !ReferenceEquals(layer.Outline, plan.Cushion.Outline);
                    (Length width, Length depth) = (layer.Width + over, layer.Depth + over);
                    return crown
                        ? StepTexts.FoamCrown(foam, width, depth, layer.Thickness)
                        : StepTexts.FoamLayer(foam, width, depth, layer.Thickness, sheets.Cut(layer));
                })
        );

    // Foam is cut larger than the cover by what the order says, so that it fills the cover out (common practice, no source); the thickness
    // stays as it is.
    private static Message Cut(CoverPlan plan, Length more, bool hasNose, int sheets)
    {
        CushionSpecification cushion = plan.Cushion;
        return cushion.Construction switch
        {
            Construction.Bolster => StepTexts.CutFoamRoll(cushion.Outline.Kind, cushion.Width + more, cushion.Length),
            Construction.Wedge => StepTexts.CutFoamWedge(
                cushion.Width + more,
                cushion.Depth + more,
                cushion.Thickness,
                cushion.FrontThickness > Length.Zero ? cushion.FrontThickness : null,
                Pair(plan)?.Height
            ),
            _ => StepTexts.CutFoam(cushion.Outline.Kind, cushion.Width + more, cushion.Depth + more, cushion.Thickness, hasNose, sheets),
        };
    }

    // The block that two wedges are sawn from; null where each has its own.
    private static FoamBlock? Pair(CoverPlan plan) =>
        plan.Stocks.FirstOrDefault(stock => stock.Id == plan.Cushion.Fill!.Item) is { Kind: MaterialKind.Foam, Width: not null } stock
            ? FoamBlock.Of(plan.Cushion, paired: true, stock.Thickness).FirstOrDefault(block => block.Makes == 2)
            : null;

    // A cover is filled right side out, with what is stitched through it done, and before its opening is closed.
    private static Work Put(Message text) =>
        new Work(text).After(new State(StateKind.Turned), new State(StateKind.Lined)).Making(new State(StateKind.Filled));
}
