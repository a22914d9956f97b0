using System.Collections.Immutable;
using CushionService.Engine.Geometry;
using CushionService.Engine.Measures;
using CushionService.Engine.Patterns.Panels;
using CushionService.Engine.Specifications;
using CushionService.Engine.Specifications.Closures;
using CushionService.Engine.Specifications.Fabrics;
using CushionService.Engine.Specifications.Outlines;

namespace CushionService.Engine.Patterns.Sections;

/// <summary>A face: one panel of any outline, or two that meet or overlap in the middle of its depth.</summary>
internal sealed class Face
{
    // The runs of the seam line, as this face looks from its outside.
    private readonly ImmutableArray<OutlineSide> _runs;
    private readonly PartName _part;

    private Face(ImmutableArray<Panel> panels, ImmutableArray<OutlineSide> runs, PartName part) =>
        (Panels, _runs, _part) = (panels, runs, part);

    /// <summary>One panel, or the front and the back one of a divided face.</summary>
    public ImmutableArray<Panel> Panels { get; }

    /// <summary>A face in one panel.</summary>
    public static Face Whole(PartName part, FabricRole role, ImmutableArray<OutlineSide> runs, EdgeFinish seam) =>
        Whole(part, role, runs, ImmutableArray.CreateRange(runs, (run, finish) => new Edge(run.Name, run.Path, finish), seam));

    private static Face Whole(PartName part, FabricRole role, ImmutableArray<OutlineSide> runs, ImmutableArray<Edge> edges)
    {
        Point extent = Panel.ExtentOf(edges);
        return new Face(
            [
                new Panel
                {
                    Part = part,
                    Role = role,
                    Edges = edges,
                    Match = new Point(extent.X.HalfUp(), extent.Y.HalfUp()),
                },
            ],
            runs,
            part
        );
    }

    /// <summary>A face of a panel that is drawn already.</summary>
    public static Face Of(Panel panel) =>
        new([panel], [.. panel.Edges.Select(edge => new OutlineSide(edge.Name, Side.Front, edge.Path))], panel.Part);

    /// <summary>The bottom of a cushion as it looks from below: in two where the closure is on it.</summary>
    /// <param name="cushion">The cushion.</param>
    /// <param name="runs">The runs of its seam line.</param>
    /// <param name="seam">The finish all round.</param>
    /// <param name="top">The top along the same runs, where there is one: what is cut the same is drawn once.</param>
    public static Face Bottom(CushionSpecification cushion, ImmutableArray<OutlineSide> runs, EdgeFinish seam, Face? top = null)
    {
        ImmutableArray<OutlineSide> below = cushion.Outline.FromBelow(runs);
        Face whole =
            below == top?._runs && top is { Panels: [var panel] }
                ? Whole(PartName.Bottom, FabricRole.Bottom, below, panel.Edges)
                : Whole(PartName.Bottom, FabricRole.Bottom, below, seam);
        return Divided(whole, cushion.Closure);
    }

    /// <summary>A face in a front and a back panel, each half as deep and half the lap more, where a closure is across it; in a left and a
    /// right one where it is sideways.</summary>
    /// <exception cref="InvalidPatternException">The closure's lines do not part the outline in two (see
    /// <see cref="ClosureLine"/>).</exception>
    public static Face Divided(Face face, ClosureSpecification closure)
    {
        (Length lap, EdgeFinish inner) = closure switch
        {
            ZipperClosure { Side: Side.Bottom } zipper => (zipper.Lap, EdgeFinish.ZipperTurnUnder(zipper.TurnUnder)),
            OverlappingClosure { Side: Side.Bottom } flaps => (flaps.Overlap, EdgeFinish.DoubleHem(flaps.Fold)),
            _ => (Length.Zero, EdgeFinish.Raw),
        };
        if (inner == EdgeFinish.Raw)
        {
            return face;
        }

        Panel whole = face.Panels[0];
        bool sideways = closure is EnvelopeClosure { Sideways: true };
        (Parting front, Parting back) =
            ClosureLine.Part(whole.Edges, sideways ? whole.Width : whole.Height, lap, inner, sideways)
            ?? throw new InvalidPatternException($"The closure does not divide the {whole.Part} in two.");
        return new Face(
            [
                Lapped(
                    Of(whole with { Part = whole.Part with { Half = sideways ? FaceHalf.Left : FaceHalf.Front }, Edges = front.Before })
                ),
                Of(whole with { Part = whole.Part with { Half = sideways ? FaceHalf.Right : FaceHalf.Back }, Edges = back.After }),
            ],
            face._runs,
            face._part
        );

        // The back laps over the front.
        Panel Lapped(Panel panel) => LapLine.On(panel, panel.Edges.First(edge => edge.Finish == inner), closure);

        // From its own lower left corner.
        static Panel Of(Panel panel)
        {
            Length left = -panel.Edges.Min(edge => edge.Path.Min(segment => segment.To.X)),
                down = -panel.Edges.Min(edge => edge.Path.Min(segment => segment.To.Y));
            return panel with
            {
                Edges = [.. panel.Edges.Select(edge => edge.Moved(left, down))],
                Gathers = [.. panel.Gathers.Where(gather => panel.Edges.Any(edge => edge.Name == gather.Edge))],
                Match = panel.Match?.Moved(left, down),
            };
        }
    }

    /// <summary>The edges of the face on a run, and how far they overlap there.</summary>
    /// <param name="run">A run of the face's seam line.</param>
    /// <returns>No lap where one panel covers the run; an edge that the closure's line meets twice is counted under both its
    /// names.</returns>
    public (ImmutableArray<EdgeRef> Edges, Length Lap) On(OutlineSide run)
    {
        ImmutableArray<EdgeRef> edges = [];
        EdgeName again = Panels.Length > 1 ? run.Name.With(Parting.Again) : run.Name;
        // What the edges have more than the run is what they lie over each other.
        Length laid = -run.Length;
        foreach (Panel panel in Panels)
        {
            foreach (Edge edge in panel.Edges)
            {
                if (edge.Name == run.Name || edge.Name == again)
                {
                    edges = edges.Add(new EdgeRef(panel.Part, edge.Name));
                    laid += edge.Length;
                }
            }
        }

        return (edges, laid);
    }

    /// <summary>The zipper between the two panels of a divided face; nothing when there is none.</summary>
    public ImmutableArray<Seam> Zipper =>
        Panels is [{ Part.Half: FaceHalf.Front } front, var back] && front[EdgeName.Upper].Finish.Joins
            ? [new Seam(SeamKind.Zipper, new EdgeRef(front.Part, EdgeName.Upper), new EdgeRef(back.Part, EdgeName.Lower))]
            : [];

    /// <summary>Sews the face to the lower edges of a boxing, where it has one.</summary>
    /// <param name="boxing">The section on each run; null where the face meets no boxing there, as at the sharp edge of a
    /// wedge.</param>
    /// <param name="kindOn">How each run is joined.</param>
    public IEnumerable<Seam> SewnTo(Func<OutlineSide, BoxingSection?> boxing, Func<OutlineSide, SeamKind> kindOn) =>
        _runs.Where(run => boxing(run) is not null).Select(run => SewnTo(boxing(run)!.Lower(run), run, kindOn(run)));

    /// <summary>Sews the face to what runs round it, a seam for each run.</summary>
    /// <param name="around">The edge on each run that the face is sewn to.</param>
    /// <param name="kindOn">How each run is joined.</param>
    public ImmutableArray<Seam> SewnTo(Func<OutlineSide, EdgeRef> around, Func<OutlineSide, SeamKind> kindOn) =>
        ImmutableArray.CreateRange(_runs, run => SewnTo(around(run), run, kindOn(run)));

    private Seam SewnTo(EdgeRef around, OutlineSide run, SeamKind kind)
    {
        (ImmutableArray<EdgeRef> edges, Length lap) = On(run);
        return new Seam(kind, [around], edges, lap);
    }
}
