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

    // The edges of hems that lie over each other: across a face, in a boxing, along a body.
    private static readonly EdgeName[] Overlapping =
    [
        EdgeName.Upper,
        EdgeName.Lower,
        EdgeName.Upper.With(EdgeWord.Middle),
        EdgeName.Lower.With(EdgeWord.Middle),
        EdgeName.Start,
        EdgeName.End,
    ];

    /// <summary>Finished length of the overlap in a pattern with an overlapping closure.</summary>
    /// <param name="pattern">A cover whose closure overlaps.</param>
    /// <exception cref="InvalidOperationException">No panel has such a hem.</exception>
    public static Length Run(Pattern pattern) => pattern.Panels.SelectMany(Hems).First().Length;

    /// <summary>Adds the marks, and the ties where there are any.</summary>
    /// <param name="pattern">A cover whose closure overlaps.</param>
    /// <param name="cushion">The cushion, for its practice.</param>
    /// <param name="closure">Buttons or ties; the spacing is the workroom's.</param>
    /// <remarks>Each fastening is in the middle of an equal share of the run, so that the first and the last are half a share from the
    /// ends.</remarks>
    public static Pattern AddTo(Pattern pattern, CushionSpecification cushion, OverlappingClosure closure)
    {
        WorkroomPractice practice = cushion.Practice;
        bool ties = closure is TieClosure;
        Length run = Run(pattern);
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
                Marks = [.. panel.Marks, .. Hems(panel).SelectMany(hem => Marks(hem, closure, count, ties))],
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

    // Ties stand on the hems' edges; buttons and their holes half the overlap in.
    private static IEnumerable<PanelMark> Marks(Edge hem, OverlappingClosure closure, int count, bool ties)
    {
        long inward = ties ? 0 : closure.Overlap.HalfUp().Nanometres;
        return Enumerable
            .Range(0, count)
            .Select(i =>
            {
                (Point at, double direction) = hem.At(
                    Length.FromNanometres((long)((Int128)hem.Length.Nanometres * ((2 * i) + 1) / (2 * count)))
                );
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

    // The hems that overlap: those across a panel or along a body, of a flange's the part at the body; a tied end's hem is not one of them.
    private static IEnumerable<Edge> Hems(Panel panel) => panel.IsAddition ? [] : panel.Edges.Where(IsOverlapping);

    /// <summary>Whether an edge is a hem that lies over another.</summary>
    /// <param name="edge">An edge of a cover's shell; hems of additions are not asked about.</param>
    internal static bool IsOverlapping(Edge edge) => edge.Finish.Kind == FinishKind.Hem && Overlapping.Contains(edge.Name);
}
