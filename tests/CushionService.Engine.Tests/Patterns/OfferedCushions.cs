using System.Collections.Immutable;
using CushionService.Engine.Measures;
using CushionService.Engine.Patterns.Constructions;
using CushionService.Engine.Patterns.Sections;
using CushionService.Engine.Specifications;
using CushionService.Engine.Specifications.Closures;
using CushionService.Engine.Specifications.Fabrics;
using CushionService.Engine.Specifications.Outlines;
using CushionService.Engine.Specifications.Practices;
using CushionService.Engine.Specifications.Shapes;
using CushionService.Engine.Specifications.Trimmings;

namespace CushionService.Engine.Tests.Patterns;

/// <summary>Cushions of generated sizes for every combination that the constructions offer; the same number always makes the same
/// one.</summary>
internal sealed class OfferedCushions
{
    private readonly Random _random;
    private readonly ConstructionOffer _offer;

    private OfferedCushions(int number, ConstructionOffer offer) => (_random, _offer) = (new Random(number), offer);

    /// <summary>Every construction, outline, closure, side and edging that go together.</summary>
    public static IReadOnlyList<(
        ConstructionOffer Offer,
        OutlineKind Outline,
        ClosureKind Closure,
        Side Side,
        EdgingKind Edging
    )> Combinations { get; } =
    [
        .. from construction in ConstructionRegistry.All
        let offer = construction.Offer
        from outline in offer.Outlines
        from closure in offer.Closures
        from side in closure.Sides
        where side == Side.Bottom || HasSide(outline, side)
        from edging in (EdgingKind[])[EdgingKind.Plain, .. offer.Edgings.Select(edging => edging.Kind).Where(kind => !IsLikeWelt(kind))]
        where edging != EdgingKind.Flange || !IsCurved(outline)
        select (offer, outline, closure.Kind, side, edging),
    ];

    /// <summary>The cushion of a number, its combination the next in turn.</summary>
    public static CushionSpecification Cushion(int number)
    {
        (ConstructionOffer offer, OutlineKind outline, ClosureKind closure, Side side, EdgingKind edging) = Combinations[
            number % Combinations.Count
        ];
        var cushions = new OfferedCushions(number, offer);

        // Sizes at which the closure's lines cross the outline more than twice are refused; others are drawn.
        CushionSpecification cushion;
        do
        {
            cushion = cushions.Build(outline, closure, side);
        } while (
            side == Side.Bottom
            && !ClosureLine.Divides(
                cushion.Outline,
                cushion.Closure switch
                {
                    OverlappingClosure flaps => flaps.Overlap,
                    ZipperClosure zipper => zipper.Lap,
                    _ => Length.Zero,
                },
                closure == ClosureKind.Zipper
            )
        );

        return cushion with
        {
            Trim = new TrimSpecification { Edging = cushions.Edging(InTurn(number, edging, offer, side, outline), cushion) },
        };
    }

    // What follows a seam as a welt does is drafted the same: each of them takes the place of a welt in turn.
    private static EdgingKind InTurn(int number, EdgingKind edging, ConstructionOffer offer, Side side, OutlineKind outline)
    {
        EdgingKind[] choices =
        [
            EdgingKind.Welt,
            .. offer
                .Edgings.Select(one => one.Kind)
                .Where(kind => IsLikeWelt(kind) && (kind != EdgingKind.FrenchSeam || (side == Side.Bottom && IsConvex(outline)))),
        ];
        return edging == EdgingKind.Welt ? choices[number / 7 % choices.Length] : edging;
    }

    private static bool IsLikeWelt(EdgingKind kind) => kind >= EdgingKind.FlatPiping;

    private static bool IsCurved(OutlineKind outline) =>
        outline
            is OutlineKind.Circle
                or OutlineKind.Oval
                or OutlineKind.HalfRound
                or OutlineKind.RoundedRectangle
                or OutlineKind.RoundEnded
                or OutlineKind.DShape
                or OutlineKind.Polygon;

    private static bool IsConvex(OutlineKind outline) => outline is not (OutlineKind.Tee or OutlineKind.Ell or OutlineKind.U);

    private EdgingSpecification? Edging(EdgingKind kind, CushionSpecification cushion)
    {
        if (_offer.EdgingOf(kind) is not { } edging || cushion.Ends is { Kind: not BolsterEndKind.Flat })
        {
            return null;
        }

        bool sharp = _offer.Takes(ConstructionField.FrontThickness) && cushion.FrontThickness == Length.Zero,
            cornered = _offer.Joins.IsEmpty || cushion.Joins == BoxingJoins.Corners;
        ImmutableArray<EdgingPlace> at =
        [
            .. edging
                .Places.Where(place => (place != EdgingPlace.Corners || cornered) && (place != EdgingPlace.Bottom || !sharp))
                .OrderBy(_ => _random.Next())
                .Take(_random.Next(1, 4))
                .Order(),
        ];
        return kind switch
        {
            EdgingKind.Welt => new WeltSpecification(at, Tenths(1, 5), (WeltCut)_random.Next(3)),
            EdgingKind.Ruffle => new RuffleSpecification(
                at,
                Fraction.Of(_random.Next(11, 40), 10),
                Tenths(5, 30),
                (RuffleLining)_random.Next(2)
            ),
            EdgingKind.FlatPiping => new FlatPipingSpecification(at, Tenths(1, 3), (WeltCut)_random.Next(3)),
            EdgingKind.LipCord => new BoughtTrimSpecification(at, kind, TrimAttachment.SewnIn, Tenths(2, 6)),
            EdgingKind.Fringe => new BoughtTrimSpecification(at, kind, (TrimAttachment)_random.Next(2), Tenths(10, 40)),
            EdgingKind.Gimp => new BoughtTrimSpecification(at, kind, TrimAttachment.SewnOn, Tenths(3, 9)),
            EdgingKind.Topstitched => new TopstitchSpecification(at, Tenths(2, 5), _random.Next(1, 3)),
            EdgingKind.FrenchSeam => new FrenchSeamSpecification(at, Tenths(1, 2)),
            _ => new FlangeStripSpecification(at, Tenths(5, 9)),
        };
    }

    private static bool HasSide(OutlineKind outline, Side side) =>
        outline switch
        {
            OutlineKind.Circle or OutlineKind.Oval or OutlineKind.HalfRound => side is Side.Front or Side.Back,
            _ => true,
        };

    private CushionSpecification Build(OutlineKind kind, ClosureKind closure, Side side)
    {
        Outline outline = Draw(kind);
        Length thickness = _offer.Thickness ? Tenths(15, 70) : Length.Zero;
        bool corners = outline.HasCorners && !_offer.Joins.IsEmpty && (side != Side.Back || Chance(50));
        bool returns = !corners && !_offer.Joins.IsEmpty && side == Side.Back && Chance(50);
        Length across =
            side == Side.Bottom ? outline.Depth
            : _offer.Thickness ? thickness
            : outline.Perimeter;
        Length turn = returns ? Tenths(5, 15) : Length.Zero;
        return new CushionSpecification
        {
            Id = "c",
            Construction = _offer.Kind,
            Outline = outline,
            Thickness = thickness,
            SeamAllowance = Tenths(3, 8),
            Joins = corners || (side != Side.Back && side != Side.Bottom && outline.HasCorners) ? BoxingJoins.Corners : BoxingJoins.Back,
            Closure = Closing(closure, side, turn, across, !_offer.ZipperInSeam || (IsConvex(kind) && !IsCurved(kind))),
            Fabrics = new FabricRoles("main", "main", "main", "main")
            {
                InnerCover = _offer.Takes(ConstructionField.InnerCover) && Chance(30) ? "main" : null,
            },
            Length = _offer.Takes(ConstructionField.Length) ? Tenths(100, 500) : Length.Zero,
            FrontThickness = _offer.Takes(ConstructionField.FrontThickness) && Chance(60) ? thickness - Tenths(5, 14) : Length.Zero,
            Front = Chance(50) ? FrontShape.Square : FrontShape.BullNose,
            Ends = _offer.Takes(ConstructionField.Ends) ? Ends() : null,
            Flange = _offer.Takes(ConstructionField.Flange) ? Border() : null,
            Gores = _offer.Takes(ConstructionField.Gores) && Chance(70) ? _random.Next(3, 25) : 0,
            Channels = _offer.Takes(ConstructionField.Channels) && kind == OutlineKind.Rectangle && Chance(30) ? Channelled() : null,
            CornerTaper =
                _offer.Takes(ConstructionField.CornerTaper) && kind == OutlineKind.Rectangle && Chance(30) ? Tenths(4, 8) : Length.Zero,
        };
    }

    private Outline Draw(OutlineKind kind)
    {
        Length width = Tenths(100, 400),
            depth = Tenths(100, 300);
        return kind switch
        {
            OutlineKind.Rectangle => new RectangleOutline(width, depth),
            OutlineKind.RoundedRectangle => new RoundedRectangleOutline(width, depth, Tenths(5, 30)),
            OutlineKind.Circle => new CircleOutline(width),
            OutlineKind.Oval => new OvalOutline(width, depth),
            OutlineKind.HalfRound => new HalfRoundOutline(width),
            OutlineKind.DShape => new DShapeOutline(width, width.HalfUp() + Tenths(20, 100)),
            OutlineKind.RoundEnded => new RoundEndedOutline(depth + Tenths(30, 200), depth),
            OutlineKind.Trapezoid => new TrapezoidOutline(width, width - Tenths(-60, 60), depth, Tenths(-60, 60)),
            OutlineKind.Tee => new TeeOutline(width, depth, Tenths(20, 40), Tenths(20, 60)),
            OutlineKind.Ell => new EllOutline(width, depth, Tenths(30, 60), Tenths(30, 60), Chance(50) ? Side.Left : Side.Right),
            OutlineKind.U => new UOutline(width, depth, Tenths(30, 60), Tenths(30, 60)),
            OutlineKind.RegularPolygon => new RegularPolygonOutline(2 * _random.Next(2, 7), Tenths(60, 150)),
            OutlineKind.Polygon => Kite(width, depth),
            _ => throw new ArgumentOutOfRangeException(nameof(kind)),
        };
    }

    // Five corners, a side to each of front, right, back and left, sharp or rounded.
    private PolygonOutline Kite(Length width, Length depth) =>
        new(
            [
                new(Length.Zero, Length.Zero),
                new(width, Length.Zero),
                new(width + Tenths(5, 30), depth),
                new(Tenths(5, 20), depth),
                new(-Tenths(5, 15), Tenths(20, 40)),
            ],
            Chance(50) ? Length.Zero : Tenths(3, 8)
        );

    private ClosureSpecification Closing(ClosureKind kind, Side side, Length turn, Length across, bool mayLap) =>
        kind switch
        {
            ClosureKind.Zipper when mayLap && Chance(40) => new ZipperClosure(side, turn, Tenths(8, 10), Tenths(3, 6)),
            ClosureKind.Zipper => new ZipperClosure(side, turn, Tenths(5, 10)),
            ClosureKind.HookAndLoop => new HookAndLoopClosure(side, turn, Tenths(2, 5), Length.Min(Tenths(10, 14), across), In(0.75m)),
            ClosureKind.Envelope => new EnvelopeClosure(side, Tenths(3, 10), WorkroomPractice.Imperial.Closures.Envelope.Overlap(across)),
            ClosureKind.Buttons => new ButtonClosure(side, turn, Tenths(2, 5), Length.Min(Tenths(11, 14), across), In(0.75m)),
            ClosureKind.Ties => new TieClosure(side, turn, Tenths(2, 5), Length.Min(Tenths(10, 14), across), Tenths(60, 100)),
            _ => new HandSewnClosure(side),
        };

    private BolsterEnds Ends() =>
        _random.Next(3) switch
        {
            0 => new BolsterEnds(BolsterEndKind.Flat, Length.Zero, Length.Zero),
            1 => new BolsterEnds(BolsterEndKind.Gathered, Length.Zero, Tenths(5, 10)),
            _ => new BolsterEnds(BolsterEndKind.Tied, Tenths(50, 80), Tenths(5, 10)),
        };

    private FlangeSpecification Border() =>
        Chance(50)
            ? new FlangeSpecification(FlangeLayers.Single, Tenths(10, 40), Length.Zero)
            : new FlangeSpecification(FlangeLayers.Double, Tenths(10, 40), Tenths(3, 6));

    private ChannelSpecification Channelled() => new(_random.Next(2, 6), Chance(50) ? Tenths(3, 8) : Length.Zero, Fraction.Of(2, 100));

    // Tenths of an inch, now and then a few nanometres off, as a sum of thirds would be.
    private Length Tenths(int least, int most) =>
        In(_random.Next(least, most + 1) / 10m) + (Chance(10) ? Length.FromNanometres(_random.Next(1000)) : Length.Zero);

    private bool Chance(int percent) => _random.Next(100) < percent;
}
