using System.Collections.Immutable;
using CushionService.Engine.Geometry;
using CushionService.Engine.Measures;
using CushionService.Engine.Specifications.Outlines;

namespace CushionService.Engine.Specifications.Trimmings;

/// <summary>Tufts through the cushion, a button at each end.</summary>
/// <param name="Rows">From front to back, at least 1.</param>
/// <param name="Columns">From left to right, at least 1.</param>
/// <param name="Grid">How they stand to each other.</param>
/// <param name="ButtonDiameter">Diameter of the buttons.</param>
/// <param name="Covered">Whether the buttons are covered with the top's fabric.</param>
/// <param name="PullDepth">How deep each is pulled; zero for shallow tufts that take nothing up.</param>
public sealed record TuftSpecification(int Rows, int Columns, TuftGrid Grid, Length ButtonDiameter, bool Covered, Length PullDepth)
{
    /// <summary>The outline that leaves out the tufts outside it, and those nearer to its seam than a button is wide; null for a
    /// rectangle, on which none are.</summary>
    public Outline? Within { get; init; }

    /// <summary>How many: r × c, and (r − 1)(c − 1) more on the diamond (general mathematics), less those that an outline leaves
    /// out.</summary>
    public int Count => Within is { } outline ? On(outline.Width, outline.Depth).Length : OnRectangle;

    private int OnRectangle => (Rows * Columns) + (Grid == TuftGrid.Diamond ? (Rows - 1) * (Columns - 1) : 0);

    /// <summary>Where they stand on a face, half an interval in from its edges, row by row from the front.</summary>
    public ImmutableArray<Point> On(Length width, Length depth)
    {
        var points = ImmutableArray.CreateBuilder<Point>(OnRectangle);
        for (var half = 1; half < 2 * Rows; half++)
        {
            bool between = half % 2 == 0;
            for (
                var i = 0;
                i
                    < (
                        between
                            ? Grid == TuftGrid.Diamond
                                ? Columns - 1
                                : 0
                            : Columns
                    );
                i++
            )
            {
                points.Add(new Point(Share(width, (2 * i) + (between ? 2 : 1), 2 * Columns), Share(depth, half, 2 * Rows)));
            }
        }

        return Within is { } outline
            ? [.. points.Where(point => OutlineDistance.Inside(outline, point) >= ButtonDiameter.Nanometres)]
            : points.MoveToImmutable();
    }

    /// <summary>What one interval takes up: 2 (√((i/2)² + q²) − i/2) (general geometry), up to a nanometre.</summary>
    /// <param name="interval">Finished distance between neighbours, i.</param>
    /// <param name="pull">How deep each is pulled, q.</param>
    public static Length TakeUp(Length interval, Length pull)
    {
        double half = interval.Nanometres / 2.0;
        return Length.FromNanometres(
            (long)Math.Ceiling(2 * (Math.Sqrt((half * half) + ((double)pull.Nanometres * pull.Nanometres)) - half))
        );
    }

    /// <summary>What a whole face takes up across and along: an interval for each column and each row.</summary>
    public (Length Across, Length Along) TakeUpOf(Length width, Length depth) =>
        PullDepth == Length.Zero
            ? default
            : (Columns * TakeUp(Share(width, 1, Columns), PullDepth), Rows * TakeUp(Share(depth, 1, Rows), PullDepth));

    private static Length Share(Length length, int part, int of) => Length.FromNanometres((long)((Int128)length.Nanometres * part / of));
}
