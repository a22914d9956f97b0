using System.Collections.Immutable;
using CushionService.Engine.Geometry;
using CushionService.Engine.Measures;
using CushionService.Engine.Specifications;
using CushionService.Engine.Specifications.Outlines;

namespace CushionService.Engine.Patterns;

/// <summary>A roll: a body that goes once round the outline, closed in a seam of its own, with an end of that outline at the left and the
/// right, or run on to be gathered or tied there. Half a circle makes a half bolster.</summary>
/// <remarks>The body is as wide as the outline is long round: πD, or πD/2 + D for a half bolster (general geometry). A gathered body is D/2
/// longer at each end, so that it reaches the middle; a tied one a tail more besides (follows from the radius).</remarks>
internal sealed class Bolster : IConstruction
{
    public ConstructionOffer Offer { get; } = new()
    {
        Kind = Construction.Bolster,
        Description = "A roll with flat, gathered or tied ends; half a circle makes a half bolster.",
        Outlines = [OutlineKind.Circle, OutlineKind.HalfRound],
        Closures = [new(ClosureKind.Zipper, [Side.Back]), new(ClosureKind.HandSewn, [Side.Back])],
        Thickness = false,
        Fields = [new(ConstructionField.Length, Required: true), new(ConstructionField.Ends), new(ConstructionField.InnerCover)],
    };

    public Pattern Draft(CushionSpecification cushion)
    {
        BolsterEnds ends = cushion.Ends ?? new BolsterEnds(BolsterEndKind.Flat, Length.Zero, Length.Zero);
        var seam = EdgeFinish.Seam(cushion.SeamAllowance);
        EdgeFinish along = cushion.Closure is ZipperClosure zipper ? EdgeFinish.ZipperTurnUnder(zipper.TurnUnder) : seam;
        EdgeFinish end = ends.Kind switch
        {
            BolsterEndKind.Gathered => new EdgeFinish(FinishKind.Drawn, 1, ends.Turning),
            BolsterEndKind.Tied => EdgeFinish.DoubleHem(ends.Turning.HalfUp()),
            _ => seam,
        };
        Length beyond = ends.Kind == BolsterEndKind.Flat ? Length.Zero : cushion.Width.HalfUp() + ends.Tail;
        ImmutableArray<OutlineSide> runs = cushion.Outline.Sides;
        Panel body = Body(runs, cushion.Length + 2 * beyond, along, end);
        if (beyond > Length.Zero)
        {
            body = body with { Marks = [Tie(body, beyond, ends.Kind), Tie(body, body.Height - beyond, ends.Kind)] };
        }

        var around = new Seam(cushion.Closure is ZipperClosure ? SeamKind.Zipper : SeamKind.Gap, new EdgeRef(body.Part, "end"), new EdgeRef(body.Part, "start"));
        if (ends.Kind != BolsterEndKind.Flat)
        {
            return new Pattern([body], [around]).Closed();
        }

        Face left = Face.Whole("left-end", FabricRole.Sides, runs, seam), right = Face.Whole("right-end", FabricRole.Sides, cushion.Outline.FromBelow(runs), seam);
        return new Pattern(
            [body, .. left.Panels, .. right.Panels],
            [
                around,
                .. left.SewnTo(run => new EdgeRef(body.Part, $"{run.Name}-left"), _ => SeamKind.Plain),
                .. right.SewnTo(run => new EdgeRef(body.Part, $"{run.Name}-right"), _ => SeamKind.Plain),
            ]).Closed();
    }

    /// <summary>A roll as long as the bolster: π D²/4 × length (general geometry).</summary>
    public Volume Block(CushionSpecification cushion, Length oversize) =>
        FillBlock.Prism(cushion.Outline.Area, cushion.Outline.Perimeter, cushion.Length, oversize);

    private static Panel Body(ImmutableArray<OutlineSide> runs, Length height, EdgeFinish along, EdgeFinish end)
    {
        // An end that is sewn to nothing is one edge.
        IEnumerable<(string Name, Length Length)> rim = end.Joins
            ? runs.Select(run => ($"{run.Name}-", run.Length))
            : [("", runs.Aggregate(Length.Zero, (sum, run) => sum + run.Length))];
        PanelOutline walk = rim.Aggregate(new PanelOutline(), (walk, run) => walk.East($"{run.Name}left", run.Length, end)).North("end", height, along);
        walk = rim.Reverse().Aggregate(walk, (walk, run) => walk.West($"{run.Name}right", run.Length, end)).South("start", height, along);
        return new Panel
        {
            Part = "body",
            Role = FabricRole.Top,
            Edges = walk.Edges(),
            Stretches = [.. runs.Select(run => new StripStretch(run.Length, run.Side == Side.Front))],
        };
    }

    private static PanelMark Tie(Panel body, Length y, BolsterEndKind kind) => new(
        MarkKind.FoldLine, new Point(Length.Zero, y), new Point(body.Width, y), kind == BolsterEndKind.Tied ? "Tie the body here" : "The edge of the end");
}
