using CushionService.Contract.Orders;
using CushionService.Engine.Measures;
using CushionService.Engine.Patterns;
using CushionService.Engine.Specifications;
using CushionService.Engine.Specifications.Closures;

namespace CushionService.Intake;

/// <summary>A cushion's fields as they apply, defaults taken; null where a field is missing or cannot be read.</summary>
internal sealed class CushionReading(Cushion cushion, OrderReading order)
{
    private static readonly Length UsualButton = Engine.Measures.Length.FromInches(0.75m);
    private static readonly Length UsualTie = Engine.Measures.Length.FromInches(8);
    private static readonly Length UsualTiedOverlap = Engine.Measures.Length.FromInches(1.5m);
    private static readonly Length UsualTape = Engine.Measures.Length.FromInches(0.75m);

    public ConstructionOffer? Offer { get; } =
        cushion.Construction is { } kind && Enum.IsDefined(kind) ? Constructions.Of(kind).Offer : null;

    /// <summary>The outline, when its sizes make a shape.</summary>
    public Engine.Specifications.Outlines.Outline? Outline { get; } =
        cushion.Outline is { } outline && OutlineReading.Read(outline, order) is { } drawn && !drawn.Faults().Any() ? drawn : null;

    public Length? Depth => Outline?.Depth;

    public Length? Thickness => order.Length(cushion.Thickness);

    /// <summary>Finished height of the boxing.</summary>
    public Length? BoxingHeight => Thickness - order.Practice.BoxingTautness;

    public Length? SeamAllowance => Or(cushion.SeamAllowance, order.Practice.SeamAllowance);

    public ClosureKind? Closure => cushion.Closure?.Kind;

    public Side? Side => cushion.Closure?.Side ?? (Closure is { } closure && Offer?.SidesFor(closure) is [var first, ..] ? first : null);

    /// <summary>A zipper at the back stands in a section of its own that a wrapped strip meets, and a curved boxing has no corners; other
    /// boxings join at the corners.</summary>
    public BoxingJoins Joins =>
        cushion.Boxing?.Joins
        ?? (
            Outline is { HasCorners: false } || (Closure == ClosureKind.Zipper && Side == Engine.Specifications.Side.Back)
                ? BoxingJoins.Back
                : BoxingJoins.Corners
        );

    /// <summary>Whether the closure is a section of the boxing of its own.</summary>
    public bool OpensBoxing =>
        Side != Engine.Specifications.Side.Bottom
        && Closure is ClosureKind.Zipper or ClosureKind.HookAndLoop or ClosureKind.Buttons or ClosureKind.Ties;

    public bool HasReturns => Offer is { Joins.Length: > 0 } && Joins == BoxingJoins.Back && OpensBoxing;

    /// <summary>A closure runs on round the corners of a straight back; a curved back it opens as it is, unless told otherwise.</summary>
    public Length? Return =>
        !HasReturns
            ? Engine.Measures.Length.Zero
            : Or(
                cushion.Closure?.Return,
                Closure == ClosureKind.Zipper && HasStraightBack ? order.Practice.ZipperReturn : Engine.Measures.Length.Zero
            );

    private bool HasStraightBack =>
        Outline?.Sides.All(static stretch => stretch.Side != Engine.Specifications.Side.Back || stretch.IsStraight) ?? true;

    /// <summary>How far a closure at the back may run on: to the ends of the stretches beside it.</summary>
    public Length? LongestReturn =>
        Outline is { } outline && outline.Sides.Any(stretch => stretch.Side == Side) ? Neighbours(outline.Sides, Side!.Value) : null;

    private static Length Neighbours(
        System.Collections.Immutable.ImmutableArray<Engine.Specifications.Outlines.OutlineSide> sides,
        Side side
    )
    {
        var shortest = Engine.Measures.Length.MaxValue;
        for (var i = 0; i < sides.Length; i++)
        {
            Engine.Specifications.Outlines.OutlineSide next = sides[(i + 1) % sides.Length];
            if (sides[i].Side != side && next.Side == side)
            {
                shortest = Engine.Measures.Length.Min(shortest, sides[i].Length);
            }
            else if (sides[i].Side == side && next.Side != side)
            {
                shortest = Engine.Measures.Length.Min(shortest, next.Length);
            }
        }

        // Where one stretch lies on both sides of the closure, the two returns share it.
        bool shared = sides.Count(stretch => stretch.Side != side) == 1;
        return shared ? Engine.Measures.Length.FromNanometres(shortest.Nanometres / 2) : shortest;
    }

    public Length? TurnUnder => Or(cushion.Closure?.TurnUnder, order.Practice.ZipperTurnUnder);

    /// <summary>How far a zipper is lapped; zero where it is centred.</summary>
    public Length? Lap => Or(cushion.Closure?.Lap, Engine.Measures.Length.Zero);

    /// <summary>Whether the closure is a zipper in a seam, and not in a section of its own.</summary>
    public bool ZipsSeam => Closure == ClosureKind.Zipper && Offer is { ZipperInSeam: true } && Side != Engine.Specifications.Side.Bottom;

    public Length? Fold => Or(cushion.Closure?.Fold, order.Practice.HemFold);

    public Length? TapeWidth => Or(cushion.Closure?.TapeWidth, UsualTape);

    public Length? ButtonDiameter => Or(cushion.Closure?.ButtonDiameter, UsualButton);

    public Length? TieLength => Or(cushion.Closure?.TieLength, UsualTie);

    /// <summary>The narrowest overlap that holds the tape.</summary>
    public Length? NarrowestOverlap => TapeWidth is { } tape ? HookAndLoopClosure.NarrowestOverlap(tape, order.Practice.TapeMargin) : null;

    /// <summary>What the overlap lies across: the boxing's height, the way round a roll, or the depth of a divided face.</summary>
    public Length? Across =>
        Side == Engine.Specifications.Side.Bottom ? Depth
        : Offer is { Thickness: false } ? Outline?.Perimeter
        : BoxingHeight;

    public bool StripsAsSides => cushion.Closure?.Strips == HookAndLoopStrips.AsSides;

    public Length? Overlap =>
        Closure switch
        {
            ClosureKind.HookAndLoop when StripsAsSides => Across is { } height && SeamAllowance is { } seam && Fold is { } fold
                ? HookAndLoopClosure.OverlapAsSides(height, seam, fold)
                : null,
            not null when cushion.Closure?.Overlap is { } written => order.Length(written),
            ClosureKind.HookAndLoop => NarrowestOverlap,
            ClosureKind.Buttons => ButtonDiameter is { } diameter ? ButtonClosure.UsualOverlap(diameter) : null,
            ClosureKind.Ties when Side != Engine.Specifications.Side.Bottom => UsualTiedOverlap,
            ClosureKind.Envelope or ClosureKind.Ties => Across is { } across ? EnvelopeClosure.UsualOverlap(across) : null,
            _ => null,
        };

    public Side HandleSide => cushion.Handle?.Side ?? Engine.Specifications.Side.Front;

    /// <summary>Finished length of what belongs to a side.</summary>
    public Length? SideLength(Side side) =>
        Outline
            ?.Sides.Where(stretch => stretch.Side == side)
            .Aggregate(Engine.Measures.Length.Zero, (sum, stretch) => sum + stretch.Length);

    /// <summary>Finished length of a side, less what the closure's returns take of it.</summary>
    public Length? FreeLength(Side side) =>
        HasReturns && side is Engine.Specifications.Side.Left or Engine.Specifications.Side.Right
            ? SideLength(side) - Return
            : SideLength(side);

    /// <summary>Finished length of the seam on a side, which a gathered corner shortens by half its radius at each end.</summary>
    public Length? SeamLength(Side side) => Offer?.Kind == Construction.GatheredCorner ? SideLength(side) - Thickness : SideLength(side);

    /// <summary>Whether top and bottom meet at the front: a wedge that ends in an edge.</summary>
    public bool IsSharp =>
        Offer?.Takes(ConstructionField.FrontThickness) == true
        && (cushion.FrontThickness is null || order.Length(cushion.FrontThickness) == Engine.Measures.Length.Zero);

    /// <summary>Whether its ends are drawn up or tied, and no seam runs round them.</summary>
    public bool HasOpenEnds =>
        cushion.Construction == Construction.Bolster && cushion.Ends is { Kind: not null and not BolsterEndKind.Flat };

    public string? Top => cushion.Fabrics?.Top ?? order.OnlyFabric;

    private Length? Or(Contract.Measure? measure, Length usual) => measure is null ? usual : order.Length(measure);
}
