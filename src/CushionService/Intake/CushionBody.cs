using CushionService.Contract;
using CushionService.Contract.Orders;
using CushionService.Engine.Measures;
using CushionService.Engine.Patterns.Constructions;
using CushionService.Engine.Specifications.Closures;
using CushionService.Engine.Specifications.Outlines;
using CushionService.Engine.Specifications.Practices;
using CushionService.Engine.Specifications.Shapes;
using Outline = CushionService.Engine.Specifications.Outlines.Outline;

namespace CushionService.Intake;

/// <summary>What has been read of a cushion by the time that its closure and its additions are: its construction, its sizes, its
/// sides.</summary>
/// <param name="Written">The cushion as written.</param>
/// <param name="Offer">What its construction offers.</param>
/// <param name="Outline">Its outline; null where that was refused.</param>
/// <param name="Thickness">Its thickness; null where it has none, or that was refused.</param>
/// <param name="SeamAllowance">Its seam allowance; null where that was refused.</param>
/// <param name="Practice">How the workroom sews.</param>
/// <param name="At">Takes what is wrong with the cushion.</param>
internal sealed record CushionBody(
    Cushion Written,
    ConstructionOffer Offer,
    Outline? Outline,
    Length? Thickness,
    Length? SeamAllowance,
    WorkroomPractice Practice,
    Findings At
)
{
    private readonly Side? _closureSide =
        Written.Closure?.Side ?? (Written.Closure?.Kind is { } kind && Offer.SidesFor(kind) is [var first, ..] ? first : null);

    /// <summary>Finished height of the boxing; null where it would have none, which is refused.</summary>
    /// <remarks>A boxing is cut a little lower than the foam, so that the cover is taut (common practice, no source).</remarks>
    public Length? BoxingHeight => Thickness - Practice.BoxingTautness is { Nanometres: > 0 } height ? height : null;

    /// <summary>Its closure's kind; null where it names none.</summary>
    public ClosureKind? Closure => Written.Closure?.Kind;

    /// <summary>Where its closure is; null where its construction does not take the closure.</summary>
    public Side? ClosureSide => _closureSide;

    /// <summary>Whether the closure is a section of the boxing of its own.</summary>
    public bool OpensBoxing =>
        ClosureSide != Side.Bottom && Closure is ClosureKind.Zipper or ClosureKind.HookAndLoop or ClosureKind.Buttons or ClosureKind.Ties;

    /// <summary>Whether its boxing is joined at all.</summary>
    public bool HasJoins => !Offer.Joins.IsEmpty;

    /// <summary>A zipper at the back has a section of its own that a wrapped strip meets, and a curved boxing has no corners; other
    /// boxings join at the corners.</summary>
    public BoxingJoins Joins =>
        Written.Boxing?.Joins
        ?? (
            Outline is { HasCorners: false } || (Closure == ClosureKind.Zipper && ClosureSide == Side.Back)
                ? BoxingJoins.Back
                : BoxingJoins.Corners
        );

    /// <summary>Whether the closure may run on round the corners beside it.</summary>
    public bool HasReturns => HasJoins && Joins == BoxingJoins.Back && OpensBoxing && !ZipsThree;

    /// <summary>Whether the closure is a zipper in a seam, and not in a section of its own.</summary>
    public bool ZipsSeam => Closure == ClosureKind.Zipper && Offer.ZipperInSeam && ClosureSide != Side.Bottom;

    /// <summary>How far the closure runs on round each corner; null where that was refused, or until it has been read.</summary>
    public Length? Return { get; set; }

    /// <summary>Where its handles would be, at least one side.</summary>
    public IReadOnlyList<Side> HandleSides => Written.Handle?.Sides is { Count: > 0 } sides ? sides : [Written.Handle?.Side ?? Side.Front];

    /// <summary>Whether the flaps of its envelope come from the left and the right.</summary>
    public bool FlapsSideways =>
        Closure == ClosureKind.Envelope
        && Offer.FlapsEitherWay
        && Outline is { } outline
        && Written.Closure?.Flaps is { } flaps
        && (flaps == FlapSides.ShortSide) == (outline.Width >= outline.Depth);

    /// <summary>Whether its zipper runs round three sides.</summary>
    public bool ZipsThree =>
        Closure == ClosureKind.Zipper && Written.Closure?.Extent == ZipperExtent.ThreeSides && Offer.ZipsThreeSides && OpensBoxing;

    /// <summary>Whether the closure opens the boxing on a side.</summary>
    public bool IsOpenOn(Side side) =>
        OpensBoxing && (side == ClosureSide || (ZipsThree && side != Side.Bottom && side != ZipperClosure.Opposite(ClosureSide!.Value)));

    /// <summary>Whether top and bottom meet at the front: a wedge that ends in an edge.</summary>
    public bool IsSharp => Offer.Takes(ConstructionField.FrontThickness) && (FrontThickness ?? Length.Zero) == Length.Zero;

    /// <summary>Its thickness at the front; null where it has none.</summary>
    public Length? FrontThickness { get; init; }

    /// <summary>Whether its ends are drawn up or tied, and no seam runs round them.</summary>
    public bool HasOpenEnds => Offer.Kind == Construction.Bolster && Written.Ends is { Kind: not null and not BolsterEndKind.Flat };

    /// <summary>Whether the outline has a side; true where the outline is not known.</summary>
    public bool HasSide(Side side) => side != Side.Bottom && Outline?.Sides.Any(stretch => stretch.Side == side) != false;

    /// <summary>Finished length of what belongs to a side.</summary>
    /// <param name="side">The side; an outline may have several stretches that belong to it.</param>
    public Length? SideLength(Side side) =>
        Outline?.Sides.Where(stretch => stretch.Side == side).Aggregate(Length.Zero, (sum, stretch) => sum + stretch.Length);

    /// <summary>Finished length of a side, less what the closure's returns take of it; of a side in several stretches the longest, for
    /// what is sewn onto a side lies on one of them.</summary>
    /// <param name="side">The side.</param>
    public Length? FreeLength(Side side)
    {
        Length? longest = Outline
            ?.Sides.Where(stretch => stretch.Side == side)
            .Aggregate(Length.Zero, (most, stretch) => Length.Max(most, stretch.Length));
        return HasReturns && side is Side.Left or Side.Right ? longest - Return : longest;
    }

    /// <summary>Reports a side that the outline does not have.</summary>
    /// <param name="side">The side.</param>
    /// <param name="field">The property of the cushion that names it, or needs it.</param>
    public void NeedsSide(Side side, string field)
    {
        if (side == Side.Bottom || !HasSide(side))
        {
            At.Refuse(field, "not-combinable", TrimTexts.SideRequired(Outline?.Kind, side));
        }
    }

    /// <summary>Reports a field that only a cushion with a rectangular outline can have.</summary>
    /// <param name="field">The property of the cushion.</param>
    public void NeedsRectangle(string field)
    {
        if (Outline is { Kind: not OutlineKind.Rectangle and var kind })
        {
            At.Refuse(field, "not-combinable", ShapeTexts.NeedsRectangle(FieldNames.Words(field), kind));
        }
    }
}
