using System.Collections.Immutable;
using CushionService.Engine.Cutting;
using CushionService.Engine.Layouts;
using CushionService.Engine.Materials;
using CushionService.Engine.Measures;
using CushionService.Engine.Messages;
using CushionService.Engine.Patterns.Additions;
using CushionService.Engine.Patterns.Constructions;
using CushionService.Engine.Patterns.Panels;
using CushionService.Engine.Patterns.Sections;
using CushionService.Engine.Specifications;
using CushionService.Engine.Specifications.Closures;
using CushionService.Engine.Specifications.Fabrics;
using CushionService.Engine.Specifications.Fillings;

namespace CushionService.Engine.Quoting;

/// <summary>An order drafted and cut, on paper: the patterns of its cushions and all pieces, with what cannot be made and what is
/// unwise.</summary>
public sealed record Drafting
{
    // No strip is longer: what is railroaded runs along the bolt, so that the width of the fabric does not bound it.
    private static readonly Length Endless = Length.FromInches(1_000_000);

    private Drafting(
        OrderSpecification order,
        ImmutableArray<Pattern> patterns,
        ImmutableArray<CutPiece> pieces,
        ImmutableArray<Violation> said
    )
    {
        (Order, Patterns, Pieces) = (order, patterns, pieces);
        Violations = [.. pieces.Where(piece => !FabricNesting.Fits(Fabric(piece), piece)).Select(TooWide)];
        Warnings =
        [
            .. said,
            .. Unmatched(),
            .. Inverted(),
            .. TooTight(),
            .. TooShortZippers(),
            .. StockFaults.Joined(order),
            .. StockFaults.Warnings(order),
        ];
    }

    /// <summary>The order.</summary>
    public OrderSpecification Order { get; }

    /// <summary>The pattern of each cushion, strips joined where the fabric asks for it, in the order's order.</summary>
    public ImmutableArray<Pattern> Patterns { get; }

    /// <summary>What is cut.</summary>
    public ImmutableArray<CutPiece> Pieces { get; }

    /// <summary>Pieces that no allowed turn fits on their fabric; with one, there is no layout.</summary>
    public ImmutableArray<Violation> Violations { get; }

    /// <summary>What is allowed but unwise.</summary>
    public ImmutableArray<Violation> Warnings { get; }

    /// <summary>Drafts every cushion by the engine's constructions, and cuts every panel.</summary>
    public static Drafting Of(OrderSpecification order) => Of(order, ConstructionRegistry.All);

    /// <summary>Drafts every cushion and cuts every panel.</summary>
    /// <param name="order">The order.</param>
    /// <param name="constructions">The constructions that draft it.</param>
    public static Drafting Of(OrderSpecification order, ImmutableArray<IConstruction> constructions)
    {
        (OrderSpecification decided, ImmutableArray<Violation> said) = GrainChoice.IsNeeded(order)
            ? GrainChoice.Of(order, constructions)
            : (order, []);
        return Decided(decided, constructions, said);
    }

    /// <summary>Drafts an order whose every grain is decided.</summary>
    internal static Drafting Decided(OrderSpecification order, ImmutableArray<IConstruction> constructions, ImmutableArray<Violation> said)
    {
        var patterns = ImmutableArray.CreateBuilder<Pattern>(order.Cushions.Length);
        var pieces = ImmutableArray.CreateBuilder<CutPiece>();
        var joined = ImmutableArray.CreateBuilder<Violation>();
        CushionSpecification[]? shortened = null;
        int[] ends = new int[order.Cushions.Length];
        for (var i = 0; i < order.Cushions.Length; i++)
        {
            CushionSpecification cushion = order.Cushions[i];
            FabricSpecification FabricOf(FabricRole role) => Fabric(order, cushion.Fabrics[role]);
            IConstruction construction = ConstructionRegistry.Of(cushion.Construction, constructions);
            Length StepsOf(FabricRole role) => WholeSteps(FabricOf(role).UsableWidth, order.Workroom.CuttingStep);
            // Railroaded, a strip runs along the bolt and is never too long for it.
            Length LongestOf(FabricRole role) =>
                role != FabricRole.InnerCover && cushion.IsRailroaded(FabricOf(role)) ? Endless : StepsOf(role);
            if (ShorterReturns.Of(cushion, LongestOf(FabricRole.Sides)) is var shorter && !ReferenceEquals(shorter, cushion))
            {
                joined.Add(ShorterReturns.Said(shorter));
                cushion = (shortened ??= [.. order.Cushions])[i] = shorter;
            }

            ImmutableArray<Length> JoinsOf(Panel panel)
            {
                bool may =
                    cushion.Trim.FaceJoins == FaceJoins.Allow
                    && panel is { Role: FabricRole.Top or FabricRole.Bottom, TakeUpAcross.Nanometres: 0 };
                if (!may || FabricNesting.Fits(FabricOf(panel.Role), Cut(panel)))
                {
                    return [];
                }

                ImmutableArray<Length> joins = FaceJoining.Joins(
                    panel,
                    StepsOf(panel.Role),
                    cushion.SeamAllowance,
                    part => FabricNesting.Fits(FabricOf(part.Role), Cut(part))
                );
                if (!joins.IsEmpty)
                {
                    joined.Add(Joined(cushion, panel, joins));
                }

                return joins;
            }

            CutPiece Cut(Panel panel) =>
                CutPiece.Of(panel, cushion, FabricOf(panel.Role), order.Workroom.CuttingStep, order.Workroom.FaceRounding);
            Pattern whole = InnerCover.AddTo(
                FaceNames.AddTo(Trim.AddTo(construction.Draft(cushion), cushion), cushion),
                construction,
                cushion
            );
            Pattern pattern = PiecedPattern.Of(
                PatternMatching.On(whole, cushion, FabricOf, RowPrinting.Shift(order, cushion)),
                cushion.SeamAllowance,
                LongestOf,
                JoinsOf
            );
            patterns.Add(pattern);
            foreach (Panel panel in pattern.Panels)
            {
                pieces.Add(Cut(panel));
            }

            ends[i] = pieces.Count;
        }

        order = shortened is null ? order : order with { Cushions = [.. shortened] };
        // From the last on, so that the places of the others stay as they are.
        foreach ((int cushion, CutPiece welt) in WeltPieces.Of(order, patterns).OrderByDescending(one => one.Cushion))
        {
            pieces.Insert(ends[cushion], welt);
        }

        foreach (LoosePieceSpecification loose in order.Pieces)
        {
            pieces.Add(CutPiece.Of(loose, Fabric(order, loose.Fabric)));
        }

        return new Drafting(order, patterns.ToImmutable(), pieces.ToImmutable(), [.. said, .. joined]);
    }

    /// <summary>The fabric of a piece.</summary>
    /// <param name="piece">A piece of this drafting.</param>
    /// <exception cref="ArgumentException">The order has no such fabric.</exception>
    public FabricSpecification Fabric(CutPiece piece) => Fabric(Order, piece.Fabric);

    private static FabricSpecification Fabric(OrderSpecification order, string? id)
    {
        foreach (FabricSpecification fabric in order.Fabrics)
        {
            if (fabric.Id == id)
            {
                return fabric;
            }
        }

        throw new ArgumentException($"The order has no fabric {id}.", nameof(id));
    }

    // A warning, since the order allows joins in its faces, yet the maker must know where they lie.
    private static Violation Joined(CushionSpecification cushion, Panel face, ImmutableArray<Length> joins) =>
        new Violation(cushion.Pointer, "joined-face", DraftTexts.JoinedFace(face.Part, cushion.Name, joins.Length + 1, joins));

    // A joined strip is rounded up to the cutting step, and must still fit.
    private static Length WholeSteps(Length usable, Length step) =>
        Length.FromNanometres(usable.Nanometres - (usable.Nanometres % step.Nanometres));

    // The overhang is at the best turn that is allowed; the other grain is named where it would help.
    private Violation TooWide(CutPiece piece)
    {
        FabricSpecification fabric = Fabric(piece);
        Length narrowest = piece.Rotations == Nesting.Rotations.QuarterTurns ? Length.Min(piece.Width, piece.Length) : piece.Across;
        bool fitsTurned = piece.Cushion is not null && piece.Along <= fabric.UsableWidth;
        Func<string, Length, string, Length, Length, Message> detail =
            !fitsTurned ? DraftTexts.WiderThanFabric
            : piece.IsRailroaded ? DraftTexts.FitsUpTheBolt
            : DraftTexts.FitsRailroaded;
        return new Violation(
            piece.Pointer,
            "wider-than-fabric",
            detail(piece.Name, narrowest, fabric.Name, fabric.UsableWidth, narrowest - fabric.UsableWidth)
        );
    }

    // Only fabric with a repeat can fail to match.
    private IEnumerable<Violation> Unmatched() =>
        !Order.Fabrics.Any(static fabric => fabric.Repeat is not null)
            ? []
            : Pieces.Select(piece => MatchNote.Of(piece, Fabric(piece))).OfType<Violation>();

    // A waterfall's main panel runs over the front and under the seat, so that a one-way print is upside down below.
    private IEnumerable<Violation> Inverted() =>
        !Order.Fabrics.Any(static fabric => fabric.OneWay)
            ? []
            : Pieces
                .Where(piece => Fabric(piece).OneWay && piece.Panel is { Inverts: true })
                .Select(piece => new Violation(piece.Pointer, "print-inverted", DraftTexts.PrintInverted(Fabric(piece).Name, piece.Name)));

    // Of closed zippers in stock the nearest may be too short; the quote still names it, with this warning.
    private IEnumerable<Violation> TooShortZippers()
    {
        foreach ((CushionSpecification cushion, Pattern pattern) in Order.Cushions.Zip(Patterns))
        {
            if (
                cushion.Closure is ZipperClosure
                && ClosedZipper.For(cushion, InnerCover.Apart(pattern).Cover, Order.Stocks) is { IsTooShort: true } zipper
            )
            {
                yield return new Violation(
                    $"{cushion.Pointer}/closure",
                    "zipper-too-short",
                    DraftTexts.ZipperTooShort(cushion.Name, zipper.Room, zipper.Stock.Name, zipper.Opening, zipper.Shortfall)
                );
            }
        }
    }

    // A block of foam is put in through the closure; a loose fill is poured.
    private IEnumerable<Violation> TooTight() =>
        Order.Cushions.Any(static cushion => cushion.Fill?.Kind == FillKind.Foam) ? TooTightClosures() : [];

    // Only the outer cover is measured: it has the closure that the order gives.
    private IEnumerable<Violation> TooTightClosures()
    {
        foreach ((CushionSpecification cushion, Pattern pattern) in Order.Cushions.Zip(Patterns))
        {
            if (cushion.Fill?.Kind != FillKind.Foam)
            {
                continue;
            }

            Length opening = OpeningTest.Opening(cushion, InnerCover.Apart(pattern).Cover, Order.Stocks),
                needed = OpeningTest.Needed(cushion);
            if (opening < needed)
            {
                yield return new Violation($"{cushion.Pointer}/closure", "opening-too-small", DraftTexts.OpeningTooSmall(opening, needed));
            }
        }
    }
}
