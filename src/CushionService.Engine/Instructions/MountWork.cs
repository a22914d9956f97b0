using CushionService.Engine.Messages;
using CushionService.Engine.Patterns.Panels;

namespace CushionService.Engine.Instructions;

/// <summary>What is sewn onto a panel while it still lies flat: a handle, a pocket, eyelets.</summary>
internal static class MountWork
{
    /// <summary>The work.</summary>
    public static IEnumerable<Work> Of(CoverPlan plan) => [.. Handle(plan), .. Pocket(plan), .. Vents(plan)];

    private static IEnumerable<Work> Handle(CoverPlan plan)
    {
        if (plan.Cushion.Handle is not { } handle)
        {
            yield break;
        }

        PartName on = plan.Marked(MarkPurpose.SewHandleEnd),
            strap = new(PartKind.Handle);
        if (!handle.HasStrap)
        {
            yield return Mounted(plan, on, StepTexts.HandleWebbing(plan.Workroom.Trims.HandleEndFold, on, handle.Span), on);
            yield break;
        }

        var made = new State(StateKind.Made, strap);
        yield return new Work(
            StepTexts.HandleStrap(plan.Workroom.Trims.HandleEndFold, handle.HasWebbing, plan.Workroom.EdgeDistance),
            strap
        ).Making(made);
        yield return Mounted(plan, on, StepTexts.HandleEnds(on, handle.Span), strap, on).After(made);
    }

    private static IEnumerable<Work> Pocket(CoverPlan plan)
    {
        if (plan.Cushion.Trim.Pocket is { } pocket)
        {
            PartName side = plan.Marked(MarkPurpose.SewPocket);
            Message text = StepTexts.Pocket(plan.Workroom.Trims.PocketHem, plan.Workroom.Trims.PocketTurnUnder, side, pocket.Width);
            yield return Mounted(plan, side, text, new PartName(PartKind.Pocket), side);
        }
    }

    private static IEnumerable<Work> Vents(CoverPlan plan)
    {
        if (plan.Cushion.Trim.Vents is > 0 and var vents)
        {
            PartName side = plan.Marked(MarkPurpose.SetEyelet);
            yield return Mounted(plan, side, StepTexts.Vents(vents, side), side);
        }
    }

    private static Work Mounted(CoverPlan plan, PartName on, Message text, params PartName[] parts)
    {
        CoverUnit unit = plan.UnitOf(on);
        return new Work(text, [.. parts])
            .After(new State(StateKind.RawEdges), new State(StateKind.Joined, CoverSeams.Base(on)), unit.Is(StateKind.Fastened))
            .Making(unit.Is(StateKind.Mounted));
    }
}
