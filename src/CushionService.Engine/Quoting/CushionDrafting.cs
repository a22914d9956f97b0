using System.Collections.Immutable;
using CushionService.Engine.Cutting;
using CushionService.Engine.Layouts;
using CushionService.Engine.Measures;
using CushionService.Engine.Patterns.Additions;
using CushionService.Engine.Patterns.Constructions;
using CushionService.Engine.Patterns.Panels;
using CushionService.Engine.Patterns.Sections;
using CushionService.Engine.Specifications;
using CushionService.Engine.Specifications.Fabrics;

namespace CushionService.Engine.Quoting;

/// <summary>One cushion of an order drafted on its fabrics: strips and faces joined where a fabric is too narrow for them.</summary>
internal sealed class CushionDrafting
{
    // No strip is longer: what is railroaded runs along the bolt, so that the width of the fabric does not bound it.
    private static readonly Length Endless = Length.FromInches(1_000_000);

    private readonly OrderSpecification _order;
    private readonly ImmutableArray<Violation>.Builder _warnings;

    /// <summary>Drafts a cushion.</summary>
    /// <param name="order">The order, every grain of it decided.</param>
    /// <param name="cushion">A cushion of the order.</param>
    /// <param name="constructions">The constructions that draft it.</param>
    /// <param name="warnings">Takes what is joined or shortened, in the order of the work.</param>
    public CushionDrafting(
        OrderSpecification order,
        CushionSpecification cushion,
        ImmutableArray<IConstruction> constructions,
        ImmutableArray<Violation>.Builder warnings
    )
    {
        (_order, _warnings) = (order, warnings);
        Cushion = ShorterReturns.Of(cushion, Longest(cushion, FabricRole.Sides));
        if (!ReferenceEquals(Cushion, cushion))
        {
            warnings.Add(ShorterReturns.Said(Cushion));
        }

        // Drafted whole first: additions and matching need faces and strips as one panel; only then is what is too wide
        // joined.
        IConstruction construction = ConstructionRegistry.Of(cushion.Construction, constructions);
        Pattern whole = InnerCover.AddTo(FaceNames.AddTo(Trim.AddTo(construction.Draft(Cushion), Cushion), Cushion), construction, Cushion);
        Pattern pieced = PiecedPattern.Of(
            PatternMatching.On(whole, Cushion, Fabric, RowPrinting.Shift(order, Cushion)),
            Cushion.SeamAllowance,
            role => Longest(Cushion, role),
            Cushion.Practice.Joins,
            FrontRoomOf,
            Joins,
            isRound: !Cushion.Outline.HasOutsideCorners
        );
        Pattern = JoinNotches.AddTo(pieced, Cushion.Outline.IsSymmetric);
    }

    /// <summary>The cushion, its closure's returns shortened where a join would cross them.</summary>
    public CushionSpecification Cushion { get; }

    /// <summary>Its pattern, strips and faces joined.</summary>
    public Pattern Pattern { get; }

    /// <summary>A panel as it is cut.</summary>
    /// <param name="panel">A panel of <see cref="Pattern"/>, or one that is tried for it.</param>
    public CutPiece Cut(Panel panel) =>
        CutPiece.Of(panel, Cushion, Fabric(panel.Role), _order.Workroom.CuttingStep, _order.Workroom.FaceRounding);

    private FabricSpecification Fabric(FabricRole role) => _order.Fabric(Cushion.Fabrics[role]);

    // Railroaded, a strip runs along the bolt and is never too long for it.
    private Length Longest(CushionSpecification cushion, FabricRole role)
    {
        FabricSpecification fabric = _order.Fabric(cushion.Fabrics[role]);
        return role != FabricRole.InnerCover && cushion.IsRailroaded(fabric) ? Endless : WholeSteps(fabric.UsableWidth);
    }

    private FrontRoom? FrontRoomOf(Panel strip) =>
        !Cushion.IsRailroaded(Fabric(strip.Role))
            ? FrontRoom.Of(strip, Fabric(strip.Role), Longest(Cushion, strip.Role), Cushion.SeamAllowance, _order.Workroom.CuttingStep)
            : null;

    // A print whose place across is known or not has a motif within any repeat's width of the fabric.
    private Length RoomFor(FabricRole role) => Fabric(role).LaidRepeat?.Width?.RoundUpTo(_order.Workroom.CuttingStep) ?? Length.Zero;

    // A joined strip is rounded up to the cutting step, and must still fit.
    private Length WholeSteps(Length usable) =>
        Length.FromNanometres(usable.Nanometres - (usable.Nanometres % _order.Workroom.CuttingStep.Nanometres));

    private ImmutableArray<Length> Joins(Panel panel)
    {
        bool may =
            Cushion.Trim.FaceJoins == FaceJoins.Allow && panel is { Role: FabricRole.Top or FabricRole.Bottom, TakeUpAcross.Nanometres: 0 };
        if (!may || Fits(panel))
        {
            return [];
        }

        Length usable = WholeSteps(Fabric(panel.Role).UsableWidth);
        ImmutableArray<Length> joins = JoinsWithin(panel, usable);
        // Narrower panels find their motif wherever it is across: taken where they need no further join.
        Length room = panel.Match is null ? Length.Zero : RoomFor(panel.Role);
        if (room > Length.Zero && JoinsWithin(panel, usable - room) is var matched && matched.Length == joins.Length)
        {
            joins = matched;
        }

        if (!joins.IsEmpty)
        {
            _warnings.Add(Joined(panel, joins));
        }

        return joins;
    }

    private ImmutableArray<Length> JoinsWithin(Panel panel, Length usable) =>
        FaceJoining.Joins(panel, usable, Cushion.SeamAllowance, Fits, Cushion.Practice.Joins);

    private bool Fits(Panel panel) => FabricNesting.Fits(Fabric(panel.Role), Cut(panel));

    // A warning, since the order allows joins in its faces, yet the maker must know where they lie.
    private Violation Joined(Panel face, ImmutableArray<Length> joins) =>
        new Violation(Cushion.Pointer, "joined-face", DraftTexts.JoinedFace(face.Part, Cushion.Name, joins.Length + 1, joins));
}
