using System.Collections.Immutable;
using CushionService.Contract.Answers;
using CushionService.Engine.Cutting;
using CushionService.Engine.Fitting;
using CushionService.Engine.Layouts;
using CushionService.Engine.Measures;
using CushionService.Engine.Quoting;
using CushionService.Engine.Specifications;
using CushionService.Engine.Specifications.Fabrics;
using CushionService.Nesting;

namespace CushionService.Desk;

/// <summary>What is missing of the fabric on hand, and the changes to an order that would make it enough or less short. Each is tried, and
/// priced by what it leaves to buy.</summary>
/// <param name="steps">What the searches share.</param>
/// <param name="cancellation">Cancels the search.</param>
internal sealed class FitChanges(FitSteps steps, CancellationToken cancellation)
{
    // Trials and what is bought for each share the steps of a quick search, or less than that.
    private const int LeastSharing = 12;
    private readonly int _sharing = Math.Max(LeastSharing, steps.Changes);

    /// <summary>What must be bought for what found no place.</summary>
    /// <param name="fit">What is laid on what is on hand, and what is not.</param>
    public IReadOnlyList<MissingAnswer> Missing(Fit fit) => [.. Shortfalls(fit).Select(missing => Of(missing, fit.Drafting.Order.Unit))];

    /// <summary>The same order without what is on hand, where its fabric runs the other way then and less is bought of it.</summary>
    /// <param name="fit">What found no place.</param>
    /// <param name="whole">The order, drafted as it would be if nothing were on hand.</param>
    public Fit OrAllBought(Fit fit, Drafting whole)
    {
        if (
            fit.Fabrics is not [{ Unplaced.IsEmpty: false } only]
            || FitWidths.HasSamePieces(whole, fit.Drafting)
            || Shortfalls(fit).FirstOrDefault() is not { } missing
        )
        {
            return fit;
        }

        ImmutableArray<CutPiece> pieces = [.. whole.Pieces.Where(piece => piece.Fabric == only.Fabric.Id)];
        return
            FabricShortfall.Of(missing.Fabric, pieces, Effort.Quick, _sharing, cancellation) is { } all
            && all.Yardage.Sold < missing.Yardage.Sold
            ? fit with
            {
                Drafting = whole,
                Fabrics =
                [
                    only with
                    {
                        Layouts = [.. only.Layouts.Select(layout => new OffcutLayout(layout.Room, []))],
                        Unplaced = [.. pieces.Select(piece => (piece, piece.Quantity))],
                    },
                ],
            }
            : fit;
    }

    /// <summary>The same order with whole cushions from what is on hand, for each fabric of which less is bought then.</summary>
    /// <param name="fit">What is laid piece by piece.</param>
    /// <param name="secondLots">What is bought where cushions are kept whole.</param>
    public Fit OrWholeCushions(Fit fit, IReadOnlyList<SecondLot> secondLots)
    {
        FabricShortfall[] missing = [.. Shortfalls(fit)];
        return fit with { Fabrics = [.. fit.Fabrics.Select(Least)] };

        // What is named as missing is for the very pieces that have no place, so both come from one plan.
        OffcutFit Least(OffcutFit one) =>
            secondLots.FirstOrDefault(lot => lot.Bought.Fabric.Id == one.Fabric.Id) is { } lot
            && missing.FirstOrDefault(rest => rest.Fabric.Id == one.Fabric.Id) is { } rest
            && lot.Bought.Yardage.Sold < rest.Yardage.Sold
                ? one with
                {
                    Layouts = lot.OnHand,
                    Unplaced = [.. lot.Pieces.Select(piece => (piece, piece.Quantity))],
                }
                : one;
    }

    /// <summary>What is bought of other lots where cushions are not divided between lots.</summary>
    public IReadOnlyList<SecondLot> SecondLots(Fit fit) =>
        [
            .. fit
                .Fabrics.Where(one => one.Verdict != FitVerdict.Fits)
                .Select(one =>
                    SecondLot.Of(
                        one.Fabric,
                        [.. fit.Drafting.Pieces.Where(piece => piece.Fabric == one.Fabric.Id)],
                        fit.Drafting.Order.Rows,
                        Effort.Quick,
                        _sharing,
                        cancellation
                    )
                )
                .OfType<SecondLot>(),
        ];

    /// <summary>The changes that help: all fits then, or less is bought.</summary>
    /// <param name="specified">The order.</param>
    /// <param name="fit">How it fits as it is.</param>
    public IReadOnlyList<ChangeAnswer> Of(OrderSpecification specified, Fit fit)
    {
        List<ChangeAnswer> changes = [];
        foreach (OffcutFit lacking in fit.Fabrics.Where(one => one.Verdict != FitVerdict.Fits))
        {
            FabricSpecification fabric = specified.Fabrics.First(one => one.Id == lacking.Fabric.Id);
            Length? asItIs = Sold(fit, fabric.Id);
            foreach (ChangedOrder change in ChangedOrder.Of(GrainTrials.Of(specified)[0], fabric))
            {
                Fit tried = Fit.Of(change.Order, [], Effort.Quick, _sharing, cancellation).Filled(_sharing, cancellation);
                // What cannot be bought as it is, for a piece is wider than its fabric, is helped by whatever makes it narrower.
                if (tried.Verdict == FitVerdict.Fits || (CanBeBought(tried) && Sold(tried, fabric.Id) is { } less && !(less >= asItIs)))
                {
                    changes.Add(
                        new ChangeAnswer
                        {
                            Change = change.Change,
                            Fabric = fabric.Id,
                            Fits = tried.Verdict == FitVerdict.Fits,
                            Missing = [.. Bought(specified, change, tried).Select(missing => Of(missing, specified.Unit))],
                        }
                    );
                }
            }
        }

        return changes;
    }

    // No length of a fabric holds a piece that is wider.
    private static bool CanBeBought(Fit tried) =>
        tried.Fabrics.All(one => one.Unplaced.All(rest => FabricNesting.Fits(one.Fabric with { OnHand = [] }, rest.Piece)));

    // What is bought of a fabric for what found no place; null where no length of it would do.
    private Length? Sold(Fit fit, string fabric) =>
        fit.Fabrics.All(one => one.Fabric.Id != fabric || one.Unplaced.IsEmpty)
            ? Length.Zero
            : Shortfalls(fit).FirstOrDefault(missing => missing.Fabric.Id == fabric)?.Yardage.Sold;

    // What has no place, and the fabric of undersides that the order did not buy before.
    private IEnumerable<FabricShortfall> Bought(OrderSpecification specified, ChangedOrder change, Fit tried)
    {
        foreach (FabricShortfall missing in Shortfalls(tried))
        {
            yield return missing;
        }

        if (change.Change == FabricChange.PlainUnderside)
        {
            foreach (FabricSpecification other in change.Order.Fabrics.Where(other => other.OnHand.IsEmpty))
            {
                ImmutableArray<CutPiece> pieces =
                [
                    .. tried.Drafting.Pieces.Where(piece => piece.Fabric == other.Id && IsMoved(specified, piece)),
                ];
                if (FabricShortfall.Of(other, pieces, Effort.Quick, _sharing, cancellation) is { } bought)
                {
                    yield return bought;
                }
            }
        }
    }

    // Whether an underside is of another fabric than the order has it.
    private static bool IsMoved(OrderSpecification specified, CutPiece piece) =>
        piece is { Panel.Role: FabricRole.Bottom, Cushion: { } cushion }
        && specified.Cushions.First(one => one.Id == cushion.Id).Fabrics.Bottom != piece.Fabric;

    private IEnumerable<FabricShortfall> Shortfalls(Fit fit) =>
        fit
            // What is bought of hides is no length.
            .Fabrics.Where(one => !one.Unplaced.IsEmpty && one.Fabric.OnHand.All(offcut => offcut.Outline.IsEmpty))
            .Select(one =>
                FabricShortfall.Of(
                    one.Fabric,
                    [.. one.Unplaced.Select(rest => rest.Piece with { Quantity = rest.Copies })],
                    Effort.Quick,
                    _sharing,
                    cancellation
                )
            )
            .OfType<FabricShortfall>();

    private static MissingAnswer Of(FabricShortfall missing, LengthUnit unit) =>
        new()
        {
            Fabric = missing.Fabric.Id,
            Length = (double)missing.Yardage.Layout.Length.In(unit),
            SoldLength = (double)missing.Yardage.SoldUnits,
            SoldUnit = missing.Fabric.Sold.Unit,
            Amount = missing.Amount?.ToString(),
        };
}
