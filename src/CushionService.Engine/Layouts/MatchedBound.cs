using CushionService.Engine.Measures;
using CushionService.Engine.Specifications.Fabrics;
using CushionService.Nesting;

namespace CushionService.Engine.Layouts;

/// <summary>What no layout of a fabric with a repeat can beat, whatever the position of its motif.</summary>
/// <param name="Free">What the pieces take without matching, or with the motif where it is known to be.</param>
/// <param name="Columns">What the matched pieces take at the position that is worst for them.</param>
/// <param name="Repeat">The repeat as it is laid out.</param>
/// <remarks>Where the motif is unknown along, a repeat is bought to find it. That more than <see cref="Free"/> and no repeat is needed is
/// proven by pieces of one phase alone: the cut may fall just behind the place where they could start, so that a whole repeat is lost
/// before them, or as much as the columns of a drop leave (follows from the repeat).</remarks>
internal readonly record struct MatchedBound(FreeBound Free, ColumnBound Columns, RepeatSpecification Repeat)
{
    /// <summary>What no layout can beat.</summary>
    public Length Length => Length.Max(Free.Length, Columns.Length);

    /// <summary>The argument, and its figures, why no layout is sold shorter than one; none where nothing proves it.</summary>
    /// <param name="layout">Length of the layout.</param>
    /// <param name="goal">The lengths that are as good as each other.</param>
    public (ProofKind Kind, string Figures) Proof(Length layout, SaleGoal goal)
    {
        Length start = Repeat is { IsUnknownAlong: true, Length: { } length } ? length : Length.Zero;
        long rung = goal.Rung(layout);
        // The columns are asked first: their argument holds for every start, where the free bound must give a whole
        // repeat away.
        return goal.Rung(Columns.Length - (start == Length.Zero ? start : Repeat.DropLength)) >= rung
                ? (ProofKind.Relaxation, Columns.Figures(Repeat))
            : goal.Rung(Length.Max(Free.Length - start, Length.Zero)) >= rung ? (Free.Kind, Free.Figures)
            : (ProofKind.None, "");
    }
}
