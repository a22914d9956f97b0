using System.Collections.Immutable;
using CushionService.Engine.Geometry;
using CushionService.Engine.Measures;
using CushionService.Engine.Patterns.Panels;
using CushionService.Engine.Specifications;
using CushionService.Engine.Specifications.Closures;
using CushionService.Engine.Specifications.Fabrics;
using CushionService.Engine.Specifications.Practices;
using CushionService.Engine.Specifications.Trimmings;

namespace CushionService.Engine.Patterns.Additions;

/// <summary>Buttons or pairs of ties along the hems of an overlapping closure: marks on both hems, and the ties themselves.</summary>
public static class Fastenings
{
    /// <summary>How many buttons the closure of a finished pattern has: each is marked on both hems.</summary>
    /// <param name="pattern">The pattern of the outer cover, with its additions.</param>
    public static int Buttons(Pattern pattern) => pattern.Panels.Sum(panel => panel.Marks.Count(mark => mark.Kind == MarkKind.Button)) / 2;

    // The edges of hems that lie over each other: across a face, in a boxing, along a body. The first of each pair lies under the other.
    private static readonly EdgeName[] Under = [EdgeName.Upper, EdgeName.Upper.With(EdgeWord.Middle), EdgeName.Start],
        Over = [EdgeName.Lower, EdgeName.Lower.With(EdgeWord.Middle), EdgeName.End];

    /// <summary>Finished length of the overlap in a pattern with an overlapping closure: of an underside that tapers, the shorter
    /// hem's.</summary>
    /// <param name="pattern">A cover whose closure overlaps, its panels joined or not.</param>
    /// <exception cref="InvalidOperationException">No panel has such a hem.</exception>
    public static Length Run(Pattern pattern) =>
        pattern
            .Panels.SelectMany(panel => Hems(panel).Select(hem => (Part: panel.Part with { Stretch = 0 }, Hem: hem)))
            .GroupBy(one => (one.Part, one.Hem.Name), one => one.Hem.Length)
            .Min(hem => hem.Aggregate(Length.Zero, (sum, length) => sum + length));

    /// <summary>Adds the marks, and the ties where there are any.</summary>
    /// <param name="pattern">A cover whose closure overlaps.</param>
    /// <param name="cushion">The cushion, for its practice.</param>
    /// <param name="closure">Buttons or ties; the spacing is the workroom's.</param>
    /// <remarks>Each fastening is in the middle of an equal share of the run, so that the first and the last are half a share from the
    /// ends. Both hems have them at the same places as they lie over each other, whatever their own lengths (common practice, no
    /// source).</remarks>
    public static Pattern AddTo(Pattern pattern, CushionSpecification cushion, OverlappingClosure closure)
    {
        WorkroomPractice practice = cushion.Practice;
        bool ties = closure is TieClosure;
        (long From, long To) shared = Shared(pattern);
        var run = Length.FromNanometres(shared.To - shared.From);
        int count = OverlappingClosure.FasteningsOn(run, ties ? practice.Closures.TieSpacing : practice.Closures.ButtonSpacing);
        // Holes of large buttons would run into each other at the usual spacing.
        if (closure is ButtonClosure buttons)
        {
            long most = run.Nanometres / practice.Closures.RoomForButton(buttons.Diameter).Nanometres;
            count = (int)Math.Clamp(most, 1, count);
        }

        IEnumerable<Panel> panels = pattern.Panels.Select(panel =>
            panel with
            {
                Marks = [.. panel.Marks, .. Hems(panel).SelectMany(hem => Marks(panel, hem, shared, closure, count))],
            }
        );
        ImmutableArray<Panel> added = closure is TieClosure tie
            ?
            [
                NarrowStrip.Of(
                    new PartName(PartKind.ClosureTie),
                    FabricRole.Ties,
                    2 * count,
                    StrapMake.Folded,
                    practice.Trims.TubeSeam,
                    practice.Closures.TieWidth,
                    tie.TieLength,
                    EdgeFinish.TurnIn(practice.Trims.TieEndFold),
                    EdgeFinish.TurnIn(practice.Trims.TieEndFold)
                ),
            ]
            : [];
        return pattern with { Panels = [.. panels, .. added] };
    }

    // Buttons and their holes are half the overlap in. The ties of the upper hem stand on its edge, and those of the lower part where that
    // edge lies, as far in as the overlap: on its own hem they would be covered (common practice, no source).
    private static IEnumerable<PanelMark> Marks(Panel panel, Edge hem, (long From, long To) shared, OverlappingClosure closure, int count)
    {
        bool ties = closure is TieClosure;
        long inward =
            !ties ? closure.Overlap.HalfUp().Nanometres
            : Under.Contains(hem.Name) ? closure.Overlap.Nanometres
            : 0;
        long start = Along(hem, hem.From) - Datum(panel, hem);
        return Enumerable
            .Range(0, count)
            .Select(i =>
            {
                long place = shared.From + (long)((Int128)(shared.To - shared.From) * ((2 * i) + 1) / (2 * count));
                (Point at, double direction) = hem.At(Length.FromNanometres(Math.Abs(place - start)));
                return new PanelMark(
                    ties ? MarkKind.TieEnd : MarkKind.Button,
                    at.Moved(
                        Length.FromNanometres((long)Math.Round(-inward * Math.Sin(direction))),
                        Length.FromNanometres((long)Math.Round(inward * Math.Cos(direction)))
                    ),
                    null,
                    ties ? MarkPurpose.SewClosureTie : MarkPurpose.Button
                );
            });
    }

    // Where all hems of the closure lie over each other, along them.
    private static (long From, long To) Shared(Pattern pattern)
    {
        (long From, long To)[] hems =
        [
            .. pattern.Panels.SelectMany(panel =>
                Hems(panel).Select(hem => (Along(hem, hem.From) - Datum(panel, hem), Along(hem, hem.To) - Datum(panel, hem)))
            ),
        ];
        return (hems.Max(hem => Math.Min(hem.From, hem.To)), hems.Min(hem => Math.Max(hem.From, hem.To)));
    }

    // As drafted, what both parts of a divided face measure from is what their print is matched to, the middle of the face; hems of a
    // boxing and of a body are as long as each other, and measure from their own middle.
    private static long Datum(Panel panel, Edge hem) => Along(hem, panel.Match ?? hem.Middle);

    // A hem is level or plumb.
    private static long Along(Edge hem, Point point) => (hem.From.Y == hem.To.Y ? point.X : point.Y).Nanometres;

    // The hems that overlap: those across a panel or along a body, of a flange's the part at the body; a tied end's hem is not one of them.
    private static IEnumerable<Edge> Hems(Panel panel) => panel.IsAddition ? [] : panel.Edges.Where(IsOverlapping);

    /// <summary>Whether an edge is a hem that lies over another.</summary>
    /// <param name="edge">An edge of a cover's shell; hems of additions are not asked about.</param>
    internal static bool IsOverlapping(Edge edge) =>
        edge.Finish.Kind == FinishKind.Hem && (Under.Contains(edge.Name) || Over.Contains(edge.Name));
}
