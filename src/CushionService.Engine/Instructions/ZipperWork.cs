using CushionService.Engine.Materials;
using CushionService.Engine.Measures;
using CushionService.Engine.Patterns.Panels;
using CushionService.Engine.Specifications.Closures;

namespace CushionService.Engine.Instructions;

/// <summary>A zipper made as long as it is set in: one with closed ends shortened, chain cut from the roll and its sliders put on. One that
/// is made up to its length needs nothing.</summary>
/// <remarks>Common practice, no source.</remarks>
internal static class ZipperWork
{
    /// <summary>The zipper is as long as it is set in, with its sliders.</summary>
    public static readonly State Ready = new(StateKind.Cut);

    /// <summary>The work; nothing for a cover without a zipper.</summary>
    /// <param name="plan">The cover.</param>
    public static IEnumerable<Work> Of(CoverPlan plan)
    {
        if (plan.Cushion.Closure is ZipperClosure zipper)
        {
            if (plan.Zipper is { Shortened: true } closed)
            {
                yield return new Work(StepTexts.ZipperShorten(closed.Opening, plan.Allowance)).Making(Ready);
            }
            else if (plan.HasChain)
            {
                yield return new Work(StepTexts.ZipperChain(Closing.ZipperChain(plan.Cushion, plan.Pattern), zipper.Sliders)).Making(Ready);
            }
        }
    }

    /// <summary>Sliders that the step of setting the zipper in puts on.</summary>
    /// <param name="plan">The cover.</param>
    /// <param name="zipper">Its zipper.</param>
    /// <returns>One, which needs no words, where they are on by then.</returns>
    public static int Sliders(CoverPlan plan, ZipperClosure zipper) => plan.HasChain ? 1 : zipper.Sliders;

    /// <summary>How much of a section is sewn shut beyond both ends of its zipper.</summary>
    /// <param name="plan">The cover.</param>
    /// <param name="section">Finished length of the section.</param>
    /// <returns>Zero for a zipper whose ends are caught in the joins of the section.</returns>
    public static Length Shut(CoverPlan plan, Length section) =>
        plan.Zipper is { EndsWithin: true } closed ? Length.Max(section - closed.Opening, Length.Zero) : Length.Zero;

    /// <summary>The allowance of the seams that shut a section beyond its zipper: the fold that they run on from, and half the lap, so that
    /// the section is as high there as where its edges are lapped (follows from folding).</summary>
    /// <param name="zipper">The zipper.</param>
    public static Length Beyond(ZipperClosure zipper) => zipper.TurnUnder + zipper.Lap.HalfUp();

    /// <summary>Whether the strips of a closure's section come out higher than the boxing: each is cut up to the step that the workroom
    /// cuts to, the boxing once and they twice.</summary>
    /// <param name="plan">The cover.</param>
    public static bool ComesHigher(CoverPlan plan) =>
        plan.Pieces.Any(piece =>
            piece.Part.Kind is PartKind.ZipperUpper or PartKind.ZipperLower or PartKind.ClosureUpper or PartKind.ClosureLower
            && piece.Part.IsInner == plan.IsInner
            && piece.LengthTerms.Cut > piece.LengthTerms.Exact
        );

    /// <summary>All seams of a section in which a zipper is set.</summary>
    /// <param name="plan">The cover.</param>
    public static (int Number, Seam Seam)[] Section(CoverPlan plan) =>
        [.. plan.Seams.Where(one => CoverSeams.IsInSection(plan.Pattern, one.Seam))];
}
