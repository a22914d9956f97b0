using System.Collections.Immutable;
using CushionService.Engine.Geometry;
using CushionService.Engine.Measures;
using CushionService.Engine.Specifications;
using CushionService.Engine.Specifications.Outlines;

namespace CushionService.Engine.Patterns;

/// <summary>A face: one panel of any outline, or two of a rectangle that meet or overlap in the middle of its depth.</summary>
internal sealed class Face
{
    private readonly ImmutableArray<OutlineSide> _runs;
    private readonly string _part;
    private readonly bool _divided;
    private readonly Length _lap;

    private Face(ImmutableArray<Panel> panels, ImmutableArray<OutlineSide> runs, string part, bool divided, Length lap) =>
        (Panels, _runs, _part, _divided, _lap) = (panels, runs, part, divided, lap);

    public ImmutableArray<Panel> Panels { get; }

    /// <summary>The panel nearer the front, when the face is divided.</summary>
    public EdgeRef FrontEdge => new($"{_part}-front", "upper");

    /// <summary>The panel nearer the back, when the face is divided.</summary>
    public EdgeRef BackEdge => new($"{_part}-back", "lower");

    /// <summary>A face in one panel.</summary>
    public static Face Whole(string part, FabricRole role, ImmutableArray<OutlineSide> runs, EdgeFinish seam)
    {
        var panel = new Panel { Part = part, Role = role, Edges = [.. runs.Select(run => new Edge(run.Name, run.Path, seam))] };
        return new Face([panel with { Match = new Point(panel.Width.HalfUp(), panel.Height.HalfUp()) }], runs, part, false, Length.Zero);
    }

    /// <summary>The bottom of a boxed cushion: in two where the closure stands on it, otherwise as it looks from below.</summary>
    public static Face Bottom(CushionSpecification cushion, ImmutableArray<OutlineSide> runs, EdgeFinish seam) => cushion.Closure switch
    {
        ZipperClosure { Side: Side.Bottom } zipper => Divided("bottom", FabricRole.Bottom, runs, seam, Length.Zero, EdgeFinish.ZipperTurnUnder(zipper.TurnUnder)),
        OverlappingClosure { Side: Side.Bottom } flaps => Divided("bottom", FabricRole.Bottom, runs, seam, flaps.Overlap, EdgeFinish.DoubleHem(flaps.Fold)),
        _ => Whole("bottom", FabricRole.Bottom, cushion.Outline.FromBelow(runs), seam),
    };

    /// <summary>A face in a front and a back panel, each half as deep, and half the overlap more.</summary>
    /// <param name="part">Names the face.</param>
    /// <param name="role">Its cloth.</param>
    /// <param name="runs">One run for each side.</param>
    /// <param name="seam">The finish all round.</param>
    /// <param name="lap">How far the two overlap: (depth + overlap) / 2 each.</param>
    /// <param name="inner">The finish of the edges in the middle.</param>
    public static Face Divided(string part, FabricRole role, ImmutableArray<OutlineSide> runs, EdgeFinish seam, Length lap, EdgeFinish inner)
    {
        Length width = runs.First(run => run.Side == Side.Front).Length, depth = runs.First(run => run.Side == Side.Right).Length;
        Length front = OverlappingClosure.VisibleHeight(depth, lap), back = depth + lap - front;
        var centre = new Point(width.HalfUp(), depth.HalfUp());
        var frontPanel = new Panel
        {
            Part = $"{part}-front",
            Role = role,
            Edges = new PanelOutline().East("front", width, seam).North("right", front, seam).West("upper", width, inner).South("left", front, seam).Edges(),
            Match = centre,
        };
        var backPanel = new Panel
        {
            Part = $"{part}-back",
            Role = role,
            Edges = new PanelOutline().East("lower", width, inner).North("right", back, seam).West("back", width, seam).South("left", back, seam).Edges(),
            Match = centre.Moved(Length.Zero, back - depth),
        };
        return new Face([frontPanel, backPanel], runs, part, true, lap);
    }

    /// <summary>The edges of the face on a run, and how far they overlap there.</summary>
    public (ImmutableArray<EdgeRef> Edges, Length Lap) On(OutlineSide run) => (_divided, run.Side) switch
    {
        (false, _) => ([new EdgeRef(_part, run.Name)], Length.Zero),
        (true, Side.Front) => ([new EdgeRef($"{_part}-front", "front")], Length.Zero),
        (true, Side.Back) => ([new EdgeRef($"{_part}-back", "back")], Length.Zero),
        _ => ([new EdgeRef($"{_part}-front", run.Name), new EdgeRef($"{_part}-back", run.Name)], _lap),
    };

    /// <summary>The zipper between the two panels of a divided face; nothing when there is none.</summary>
    public IEnumerable<Seam> Zipper => _divided && Panels[0]["upper"].Finish.Joins ? [new Seam(SeamKind.Zipper, FrontEdge, BackEdge)] : [];

    /// <summary>Sews the face to the lower edges of a boxing, where it has one.</summary>
    public IEnumerable<Seam> SewnTo(Func<OutlineSide, BoxingSection?> boxing, Func<OutlineSide, SeamKind> kindOn) =>
        _runs.Where(run => boxing(run) is not null).SelectMany(run => SewnTo([run], other => boxing(other)!.Lower(other), kindOn));

    /// <summary>Sews the face to what runs round it, a seam for each run.</summary>
    /// <param name="around">The edge on each run that the face is sewn to.</param>
    /// <param name="kindOn">How each run is joined.</param>
    public IEnumerable<Seam> SewnTo(Func<OutlineSide, EdgeRef> around, Func<OutlineSide, SeamKind> kindOn) => SewnTo(_runs, around, kindOn);

    private IEnumerable<Seam> SewnTo(ImmutableArray<OutlineSide> runs, Func<OutlineSide, EdgeRef> around, Func<OutlineSide, SeamKind> kindOn)
    {
        foreach (OutlineSide run in runs)
        {
            (ImmutableArray<EdgeRef> edges, Length lap) = On(run);
            yield return new Seam(kindOn(run), [around(run)], edges, lap);
        }
    }
}
