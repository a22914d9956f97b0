using CushionService.Engine.Messages;
using CushionService.Engine.Patterns.Panels;

namespace CushionService.Engine.Instructions;

/// <summary>What is sewn onto a panel while it still lies flat: a handle, a pocket, eyelets.</summary>
internal static class MountWork
{
    /// <summary>The work.</summary>
    /// <param name="plan">The cover.</param>
    public static IEnumerable<Work> Of(CoverPlan plan) => [.. Handle(plan), .. Pocket(plan), .. Vents(plan)];

    // Webbing is bought by length and needs no making up: only its ends are folded under. A strap of fabric is made first.
    private static IEnumerable<Work> Handle(CoverPlan plan)
    {
        if (plan.Cushion.Handle is not { } handle)
        {
            yield break;
        }

        // A boxing that is wrapped round may have both handles.
        (PartName Part, int Handles)[] panels =
        [
            .. plan
                .Pattern.Panels.Select(panel => (panel.Part, panel.Marks.Count(mark => mark.Purpose == MarkPurpose.SewHandleEnd)))
                .Where(panel => panel.Item2 > 0)
                .Select(panel => (panel.Part, (panel.Item2 + 1) / 2)),
        ];
        PartName strap = new(PartKind.Handle);
        var made = new State(StateKind.Made, strap);
        if (handle.HasStrap)
        {
            yield return new Work(
                StepTexts.HandleStrap(
                    plan.Workroom.Trims.HandleEndFold,
                    handle.HasWebbing,
                    plan.Workroom.EdgeDistance,
                    handle.Sides.Length
                ),
                strap
            ).Making(made);
        }

        foreach ((PartName on, int count) in panels)
        {
            yield return handle.HasStrap
                ? Mounted(plan, on, StepTexts.HandleEnds(on, handle.Span, count), strap, on).After(made)
                : Mounted(plan, on, StepTexts.HandleWebbing(plan.Workroom.Trims.HandleEndFold, on, handle.Span, count), on);
        }
    }

    // The mouth is hemmed before the pocket is sewn down on its other three edges; both are one step, for one does them in one go.
    private static IEnumerable<Work> Pocket(CoverPlan plan)
    {
        if (plan.Cushion.Trim.Pocket is { } pocket)
        {
            PartName side = plan.Marked(MarkPurpose.SewPocket);
            Message text = StepTexts.Pocket(plan.Workroom.Trims.PocketHem, plan.Workroom.Trims.PocketTurnUnder, side, pocket.Width);
            yield return Mounted(plan, side, text, new PartName(PartKind.Pocket), side);
        }
    }

    // Eyelets are set through one layer, with a hard base under it: impossible once the cover is sewn.
    private static IEnumerable<Work> Vents(CoverPlan plan)
    {
        if (plan.Cushion.Trim.Vents > 0)
        {
            // A side that is joined has some of them on each of its panels.
            foreach (Panel panel in plan.Pattern.Panels)
            {
                int eyelets = panel.Marks.Count(mark => mark.Purpose == MarkPurpose.SetEyelet);
                if (eyelets > 0)
                {
                    yield return Mounted(plan, panel.Part, StepTexts.Vents(eyelets, panel.Part), panel.Part);
                }
            }
        }
    }

    // The panel must be joined and its closure in, since the marks are measured on the finished panel.
    private static Work Mounted(CoverPlan plan, PartName on, Message text, params PartName[] parts)
    {
        CoverUnit unit = plan.UnitOf(on);
        return new Work(text, [.. parts])
            .After(new State(StateKind.RawEdges), new State(StateKind.Joined, CoverSeams.Base(on)), unit.Is(StateKind.Fastened))
            .Making(unit.Is(StateKind.Mounted));
    }
}
