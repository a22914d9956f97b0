using CushionService.Contract.Answers;
using CushionService.Engine.Fitting;
using CushionService.Engine.Measures;
using CushionService.Wording;

namespace CushionService.Desk;

/// <summary>Puts a fit into the contract's records, with lengths as numbers in the order's unit.</summary>
internal static class FitWording
{
    /// <summary>The answer of a fit.</summary>
    /// <param name="order">The order.</param>
    /// <param name="fit">How it fits.</param>
    /// <param name="missing">What must be bought as the order is.</param>
    /// <param name="secondLots">What is bought of other lots, with whole cushions from each.</param>
    /// <param name="changes">The changes that would help.</param>
    /// <param name="largest">The largest cushions that would fit. They are found while this sequence is read.</param>
    public static FitAnswer Of(
        CheckedOrder order,
        Fit fit,
        IReadOnlyList<MissingAnswer> missing,
        IReadOnlyList<SecondLot> secondLots,
        IReadOnlyList<ChangeAnswer> changes,
        IEnumerable<LargestAnswer> largest
    )
    {
        LengthUnit unit = fit.Drafting.Order.Unit;
        var words = new AnswerWording(order.Language, unit, fit.Warnings);
        HashSet<string> onHand = [.. fit.Fabrics.Select(fabric => fabric.Fabric.Id)];
        return new FitAnswer
        {
            Reference = order.Order.Reference,
            Units = order.Order.Units!.Value,
            Engine = EngineVersion.Current,
            Currency = fit.Drafting.Order.Currency?.Code,
            Fits = fit.Verdict == FitVerdict.Fits,
            Fabrics = [.. fit.Fabrics.Select(fabric => Of(fabric, words, unit))],
            Missing = missing,
            SecondLots = [.. secondLots.Select(lot => Of(lot, words, unit))],
            Changes = changes,
            Largest = [.. largest],
            // Those of fabrics to be bought are no part of the answer.
            Pieces = [.. words.Pieces(fit.Drafting).Where(piece => onHand.Contains(piece.Fabric))],
            Warnings = words.Warnings,
        };
    }

    private static SecondLotAnswer Of(SecondLot lot, AnswerWording words, LengthUnit unit) =>
        new()
        {
            Fabric = lot.Bought.Fabric.Id,
            OnHand = [.. lot.Kept.Select(count => new CushionCountAnswer(count.Cushion.Id, count.Quantity))],
            Bought = [.. lot.Moved.Select(count => new CushionCountAnswer(count.Cushion.Id, count.Quantity))],
            Pieces = [.. lot.Pieces.Select(piece => new UnplacedAnswer(piece.Id, piece.Quantity))],
            Length = (double)lot.Bought.Yardage.Layout.Length.In(unit),
            SoldLength = (double)lot.Bought.Yardage.SoldUnits,
            SoldUnit = lot.Bought.Fabric.Sold.Unit,
            Amount = lot.Bought.Amount?.ToString(),
            Because = words.Text(lot.Because),
        };

    // Offcuts are numbered from 1, in the order of the fabric's list.
    private static FabricFitAnswer Of(OffcutFit fit, AnswerWording words, LengthUnit unit) =>
        new()
        {
            Fabric = fit.Fabric.Id,
            Verdict = fit.Verdict,
            Offcuts =
            [
                .. fit.Layouts.Select(
                    (layout, i) =>
                        new OffcutAnswer
                        {
                            Number = i + 1,
                            Lot = fit.Fabric.OnHand[i].Lot ?? fit.Fabric.Lot,
                            Width = (double)layout.Room.Width.In(unit),
                            Length = (double)layout.Room.Length.In(unit),
                            Placements = [.. layout.Placements.Select(words.Placement)],
                            Left =
                            [
                                .. layout.Left.Select(left => new EmptyAnswer(
                                    (double)left.X.In(unit),
                                    (double)left.Y.In(unit),
                                    (double)left.Width.In(unit),
                                    (double)left.Length.In(unit)
                                )),
                            ],
                        }
                ),
            ],
            Unplaced = [.. fit.Unplaced.Select(rest => new UnplacedAnswer(rest.Piece.Id, rest.Copies))],
        };
}
