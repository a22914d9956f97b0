using System.Collections.Immutable;
using CushionService.Engine.Measures;
using CushionService.Engine.Specifications;

namespace CushionService.Engine.Patterns;

/// <summary>A face of a rectangular cushion: one panel, or two that meet or overlap in the middle of its depth.</summary>
internal sealed class Face
{
    private readonly ImmutableArray<SideRun> _runs;
    private readonly string _part;
    private readonly bool _divided;
    private readonly Length _lap;

    private Face(ImmutableArray<Panel> panels, ImmutableArray<SideRun> runs, string part, bool divided, Length lap) =>
        (Panels, _runs, _part, _divided, _lap) = (panels, runs, part, divided, lap);

    public ImmutableArray<Panel> Panels { get; }

    /// <summary>The panel nearer the front, when the face is divided.</summary>
    public EdgeRef FrontEdge => new($"{_part}-front", "upper");

    /// <summary>The panel nearer the back, when the face is divided.</summary>
    public EdgeRef BackEdge => new($"{_part}-back", "lower");

    /// <summary>A face in one panel.</summary>
    public static Face Whole(string part, FabricRole role, ImmutableArray<SideRun> runs, EdgeFinish seam)
    {
        var outline = new PanelOutline();
        foreach (SideRun run in runs)
        {
            outline = run.Side switch
            {
                Side.Front => outline.East(run.Name, run.Length, seam),
                Side.Right => outline.North(run.Name, run.Length, seam),
                Side.Back => outline.West(run.Name, run.Length, seam),
                _ => outline.South(run.Name, run.Length, seam),
            };
        }

        var panel = new Panel { Part = part, Role = role, Edges = outline.Edges() };
        return new Face([panel with { Match = new Point(panel.Width.HalfUp(), panel.Height.HalfUp()) }], runs, part, false, Length.Zero);
    }

    /// <summary>A face in a front and a back panel, each half as deep, and half the overlap more.</summary>
    /// <param name="part">Names the face.</param>
    /// <param name="role">Its cloth.</param>
    /// <param name="runs">One run for each side.</param>
    /// <param name="seam">The finish all round.</param>
    /// <param name="lap">How far the two overlap: (depth + overlap) / 2 each.</param>
    /// <param name="inner">The finish of the edges in the middle.</param>
    public static Face Divided(string part, FabricRole role, ImmutableArray<SideRun> runs, EdgeFinish seam, Length lap, EdgeFinish inner)
    {
        Length width = runs[0].Length, depth = runs[1].Length;
        Length front = HookAndLoopClosure.VisibleHeight(depth, lap), back = depth + lap - front;
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
    public (ImmutableArray<EdgeRef> Edges, Length Lap) On(SideRun run) => (_divided, run.Side) switch
    {
        (false, _) => ([new EdgeRef(_part, run.Name)], Length.Zero),
        (true, Side.Front) => ([new EdgeRef($"{_part}-front", "front")], Length.Zero),
        (true, Side.Back) => ([new EdgeRef($"{_part}-back", "back")], Length.Zero),
        _ => ([new EdgeRef($"{_part}-front", run.Name), new EdgeRef($"{_part}-back", run.Name)], _lap),
    };

    /// <summary>Sews the face to what runs round it, a seam for each run.</summary>
    /// <param name="around">The edge on each run that the face is sewn to.</param>
    /// <param name="kindOn">How each run is joined.</param>
    public IEnumerable<Seam> SewnTo(Func<SideRun, EdgeRef> around, Func<SideRun, SeamKind> kindOn)
    {
        foreach (SideRun run in _runs)
        {
            (ImmutableArray<EdgeRef> edges, Length lap) = On(run);
            yield return new Seam(kindOn(run), [around(run)], edges, lap);
        }
    }
}
