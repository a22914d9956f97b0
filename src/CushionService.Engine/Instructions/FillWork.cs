using CushionService.Engine.Measures;
using CushionService.Engine.Messages;
using CushionService.Engine.Specifications;
using CushionService.Engine.Specifications.Fillings;
using CushionService.Engine.Specifications.Shapes;

namespace CushionService.Engine.Instructions;

/// <summary>The filling made ready and put in.</summary>
internal static class FillWork
{
    // Foam without a wrap is ready once it is cut: nothing makes this state then, and what no work makes is not waited for.
    private static readonly State Ready = new(StateKind.Prepared);

    /// <summary>The work; nothing for a cover without a filling.</summary>
    public static IEnumerable<Work> Of(CoverPlan plan) =>
        plan.Cushion.Fabrics.InnerCover is not null ? [Put(StepTexts.InsertInner(plan.HasCorners))]
        : plan.Cushion.Fill is not { } fill ? []
        : fill.Kind == FillKind.Foam ? Foam(plan, fill)
        : fill.Kind == FillKind.Form ? [Put(StepTexts.InsertForm(plan.HasCorners))]
        : [Put(StepTexts.FillLoose(plan.HasCorners))];

    // Cut, then wrapped, then put in. Neither waits for the cover, so the foam may be made ready at any time before it is turned.
    private static IEnumerable<Work> Foam(CoverPlan plan, FillSpecification fill)
    {
        var cut = new State(StateKind.Made);
        yield return new Work(Cut(plan.Cushion, fill.Oversize)).Making(cut);
        if (fill.Wrap is { } wrap)
        {
            yield return new Work(StepTexts.Wrap(wrap.Layers, wrap.Sides)).After(cut).Making(Ready);
        }

        yield return Put(plan.Cushion.Construction == Construction.Bolster ? StepTexts.InsertRoll : StepTexts.InsertFoam(plan.HasCorners))
            .After(cut, Ready);
    }

    // Foam is cut larger than the cover by what the order says, so that it fills the cover out (common practice, no source); the thickness
    // stays as it is.
    private static Message Cut(CushionSpecification cushion, Length more) =>
        cushion.Construction switch
        {
            Construction.Bolster => StepTexts.CutFoamRoll(cushion.Outline.Kind, cushion.Width + more, cushion.Length),
            Construction.Wedge => StepTexts.CutFoamWedge(
                cushion.Width + more,
                cushion.Depth + more,
                cushion.Thickness,
                cushion.FrontThickness
            ),
            _ => StepTexts.CutFoam(
                cushion.Outline.Kind,
                cushion.Width + more,
                cushion.Depth + more,
                cushion.Thickness,
                cushion.Construction == Construction.Waterfall && cushion.Front != FrontShape.Square
            ),
        };

    // A cover is filled right side out, and before its opening is closed.
    private static Work Put(Message text) => new Work(text).After(new State(StateKind.Turned)).Making(new State(StateKind.Filled));
}
