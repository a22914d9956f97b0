using System.Collections.Immutable;
using CushionService.Engine.Cutting;
using CushionService.Engine.Materials;
using CushionService.Engine.Patterns.Panels;
using CushionService.Engine.Specifications.Trimmings;

namespace CushionService.Engine.Instructions;

/// <summary>All work on one cover, put in order.</summary>
internal static class CoverSteps
{
    /// <summary>All that is cut off the pieces before their edges are finished.</summary>
    public static readonly State Trimmed = new(StateKind.Trimmed);

    /// <summary>Whether the cover has raw edges that are finished.</summary>
    /// <param name="plan">The cover.</param>
    /// <returns>False for a cover that does not open, unless the order asks for a finish: it hides its raw edges for good.</returns>
    public static bool FinishesRawEdges(CoverPlan plan) =>
        plan.Cushion.EdgeFinish != RawEdgeFinish.None && Threading.RawEdges(plan.Cushion, plan.Pattern) > Measures.Length.Zero;

    /// <summary>The work in the order in which it is done.</summary>
    /// <param name="plan">The cover.</param>
    /// <returns>Each piece of work once. Listed first is done first, unless something that it needs is listed later.</returns>
    /// <exception cref="Patterns.Panels.InvalidPatternException">Two pieces of work wait for each other.</exception>
    public static ImmutableArray<Work> Ordered(CoverPlan plan) =>
        WorkOrder.Of([
            .. Throughout(plan),
            .. RawEdges(plan),
            .. PrintWork.Of(plan),
            .. JoinWork.Of(plan),
            .. PanelWork.Of(plan),
            .. ZipperWork.Of(plan),
            .. SectionWork.Of(plan),
            .. MountWork.Of(plan),
            .. EdgingWork.Of(plan),
            .. CaughtWork.Of(plan),
            .. SeamWork.Of(plan),
            .. FinishWork.Of(plan),
            .. FillWork.Of(plan),
        ]);

    /// <summary>The steps of one cover.</summary>
    /// <param name="plan">The cover.</param>
    /// <returns>The steps, each opened by the name of its cushion; a step without pieces is about the whole cover.</returns>
    public static IEnumerable<Step> Of(CoverPlan plan) =>
        Ordered(plan)
            .Select(work => new Step(
                StepTexts.OfCushion(plan.Cushion.Name, work.Text),
                [.. work.Parts.SelectMany(part => Ids(plan.Pieces, part)).Distinct()]
            )
            {
                Cushion = plan.Cushion.Id,
            });

    // What holds for every seam is said once, before the first: with the inner cover where there is one, for it is sewn before the outer
    // one. Clips are for the outer cover alone, so there it is said again.
    // A round cover has no corners to strengthen.
    private static IEnumerable<Work> Throughout(CoverPlan plan) =>
        !plan.IsInner && plan.Cushion.Fabrics.InnerCover is not null && !plan.ByClips
            ? []
            : [new Work(StepTexts.Throughout(plan.HasCorners ? plan.Workroom.Sewing.CornerReinforcement : null, plan.ByClips))];

    private static IEnumerable<Work> RawEdges(CoverPlan plan)
    {
        if (FinishesRawEdges(plan))
        {
            bool enclosed = plan.Cushion.Trim.Edging is FrenchSeamSpecification,
                turned = plan.Pattern.Panels.Any(panel =>
                    !panel.IsAddition
                    && panel.Edges.Any(edge => edge.Finish.Kind is FinishKind.Hem or FinishKind.TurnIn or FinishKind.Drawn)
                );
            yield return new Work(
                StepTexts.FinishRawEdges(plan.Cushion.EdgeFinish, enclosed, turned),
                [.. plan.Units.SelectMany(unit => unit.Parts)]
            )
                .After(Trimmed)
                .Making(new State(StateKind.RawEdges));
        }
    }

    // A part that is joined from several, or divided for a closure, is named by all of them.
    private static IEnumerable<string> Ids(IReadOnlyList<CutPiece> pieces, PartName part)
    {
        bool isWhole = pieces.Any(piece => piece.Part == part);
        return pieces.Where(piece => piece.Part == part || (!isWhole && piece.Part.IsOf(part))).Select(piece => piece.Id);
    }
}
