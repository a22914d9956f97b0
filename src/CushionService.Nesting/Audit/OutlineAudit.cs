namespace CushionService.Nesting.Audit;

/// <summary>Checks a strip layout of outlines against its problem, exactly, on integers. It shares no code with the search, and its method
/// is another: outlines are cut into convex parts, and two parts are apart when the line of an edge parts them.</summary>
internal static class OutlineAudit
{
    /// <summary>Returns when the layout keeps every invariant.</summary>
    /// <exception cref="LayoutAuditException">It does not; the message names the first that is broken.</exception>
    /// <param name="problem">The problem that was given.</param>
    /// <param name="layout">The layout that a search made of it.</param>
    public static void Check(StripProblem problem, StripLayout layout)
    {
        var boxes = StripAudit.CheckPlaces(problem, layout);
        var flaws = problem.Flaws.IsDefault ? [] : problem.Flaws;
        var placed = PlacedOutlines.Of(problem, layout, boxes);
        Array.Sort(placed, static (one, other) => (one.Box.Y, one.Number).CompareTo((other.Box.Y, other.Number)));

        // In the order of their lower edges, each is looked at beside those that begin before it ends.
        for (var first = 0; first < placed.Length; first++)
        {
            var one = placed[first];
            for (var second = first + 1; second < placed.Length && placed[second].Box.Y < one.Box.Y + one.Box.Length; second++)
            {
                var other = placed[second];
                var (copy, thing) = one.Number < other.Number ? (one.Number, other.Number) : (other.Number, one.Number);
                if (copy < boxes.Length && one.Meets(other))
                {
                    throw new LayoutAuditException(
                        thing < boxes.Length
                            ? $"Two copies overlap: {layout.Placements[copy]} and {layout.Placements[thing]}."
                            : $"A copy lies on a flaw: {layout.Placements[copy]} and {flaws[thing - boxes.Length]}."
                    );
                }
            }
        }
    }
}
