using System.Collections.Immutable;
using CushionService.Engine.Cutting;
using CushionService.Engine.Layouts;
using CushionService.Engine.Measures;
using CushionService.Engine.Patterns.Constructions;
using CushionService.Engine.Patterns.Panels;
using CushionService.Engine.Specifications;
using CushionService.Engine.Specifications.Fabrics;

namespace CushionService.Engine.Quoting;

/// <summary>An order drafted and cut, on paper: the patterns of its cushions and all pieces, with what cannot be made and what is
/// unwise.</summary>
public sealed record Drafting
{
    private Drafting(
        OrderSpecification order,
        ImmutableArray<Pattern> patterns,
        ImmutableArray<CutPiece> pieces,
        ImmutableArray<Violation> warnings
    )
    {
        (Order, Patterns, Pieces) = (order, patterns, pieces);
        Violations = [.. DraftWarnings.TooWide(this), .. DraftWarnings.Crossed(this)];
        Warnings = [.. warnings, .. DraftWarnings.Of(this)];
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

    /// <summary>Steps of search that deciding an open grain took; 0 where every grain is given.</summary>
    public long GrainSteps { get; private init; }

    /// <summary>Drafts every cushion by the engine's constructions, and cuts every panel.</summary>
    /// <param name="order">The order; where a grain is open, it is laid out to decide it.</param>
    /// <param name="sharedBy">How many quotes share the effort's steps, at least 1: those of a comparison.</param>
    /// <param name="cancellation">Cancels that search.</param>
    /// <exception cref="OperationCanceledException">The caller cancelled.</exception>
    public static Drafting Of(OrderSpecification order, int sharedBy = 1, CancellationToken cancellation = default) =>
        Of(order, ConstructionRegistry.All, sharedBy, cancellation);

    /// <summary>Drafts every cushion and cuts every panel.</summary>
    /// <param name="order">The order.</param>
    /// <param name="constructions">The constructions that draft it.</param>
    /// <param name="sharedBy">How many quotes share the effort's steps, at least 1.</param>
    /// <param name="cancellation">Cancels the search that decides an open grain.</param>
    /// <exception cref="OperationCanceledException">The caller cancelled.</exception>
    public static Drafting Of(
        OrderSpecification order,
        ImmutableArray<IConstruction> constructions,
        int sharedBy = 1,
        CancellationToken cancellation = default
    )
    {
        if (!GrainChoice.IsNeeded(order))
        {
            return Decided(order, constructions, []);
        }

        var (decided, said, steps) = GrainChoice.Of(order, constructions, sharedBy, cancellation);
        return Decided(decided, constructions, said) with { GrainSteps = steps };
    }

    /// <summary>Drafts an order whose every grain is decided.</summary>
    /// <param name="order">The order; its open grains have been decided.</param>
    /// <param name="constructions">The constructions that draft it.</param>
    /// <param name="warnings">What was said of the order before it was drafted, which comes first.</param>
    internal static Drafting Decided(
        OrderSpecification order,
        ImmutableArray<IConstruction> constructions,
        ImmutableArray<Violation> warnings
    )
    {
        var patterns = ImmutableArray.CreateBuilder<Pattern>(order.Cushions.Length);
        var pieces = ImmutableArray.CreateBuilder<CutPiece>();
        var said = ImmutableArray.CreateBuilder<Violation>(warnings.Length);
        said.AddRange(warnings);
        CushionSpecification[]? shortened = null;
        int[] ends = new int[order.Cushions.Length];
        for (var i = 0; i < order.Cushions.Length; i++)
        {
            var draft = new CushionDrafting(order, order.Cushions[i], constructions, said);
            if (!ReferenceEquals(draft.Cushion, order.Cushions[i]))
            {
                (shortened ??= [.. order.Cushions])[i] = draft.Cushion;
            }

            patterns.Add(draft.Pattern);
            foreach (Panel panel in draft.Pattern.Panels)
            {
                pieces.Add(draft.Cut(panel));
            }

            ends[i] = pieces.Count;
        }

        order = shortened is null ? order : order with { Cushions = [.. shortened] };
        HashSet<string> others = [.. pieces.Select(piece => piece.Fabric), .. order.Pieces.Select(piece => piece.Fabric)];
        // From the last on, so that the places of the others stay as they are.
        foreach ((int cushion, CutPiece welt) in WeltPieces.Of(order, patterns, others, Sold).OrderByDescending(one => one.Cushion))
        {
            pieces.Insert(ends[cushion], welt);
        }

        foreach (LoosePieceSpecification loose in order.Pieces)
        {
            pieces.Add(CutPiece.Of(loose, order.Fabric(loose.Fabric)));
        }

        return new Drafting(order, patterns.ToImmutable(), pieces.ToImmutable(), said.ToImmutable());
    }

    /// <summary>The length of a fabric that is sold for a length along it, where nothing on it is matched.</summary>
    internal static Length Sold(FabricSpecification fabric, Length along) => FabricSale.Sold(fabric, along, Length.Zero);

    /// <summary>The fabric of a piece.</summary>
    /// <param name="piece">A piece of this drafting.</param>
    /// <exception cref="ArgumentException">The order has no such fabric.</exception>
    public FabricSpecification Fabric(CutPiece piece) => Order.Fabric(piece.Fabric);
}
