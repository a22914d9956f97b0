using System.Collections.Immutable;

namespace CushionService.Nesting.Audit;

/// <summary>Checks a strip layout of rectangles against its problem. It shares no code with the search.</summary>
internal static class StripAudit
{
    /// <summary>Returns when the layout keeps every invariant.</summary>
    /// <exception cref="LayoutAuditException">It does not; the message names the first that is broken.</exception>
    /// <param name="problem">The problem that was given.</param>
    /// <param name="layout">The layout that a search made of it.</param>
    /// <remarks>Invariants: allowed turns; every copy once; on the strip, from 0 to its width and
    /// length; aligned copies on their phase; the length is where the last copy ends; the bound does
    /// not exceed it; minimal only when the bound is sold as the length is; no two overlap; none on a
    /// flaw.</remarks>
    public static void Check(StripProblem problem, StripLayout layout) => NothingShared(CheckPlaces(problem, layout), problem.Flaws);

    /// <summary>Checks all but overlaps, and returns the bounding box of each placement.</summary>
    /// <exception cref="LayoutAuditException">As <see cref="Check"/>.</exception>
    /// <param name="problem">The problem that was given.</param>
    /// <param name="layout">The layout.</param>
    /// <returns>In the order of the placements, grid units.</returns>
    public static GridRectangle[] CheckPlaces(StripProblem problem, StripLayout layout)
    {
        var rectangles = PlacedRectangles.Of(problem.Pieces, layout.Placements);
        EveryCopyOnce.Check(problem.Pieces, layout.Placements);
        long end = 0;
        for (var index = 0; index < rectangles.Length; index++)
        {
            var r = rectangles[index];
            if (layout.Placements[index].Sheet != 0)
            {
                throw new LayoutAuditException($"Copy {index} lies on a sheet other than the strip.");
            }

            if (r.X < 0 || r.Y < 0 || r.X + r.Width > problem.Width || r.Y + r.Length > layout.Length)
            {
                throw new LayoutAuditException($"Copy {index} lies outside the strip: {r}.");
            }

            end = Math.Max(end, r.Y + r.Length);
            RepeatPhase.Check(problem, layout.Placements[index]);
        }

        if (end != layout.Length)
        {
            throw new LayoutAuditException($"The layout's length is {layout.Length}, but the last piece ends at {end}.");
        }

        if (layout.LowerBound > layout.Length)
        {
            throw new LayoutAuditException($"The bound {layout.LowerBound} exceeds the length {layout.Length}.");
        }

        if (layout.ProvenMinimal && SaleSteps.For(problem.Sale, layout.LowerBound) < SaleSteps.For(problem.Sale, layout.Length))
        {
            throw new LayoutAuditException("The layout is called minimal, but its bound could be sold shorter.");
        }

        return rectangles;
    }

    /// <summary>Throws when two copies share area, or one lies on a flaw.</summary>
    private static void NothingShared(GridRectangle[] rectangles, ImmutableArray<GridRectangle> flaws)
    {
        if (RectangleOverlap.Find(rectangles) is var (first, second))
        {
            throw new LayoutAuditException($"Two copies overlap: {rectangles[first]} and {rectangles[second]}.");
        }

        // Flaws are few and may overlap each other.
        foreach (var flaw in flaws)
        {
            foreach (var r in rectangles)
            {
                bool apart =
                    r.X + r.Width <= flaw.X || flaw.X + flaw.Width <= r.X || r.Y + r.Length <= flaw.Y || flaw.Y + flaw.Length <= r.Y;
                if (!apart)
                {
                    throw new LayoutAuditException($"A copy lies on a flaw: {r} and {flaw}.");
                }
            }
        }
    }
}
