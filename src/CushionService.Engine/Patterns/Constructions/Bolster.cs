using System.Collections.Immutable;
using CushionService.Engine.Geometry;
using CushionService.Engine.Measures;
using CushionService.Engine.Patterns.Panels;
using CushionService.Engine.Patterns.Sections;
using CushionService.Engine.Specifications;
using CushionService.Engine.Specifications.Closures;
using CushionService.Engine.Specifications.Fabrics;
using CushionService.Engine.Specifications.Outlines;
using CushionService.Engine.Specifications.Shapes;
using CushionService.Engine.Specifications.Trimmings;

namespace CushionService.Engine.Patterns.Constructions;

/// <summary>A roll: a body that goes once round the outline, closed in a seam of its own, with an end of that outline at the left and the
/// right, or run on to be gathered or tied there. Half a circle makes a half bolster.</summary>
/// <remarks>The body is as wide as the outline is long round: πD, or πD/2 + D for a half bolster (general geometry). A gathered body is D/2
/// longer at each end, so that it reaches the middle; a tied one a tail more besides (follows from the radius). A closure whose edges lie
/// over each other makes it wider by so much.</remarks>
internal sealed class Bolster : IConstruction
{
    private static readonly ImmutableArray<EdgeWord> Tails = [EdgeWord.Lower, EdgeWord.Upper];

    public ConstructionOffer Offer { get; } =
        new()
        {
            Kind = Construction.Bolster,
            Description = ConstructionTexts.Bolster,
            Outlines = [OutlineKind.Circle, OutlineKind.HalfRound],
            Closures =
            [
                new(ClosureKind.Zipper, [Side.Back]),
                new(ClosureKind.HookAndLoop, [Side.Back]),
                new(ClosureKind.HandSewn, [Side.Back]),
                new(ClosureKind.Buttons, [Side.Back]),
                new(ClosureKind.Ties, [Side.Back]),
            ],
            Thickness = false,
            Edgings =
            [
                .. EdgingOffer.Along([EdgingPlace.Left, EdgingPlace.Right]),
                new(EdgingKind.Ruffle, [EdgingPlace.Left, EdgingPlace.Right]),
            ],
            Fields = [new(ConstructionField.Length, Required: true), new(ConstructionField.Ends), new(ConstructionField.InnerCover)],
        };

    // The closure runs along the body; edges that overlap have no seam between them. A gathered or tied end has no panel of its own.
    public Pattern Draft(CushionSpecification cushion)
    {
        BolsterEnds ends = cushion.Ends ?? new BolsterEnds(BolsterEndKind.Flat, Length.Zero, Length.Zero);
        var seam = EdgeFinish.Seam(cushion.SeamAllowance);
        (EdgeFinish along, Length lap) = cushion.Closure switch
        {
            ZipperClosure zipper => (EdgeFinish.ZipperTurnUnder(zipper.TurnUnder), zipper.Lap),
            OverlappingClosure hems => (EdgeFinish.DoubleHem(hems.Fold), hems.Overlap),
            _ => (seam, Length.Zero),
        };
        // A gathered end is turned in once; a tied one has a double hem, so that its turning is halved.
        EdgeFinish end = ends.Kind switch
        {
            BolsterEndKind.Gathered => new EdgeFinish(FinishKind.Drawn, 1, ends.Turning),
            BolsterEndKind.Tied => EdgeFinish.DoubleHem(ends.Turning.HalfUp()),
            _ => seam,
        };
        // Half a diameter reaches the middle of the end; a tail goes on from there.
        Length beyond = ends.Kind == BolsterEndKind.Flat ? Length.Zero : cushion.Width.HalfUp() + ends.Tail;
        ImmutableArray<OutlineSide> runs = cushion.Outline.Sides;
        // A closure opens the body alone: what is gathered or tied beyond it is sewn shut.
        Panel body = Body(runs, cushion.Length + 2 * beyond, lap, along, end, beyond);
        body = LapLine.On(body, body[EdgeName.Start], cushion.Closure);
        if (beyond > Length.Zero)
        {
            body = body with { Marks = [.. Lines(body, beyond, MarkPurpose.EdgeOfEnd), .. Ties(body, ends)] };
        }

        Seam[] around = cushion.Closure is OverlappingClosure ? [] : [Around(cushion.Closure, body)];
        // The body alone: its ends are drawn or tied, and no seam is sewn round them.
        if (ends.Kind != BolsterEndKind.Flat)
        {
            // The tails come before the opening that is between them.
            IEnumerable<Seam> tails = around.Length == 0 ? [] : Tails.Select(word => Along(body, SeamKind.Plain, word));
            return new Pattern([body], [.. tails, .. around]).Closed();
        }

        // From outside, the right end is seen mirrored, as an underside is.
        Face left = Face.Whole(PartName.End(EdgeName.Left), FabricRole.Sides, runs, seam),
            right = Face.Whole(PartName.End(EdgeName.Right), FabricRole.Sides, cushion.Outline.FromBelow(runs), seam);
        return new Pattern(
            [body, .. left.Panels, .. right.Panels],
            [
                .. around,
                .. left.SewnTo(run => new EdgeRef(body.Part, run.Name.With(EdgeWord.Left)), _ => SeamKind.Plain),
                .. right.SewnTo(run => new EdgeRef(body.Part, run.Name.With(EdgeWord.Right)), _ => SeamKind.Plain),
            ]
        ).Closed();
    }

    private static Seam Around(ClosureSpecification closure, Panel body) =>
        new(
            closure is ZipperClosure ? SeamKind.Zipper : SeamKind.Gap,
            new EdgeRef(body.Part, EdgeName.End),
            new EdgeRef(body.Part, EdgeName.Start)
        );

    /// <summary>A roll as long as the bolster: π D²/4 × length (general geometry).</summary>
    public Volume Block(CushionSpecification cushion, Length oversize) =>
        FillBlock.Prism(cushion.Outline.Area, cushion.Outline.Perimeter, cushion.Length, oversize);

    // What shuts the body beyond one end of the zipper.
    private static Seam Along(Panel body, SeamKind kind, EdgeWord tail) =>
        new(kind, new EdgeRef(body.Part, EdgeName.End.With(tail)), new EdgeRef(body.Part, EdgeName.Start.With(tail)));

    // A rectangle: across it the outline's runs and the lap, along it the length. Counter-clockwise: the left rim, the
    // end, the right rim, the start.
    private static Panel Body(ImmutableArray<OutlineSide> runs, Length height, Length lap, EdgeFinish along, EdgeFinish end, Length tail)
    {
        // An end that is sewn to nothing is one edge; on one that is sewn, what laps over is caught in the seam below it.
        (EdgeName Name, Length Length, EdgeFinish Finish)[] rim = end.Joins
            ? [.. runs.Select(run => (run.Name, run.Length, end)), (new EdgeName(EdgeWord.Lap), lap, EdgeFinish.Caught(end.Depth))]
            : [(default(EdgeName), runs.Aggregate(lap, (sum, run) => sum + run.Length), end)];
        PanelOutline walk = rim.Aggregate(
            new PanelOutline(),
            (walk, run) => walk.East(run.Name.With(EdgeWord.Left), run.Length, run.Finish)
        );
        // A tail is as deep as the turn-under, so that its seam runs on from the folds; a hem runs on as a hem.
        EdgeFinish shut = along.Kind == FinishKind.Hem ? along : EdgeFinish.Seam(along.Depth);
        walk =
            tail == Length.Zero
                ? walk.North(EdgeName.End, height, along)
                : walk.North(EdgeName.End.With(EdgeWord.Lower), tail, shut)
                    .North(EdgeName.End, height - 2 * tail, along)
                    .North(EdgeName.End.With(EdgeWord.Upper), tail, shut);
        walk = rim.Reverse().Aggregate(walk, (walk, run) => walk.West(run.Name.With(EdgeWord.Right), run.Length, run.Finish));
        walk =
            tail == Length.Zero
                ? walk.South(EdgeName.Start, height, along)
                : walk.South(EdgeName.Start.With(EdgeWord.Upper), tail, shut)
                    .South(EdgeName.Start, height - 2 * tail, along)
                    .South(EdgeName.Start.With(EdgeWord.Lower), tail, shut);
        return new Panel
        {
            Part = new PartName(PartKind.Body),
            Role = FabricRole.Top,
            Edges = walk.Edges(),
            Stretches = [.. runs.Select(run => new StripStretch(run.Length, run.Side == Side.Front)), new StripStretch(lap, false)],
        };
    }

    // The fabric reaches the middle of the end before it is tied there, so that the tail alone is beyond the tie.
    private static IEnumerable<PanelMark> Ties(Panel body, BolsterEnds ends) =>
        ends.Kind == BolsterEndKind.Tied ? Lines(body, ends.Tail, MarkPurpose.TieBody) : [];

    // Across the body, as far from one end as from the other.
    private static IEnumerable<PanelMark> Lines(Panel body, Length inward, MarkPurpose purpose) =>
        new[] { inward, body.Height - inward }.Select(y => new PanelMark(
            MarkKind.FoldLine,
            new Point(Length.Zero, y),
            new Point(body.Width, y),
            purpose
        ));
}
