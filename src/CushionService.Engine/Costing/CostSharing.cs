using System.Collections.Immutable;
using CushionService.Engine.Cutting;
using CushionService.Engine.Layouts;
using CushionService.Engine.Materials;
using CushionService.Engine.Measures;
using CushionService.Engine.Specifications;
using CushionService.Engine.Specifications.Stocks;

namespace CushionService.Engine.Costing;

/// <summary>Allots every line and addition of a cost to the cushions: fabric by the area of their pieces in the common layout, other
/// materials by what each takes, labour to whom it is for, contingency by materials, hourly overhead by labour, a discount on fabric by
/// the fabric, fees by what they are charged for, and the rest by all before it.</summary>
internal sealed class CostSharing
{
    // Amounts and money become whole weights to a millionth, so that shares are exact.
    private const decimal Millionth = 1_000_000;

    // The id of each line of cushions; null, last, for the maker's own pieces.
    private readonly ImmutableArray<string?> _parts;
    private readonly ImmutableArray<int> _quantities;
    private readonly IReadOnlyList<Yardage> _yardages;

    // What each part has been allotted of materials and of labour, the bases of contingency and of hourly overhead; then of all.
    private readonly Money[] _materials;
    private readonly Money[] _fabric;
    private readonly Money[] _labour;
    private readonly Money[] _all;

    private CostSharing(OrderSpecification order, IReadOnlyList<Yardage> yardages, Currency currency)
    {
        _parts = [.. order.Cushions.Select(cushion => cushion.Id), .. order.Pieces.IsEmpty ? [] : new string?[] { null }];
        _quantities =
        [
            .. order.Cushions.Select(cushion => cushion.Quantity),
            .. order.Pieces.IsEmpty ? [] : new[] { order.Pieces.Sum(piece => piece.Quantity) },
        ];
        _yardages = yardages;
        (_materials, _fabric, _labour, _all) = (None(), None(), None(), None());

        Money[] None() => [.. _parts.Select(_ => new Money(0, currency))];
    }

    /// <summary>The shares, which sum to the lines and additions to the smallest coin.</summary>
    /// <param name="order">The order.</param>
    /// <param name="yardages">The layouts, whose pieces share the fabric.</param>
    /// <param name="lines">The materials with a price.</param>
    /// <param name="labour">The operations with a time.</param>
    /// <param name="additions">In the order in which they were charged.</param>
    /// <param name="currency">The currency of all of them.</param>
    /// <returns>One share for each line of cushions, and a last one without a cushion where the order has pieces of its
    /// own.</returns>
    public static ImmutableArray<CostShare> Of(
        OrderSpecification order,
        IReadOnlyList<Yardage> yardages,
        ImmutableArray<CostLine> lines,
        ImmutableArray<LabourLine> labour,
        ImmutableArray<CostAddition> additions,
        Currency currency
    )
    {
        var sharing = new CostSharing(order, yardages, currency);
        foreach (CostLine line in lines)
        {
            Money[][] accounts = line.Material.Kind == MaterialKind.Fabric ? [sharing._materials, sharing._fabric] : [sharing._materials];
            sharing.Allot(line.Amount, sharing.Weights(line.Material), accounts);
        }

        foreach (LabourLine line in labour)
        {
            sharing.Allot(line.Amount, [.. sharing._parts.Select(part => (Int128)(part == line.Cushion ? 1 : 0))], [sharing._labour]);
        }

        foreach (CostAddition addition in additions)
        {
            sharing.Allot(addition.Amount, sharing.Basis(addition), []);
        }

        return [.. sharing._parts.Select((part, i) => new CostShare(part, sharing._quantities[i], sharing._all[i]))];
    }

    // In the order of the additions: each is allotted by what was allotted before it. Fees for each cushion are no one's else.
    private Int128[] Basis(CostAddition addition) =>
        addition.Basis switch
        {
            CostBasis.Materials => Coins(_materials),
            CostBasis.Fabric => Coins(_fabric),
            CostBasis.Labour => Coins(_labour),
            CostBasis.Cushions => [.. _parts.Select((part, i) => (Int128)(part is null ? 0 : _quantities[i]))],
            _ => Coins(_all),
        };

    // To the accounts too; additions have none.
    private void Allot(Money amount, ReadOnlySpan<Int128> weights, params ReadOnlySpan<Money[]> accounts)
    {
        ImmutableArray<Money> shares = Allotment.Of(amount, weights);
        for (var i = 0; i < shares.Length; i++)
        {
            _all[i] += shares[i];
            foreach (Money[] account in accounts)
            {
                account[i] += shares[i];
            }
        }
    }

    // A material without stated uses is fabric, or bought with it: the area of the pieces decides.
    private Int128[] Weights(Material material)
    {
        var weights = new Int128[_parts.Length];
        if (material.Uses.IsEmpty)
        {
            foreach (
                LaidPiece laid in _yardages
                    .Where(yardage => material.Kind != MaterialKind.Fabric || yardage.Layout.Fabric.Id == material.Item)
                    .SelectMany(yardage => yardage.Layout.Placements)
            )
            {
                Weigh(laid.Piece, weights);
            }
        }

        foreach (CushionUse use in material.Uses)
        {
            weights[_parts.IndexOf(use.Cushion)] += (Int128)(use.Amount * Millionth);
        }

        return weights;
    }

    // A welt that is cut for several cushions is shared by its finished length.
    private void Weigh(CutPiece piece, Int128[] weights)
    {
        if (piece.Serves.Length < 2)
        {
            weights[_parts.IndexOf(piece.Cushion?.Id)] += piece.Area.SquareNanometres;
            return;
        }

        Int128 left = piece.Area.SquareNanometres;
        long length = piece.Serves.Sum(share => share.Length.Nanometres);
        foreach (WeltShare share in piece.Serves)
        {
            Int128 part = piece.Area.SquareNanometres / length * share.Length.Nanometres;
            weights[_parts.IndexOf(share.Cushion)] += part;
            left -= part;
        }

        // What the division leaves goes to the first cushion, so that the weights sum to the area.
        weights[_parts.IndexOf(piece.Cushion?.Id)] += left;
    }

    // Whole weights from money, for additions are shared by what is paid already.
    // What a discount has brought below nothing weighs nothing.
    private static Int128[] Coins(Money[] amounts) => [.. amounts.Select(amount => (Int128)(Math.Max(amount.Amount, 0) * Millionth))];
}
