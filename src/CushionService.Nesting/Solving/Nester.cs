using CushionService.Nesting.Audit;
using CushionService.Nesting.Outlines;
using CushionService.Nesting.Rectangles;
using CushionService.Nesting.Rectangles.Repeats;
using CushionService.Nesting.Rectangles.Skylines;

namespace CushionService.Nesting.Solving;

/// <summary>The one entry to the kernels: lays pieces on a strip or on sheets, audits the layout, and bounds it.</summary>
public static class Nester
{
    /// <summary>Lays every piece on a strip.</summary>
    /// <param name="problem">The strip and its pieces.</param>
    /// <param name="effort">How many steps to spend.</param>
    /// <param name="cancellation">Observed at least every 20 ms of work.</param>
    /// <returns>An audited layout.</returns>
    /// <exception cref="ArgumentException">The problem is ill-formed, or a piece fits the strip in no allowed turn.</exception>
    /// <exception cref="OperationCanceledException">The caller cancelled.</exception>
    public static StripLayout Nest(StripProblem problem, Effort effort, CancellationToken cancellation = default) =>
        Nest(problem, effort, 1, cancellation);

    /// <summary>Lays every piece on a strip with a share of an effort's steps.</summary>
    /// <param name="problem">The strip and its pieces.</param>
    /// <param name="effort">How many steps to spend.</param>
    /// <param name="sharedBy">How many problems share the effort's steps, 1 at least: the fabrics of an order, or trials of one.</param>
    /// <param name="cancellation">Observed at least every 20 ms of work.</param>
    /// <returns>An audited layout.</returns>
    /// <exception cref="ArgumentException">The problem is ill-formed, or a piece fits the strip in no allowed turn.</exception>
    /// <exception cref="OperationCanceledException">The caller cancelled.</exception>
    public static StripLayout Nest(StripProblem problem, Effort effort, int sharedBy, CancellationToken cancellation)
    {
        ArgumentNullException.ThrowIfNull(problem);
        ArgumentOutOfRangeException.ThrowIfLessThan(sharedBy, 1);
        cancellation.ThrowIfCancellationRequested();
        WellFormedStrip.Check(problem);
        if (problem.Pieces.Any(piece => !piece.Outline.IsDefaultOrEmpty))
        {
            var outlines = OutlineKernel.Nest(problem, effort, sharedBy, cancellation);
            OutlineAudit.Check(problem, outlines);
            return outlines;
        }

        return Audited(problem, StripRectangles.Nest(problem, effort, sharedBy, cancellation));
    }

    /// <summary>The layout of a single pass: the floor against which a search is measured.</summary>
    internal static StripLayout OnePass(StripProblem problem) =>
        Audited(problem, StripRectangles.Nest(problem, null, 1, CancellationToken.None));

    /// <summary>The length of the rule of thumb for repeats: every aligned cut rounded up to whole repeats.</summary>
    internal static long RuleOfThumb(StripProblem problem) =>
        RepeatSearch.RuleOfThumb(problem, new RectangleSet(problem.Pieces, problem.Width));

    /// <summary>Lays the pieces on stock sheets, as cheaply as it can.</summary>
    /// <param name="problem">The sheets and the pieces.</param>
    /// <param name="effort">How many steps to spend.</param>
    /// <param name="cancellation">Observed at least every 20 ms of work.</param>
    /// <returns>An audited layout; copies for which the sheets had no room are listed, not refused.</returns>
    /// <exception cref="ArgumentException">The problem is ill-formed.</exception>
    /// <exception cref="OperationCanceledException">The caller cancelled.</exception>
    public static SheetLayout Nest(SheetProblem problem, Effort effort, CancellationToken cancellation = default) =>
        Nest(problem, effort, 1, cancellation);

    /// <summary>Lays the pieces on stock sheets with a share of an effort's steps.</summary>
    /// <param name="problem">The sheets and the pieces.</param>
    /// <param name="effort">How many steps to spend.</param>
    /// <param name="sharedBy">How many problems share the effort's steps, 1 at least.</param>
    /// <param name="cancellation">Observed at least every 20 ms of work.</param>
    /// <returns>An audited layout; copies for which the sheets had no room are listed, not refused.</returns>
    /// <exception cref="ArgumentException">The problem is ill-formed.</exception>
    /// <exception cref="OperationCanceledException">The caller cancelled.</exception>
    public static SheetLayout Nest(SheetProblem problem, Effort effort, int sharedBy, CancellationToken cancellation)
    {
        ArgumentNullException.ThrowIfNull(problem);
        ArgumentOutOfRangeException.ThrowIfLessThan(sharedBy, 1);
        cancellation.ThrowIfCancellationRequested();
        WellFormedSheets.Check(problem);
        var layout = SheetRectangles.Nest(problem, effort, sharedBy, cancellation);
        SheetAudit.Check(problem, layout);
        return layout;
    }

    private static StripLayout Audited(StripProblem problem, StripLayout layout)
    {
        StripAudit.Check(problem, layout);
        return layout;
    }
}
