using System.Collections.Immutable;
using CushionService.Engine.Geometry;
using CushionService.Engine.Measures;
using CushionService.Engine.Patterns.Panels;
using CushionService.Engine.Specifications.Closures;
using CushionService.Engine.Specifications.Fabrics;
using CushionService.Engine.Specifications.Outlines;

namespace CushionService.Engine.Patterns.Sections;

/// <summary>A section of a boxing, over one or more runs of the seam line: one strip, or two that make a closure.</summary>
internal sealed record BoxingSection
{
    /// <summary>The strip, or the upper and the lower strip of a closure.</summary>
    public required ImmutableArray<Panel> Panels { get; init; }

    /// <summary>The runs, counter-clockwise; from left to right as one looks at the outside.</summary>
    public required ImmutableArray<OutlineSide> Runs { get; init; }

    /// <summary>The part that the top is sewn to.</summary>
    public required PartName UpperPart { get; init; }

    /// <summary>The part that the bottom is sewn to; the same part where the section is one strip.</summary>
    public required PartName LowerPart { get; init; }

    /// <summary>How far the two strips overlap.</summary>
    public Length Lap { get; init; }

    /// <summary>The seam between the two strips; null when there is none.</summary>
    public Seam? Middle { get; init; }

    /// <summary>The left ends of all strips, which are caught in one seam.</summary>
    public ImmutableArray<EdgeRef> Start => Ends(EdgeName.Start);

    /// <summary>The right ends of all strips.</summary>
    public ImmutableArray<EdgeRef> End => Ends(EdgeName.End);

    /// <summary>One strip as high as the boxing.</summary>
    /// <param name="part">Names the strip.</param>
    /// <param name="runs">The runs that it covers, counter-clockwise.</param>
    /// <param name="height">Finished height.</param>
    /// <param name="seam">The finish all round.</param>
    public static BoxingSection Plain(PartName part, ImmutableArray<OutlineSide> runs, Length height, EdgeFinish seam) =>
        Of(Strip(part, runs, height, seam, seam, seam), runs);

    /// <summary>One panel of any shape, its edges named as those of a strip.</summary>
    /// <param name="panel">The panel; its ends are called start and end.</param>
    /// <param name="runs">The runs that it covers.</param>
    public static BoxingSection Of(Panel panel, params ImmutableArray<OutlineSide> runs) =>
        new()
        {
            Panels = [panel],
            Runs = runs,
            UpperPart = panel.Part,
            LowerPart = panel.Part,
        };

    /// <summary>The section of a closure: one strip, or the two that open.</summary>
    /// <param name="closure">The closure.</param>
    /// <param name="runs">The runs that it is on.</param>
    /// <param name="height">Finished height.</param>
    /// <param name="part">Names the strip when it is one.</param>
    /// <param name="seam">The finish of what is not the closure's.</param>
    public static BoxingSection Closing(
        ClosureSpecification closure,
        ImmutableArray<OutlineSide> runs,
        Length height,
        PartName part,
        EdgeFinish seam
    ) =>
        closure switch
        {
            ZipperClosure { Side: not Side.Bottom } zipper => Zippered(runs, height, seam, zipper),
            OverlappingClosure { Side: not Side.Bottom } strips => Overlapping(runs, height, seam, strips),
            _ => Plain(part, runs, height, seam),
        };

    /// <summary>Two strips with a zipper between them: each T/2 high, and the turn-under more when cut; the upper one a lap more, which
    /// hides the zipper (common practice, no source).</summary>
    /// <param name="runs">The runs that it covers.</param>
    /// <param name="height">Finished height of both strips together, without the lap.</param>
    /// <param name="seam">The finish of the outer edges.</param>
    /// <param name="zipper">Its turn-under and its lap.</param>
    public static BoxingSection Zippered(ImmutableArray<OutlineSide> runs, Length height, EdgeFinish seam, ZipperClosure zipper)
    {
        var inner = EdgeFinish.ZipperTurnUnder(zipper.TurnUnder);
        Length lower = height.HalfUp();
        return new BoxingSection
        {
            Panels =
            [
                Strip(new PartName(PartKind.ZipperUpper), runs, height - lower + zipper.Lap, inner, seam, seam, EdgeName.Lower),
                LapMarked(Strip(new PartName(PartKind.ZipperLower), runs, lower, seam, inner, seam, null, EdgeName.Upper), zipper.Lap),
            ],
            Runs = runs,
            UpperPart = new PartName(PartKind.ZipperUpper),
            LowerPart = new PartName(PartKind.ZipperLower),
            Lap = zipper.Lap,
            Middle = new Seam(
                SeamKind.Zipper,
                new EdgeRef(new PartName(PartKind.ZipperUpper), EdgeName.Lower),
                new EdgeRef(new PartName(PartKind.ZipperLower), EdgeName.Upper)
            ),
        };
    }

    // The fold of the upper strip comes to this line of the lower one.
    private static Panel LapMarked(Panel strip, Length lap) =>
        lap == Length.Zero
            ? strip
            : strip with
            {
                Marks =
                [
                    .. strip.Marks,
                    new PanelMark(
                        MarkKind.StitchLine,
                        new Point(Length.Zero, strip.Height - lap),
                        new Point(strip.Width, strip.Height - lap),
                        MarkPurpose.LapZipper
                    ),
                ],
            };

    /// <summary>Two hemmed strips that overlap: each (T + o)/2 high, and the hem's two turns more when cut.</summary>
    /// <param name="runs">The runs that it covers.</param>
    /// <param name="height">Finished height as it shows when closed.</param>
    /// <param name="seam">The finish of the outer edges.</param>
    /// <param name="closure">Its hem and its overlap.</param>
    public static BoxingSection Overlapping(ImmutableArray<OutlineSide> runs, Length height, EdgeFinish seam, OverlappingClosure closure)
    {
        var hem = EdgeFinish.DoubleHem(closure.Fold);
        Length lower = OverlappingClosure.VisibleHeight(height, closure.Overlap),
            upper = height + closure.Overlap - lower;
        return new BoxingSection
        {
            Panels =
            [
                Strip(new PartName(PartKind.ClosureUpper), runs, upper, hem, seam, seam, EdgeName.Lower),
                Strip(new PartName(PartKind.ClosureLower), runs, lower, seam, hem, seam, null, EdgeName.Upper),
            ],
            Runs = runs,
            UpperPart = new PartName(PartKind.ClosureUpper),
            LowerPart = new PartName(PartKind.ClosureLower),
            Lap = closure.Overlap,
        };
    }

    /// <summary>The edge that the top is sewn to on a run.</summary>
    /// <param name="run">A run of this section.</param>
    public EdgeRef Upper(OutlineSide run) => new(UpperPart, UpperEdge(run.Name));

    /// <summary>The edge that the bottom is sewn to on a run.</summary>
    /// <param name="run">A run of this section.</param>
    public EdgeRef Lower(OutlineSide run) => new(LowerPart, LowerEdge(run.Name));

    /// <summary>Joins the end of this section to the start of the next.</summary>
    /// <param name="next">The section to the right of this one.</param>
    /// <remarks>Where this section has two strips their overlap lies on the second side of the seam, the side on which a seam may have a
    /// lap.</remarks>
    public Seam JoinedTo(BoxingSection next) =>
        Panels.Length == 1 ? new Seam(SeamKind.StripJoin, End, next.Start, next.Lap) : new Seam(SeamKind.StripJoin, next.Start, End, Lap);

    private static EdgeName UpperEdge(EdgeName run) => run.With(EdgeWord.Top);

    private static EdgeName LowerEdge(EdgeName run) => run.With(EdgeWord.Bottom);

    private ImmutableArray<EdgeRef> Ends(EdgeName edge) =>
        ImmutableArray.CreateRange(Panels, (panel, name) => new EdgeRef(panel.Part, name), edge);

    // A rectangle whose long edges have a stretch for each run, or are whole along a closure, where one name is given.
    private static Panel Strip(
        PartName part,
        ImmutableArray<OutlineSide> runs,
        Length height,
        EdgeFinish lower,
        EdgeFinish upper,
        EdgeFinish ends,
        EdgeName? wholeLower = null,
        EdgeName? wholeUpper = null
    )
    {
        var length = Length.Zero;
        foreach (OutlineSide run in runs)
        {
            length += run.Length;
        }

        var outline = new PanelOutline(edges: 2 + (wholeLower is null ? runs.Length : 1) + (wholeUpper is null ? runs.Length : 1));
        foreach (OutlineSide run in wholeLower is null ? runs : [])
        {
            outline.East(LowerEdge(run.Name), run.Length, lower);
        }

        if (wholeLower is not null)
        {
            outline.East(wholeLower.Value, length, lower);
        }

        outline.North(EdgeName.End, height, ends);
        for (int i = wholeUpper is null ? runs.Length - 1 : -1; i >= 0; i--)
        {
            outline.West(UpperEdge(runs[i].Name), runs[i].Length, upper);
        }

        if (wholeUpper is not null)
        {
            outline.West(wholeUpper.Value, length, upper);
        }

        return new Panel
        {
            Part = part,
            Role = FabricRole.Sides,
            Edges = outline.South(EdgeName.Start, height, ends).Edges(),
            Stretches = ImmutableArray.CreateRange(runs, run => new StripStretch(run.Length, run.Side == Side.Front)),
        };
    }
}
