using CushionService.Engine.Measures;
using CushionService.Engine.Patterns.Panels;
using CushionService.Engine.Specifications;
using CushionService.Engine.Specifications.Closures;
using CushionService.Engine.Specifications.Practices;
using CushionService.Engine.Specifications.Stocks;

namespace CushionService.Engine.Materials;

/// <summary>A zipper with closed ends, chosen from stock.</summary>
/// <param name="Stock">The stock.</param>
/// <param name="Seam">Finished length of its section, or of the side in whose seam it is, down to what a tape is read by.</param>
/// <param name="Room">The longest zipper that ends clear of the seam's ends.</param>
/// <param name="Shortened">Whether it must be cut down, not only its ends caught in the joins.</param>
/// <param name="StockStep">What stock lengths usually rise by: the next one below is at most that much shorter.</param>
public sealed record ClosedZipper(StockSpecification Stock, Length Seam, Length Room, bool Shortened, Length StockStep)
{
    /// <summary>The opening that it makes.</summary>
    public Length Opening => Length.Min(Stock.Length!.Value, Room);

    /// <summary>Whether both its ends lie within its seam, not caught in what joins it there.</summary>
    public bool EndsWithin => Shortened || Stock.Length!.Value <= Room;

    /// <summary>By how much the opening falls short of the room; that much of the seam is sewn shut, or a longer zipper is
    /// bought.</summary>
    public Length Shortfall => Room - Opening;

    /// <summary>Whether it is shorter than the next stock length below the room would be.</summary>
    public bool IsTooShort => Shortfall > StockStep;

    /// <summary>The longest stock that is no longer than its room, if it is within one step of stock lengths of it. Otherwise the shortest
    /// that is longer: it opens the whole room and has the least to shorten. Where none is, a stock by length is cut to the room; without
    /// one, the longest zipper there is, which is too short (common practice, no source).</summary>
    /// <remarks>The room is a section of Z less its guards, or a side seam less what is kept closed. Beyond Z + 2 seam allowances the ends
    /// can no longer be caught in the joins, and the zipper is cut down.</remarks>
    /// <returns>Null where no zipper with closed ends is stocked, where two sliders are asked for, or where all are too short and one by
    /// length is stocked.</returns>
    /// <param name="cushion">A cushion with a zipper.</param>
    /// <param name="pattern">Its pattern, which says how long the zipper's seam is.</param>
    /// <param name="stocks">What the shop stocks; zippers with a length among it are those with closed ends.</param>
    public static ClosedZipper? For(CushionSpecification cushion, Pattern pattern, IEnumerable<StockSpecification> stocks)
    {
        StockSpecification[] zippers = [.. stocks.Where(stock => stock.Kind == MaterialKind.Zipper)],
            closed = [.. zippers.Where(stock => stock.Length is not null).OrderBy(stock => stock.Length!.Value)];
        // What is closed at both ends has the slider that it was made with; a second one goes on chain alone.
        if (closed.Length == 0 || cushion.Closure is ZipperClosure { Sliders: > 1 })
        {
            return null;
        }

        ClosurePractice practice = cushion.Practice.Closures;
        (Length exact, bool ownSection) = Closing.ZipperSeam(pattern);
        // Down, not up: a room that is said to be longer than it is would let in a zipper whose stop lies under the
        // needle.
        Length seam = Length.FromNanometres(exact.Nanometres - (exact.Nanometres % cushion.Practice.MeasuringStep.Nanometres)),
            room = ownSection ? seam - practice.ZipperGuard : Closing.ZipperInSeam(seam, practice);
        StockSpecification chosen =
            closed.LastOrDefault(stock => stock.Length <= room && room - stock.Length!.Value <= practice.ZipperStockStep)
            ?? closed.FirstOrDefault(stock => stock.Length > room)
            ?? closed[^1];
        var zipper = new ClosedZipper(chosen, seam, room, chosen.Length > seam + 2 * cushion.SeamAllowance, practice.ZipperStockStep);
        return zipper.IsTooShort && zippers.Any(stock => stock.Length is null) ? null : zipper;
    }
}
