using System.Collections.Immutable;
using CushionService.Engine.Geometry;
using CushionService.Engine.Measures;
using CushionService.Engine.Specifications;

namespace CushionService.Engine.Patterns;

/// <summary>Buttons or pairs of ties along the hems of an overlapping closure: marks on both hems, and the ties themselves.</summary>
internal static class Fastenings
{
    /// <summary>How many buttons the closure of a finished pattern has: each is marked on both hems.</summary>
    public static int Buttons(Pattern pattern) => pattern.Panels.Sum(panel => panel.Marks.Count(mark => mark.Kind == MarkKind.Button)) / 2;

    /// <summary>Adds the marks, and the ties where there are any.</summary>
    public static Pattern AddTo(Pattern pattern, OverlappingClosure closure)
    {
        bool ties = closure is TieClosure;
        int count = OverlappingClosure.FasteningsOn(Run(pattern), ties ? TieClosure.Spacing : ButtonClosure.Spacing);
        IEnumerable<Panel> panels = pattern.Panels.Select(panel => HemOf(panel) is { } hem ? Marked(panel, hem, closure, count, ties) : panel);
        ImmutableArray<Panel> added = closure is TieClosure tie
            ? [NarrowStrip.Of("closure-tie", FabricRole.Ties, 2 * count, StrapMake.Folded, TieClosure.Width, tie.TieLength,
                EdgeFinish.TurnIn(TieSpecification.EndFold), EdgeFinish.TurnIn(TieSpecification.EndFold))]
            : [];
        return pattern with { Panels = [.. panels, .. added] };
    }

    // Ties stand on the hems' edges; buttons and their holes half the overlap in.
    private static Panel Marked(Panel panel, Edge hem, OverlappingClosure closure, int count, bool ties)
    {
        Length inward = ties ? Length.Zero : closure.Overlap.HalfUp();
        Length y = hem.Facing == EdgeFacing.Up ? hem.From.Y - inward : hem.From.Y + inward;
        IEnumerable<PanelMark> marks = Enumerable.Range(0, count).Select(i => new PanelMark(
            ties ? MarkKind.TieEnd : MarkKind.Button,
            new Point(Length.FromNanometres((long)((Int128)panel.Width.Nanometres * ((2 * i) + 1) / (2 * count))), y),
            null,
            ties ? "Sew a tie of the closure on here" : "Button or buttonhole"));
        return panel with { Marks = panel.Marks.AddRange(marks) };
    }

    private static Length Run(Pattern pattern) => pattern.Panels.Select(HemOf).First(hem => hem is not null)!.Length;

    private static Edge? HemOf(Panel panel) => panel.IsAddition ? null : panel.Edges.FirstOrDefault(edge => edge.Finish.Kind == FinishKind.Hem);
}
