using CushionService.Engine.Measures;
using CushionService.Engine.Patterns.Panels;
using CushionService.Engine.Specifications;
using CushionService.Engine.Specifications.Stocks;

namespace CushionService.Engine.Materials;

/// <summary>A zipper with closed ends, chosen from stock.</summary>
/// <param name="Stock">The stock.</param>
/// <param name="Seam">Finished length of its section, or of the side in whose seam it stands.</param>
/// <param name="Room">The longest zipper that ends clear of the seam's ends.</param>
/// <param name="Shortened">Whether it must be shortened to that.</param>
public sealed record ClosedZipper(StockSpecification Stock, Length Seam, Length Room, bool Shortened)
{
    private static readonly Length EndGuards = Length.FromInches(1);

    // Stock lengths rise by 2 in: the next one below is at most that much shorter (common practice, no source).
    private static readonly Length StockStep = Length.FromInches(2);

    /// <summary>The opening that it makes.</summary>
    public Length Opening => Length.Min(Stock.Length!.Value, Room);

    /// <summary>By how much the opening falls short of the room; that much of the seam is sewn shut, or a longer zipper is
    /// bought.</summary>
    public Length Shortfall => Room - Opening;

    /// <summary>Whether it is shorter than the next stock length below the room would be.</summary>
    public bool IsTooShort => Shortfall > StockStep;

    /// <summary>The next stock length at or below a section of Z less 1 in, or the longest zipper of a side seam; where the next below is
    /// more than 2 in short, the shortest that is longer, shortened when it is beyond Z + 2 seam allowances; else the longest there is,
    /// which is too
    /// short (common practice, no source).</summary>
    /// <returns>Null where no zipper with closed ends is stocked.</returns>
    public static ClosedZipper? For(CushionSpecification cushion, Pattern pattern, IEnumerable<StockSpecification> stocks)
    {
        StockSpecification[] closed =
        [
            .. stocks.Where(stock => stock is { Kind: MaterialKind.Zipper, Length: not null }).OrderBy(stock => stock.Length!.Value),
        ];
        if (closed.Length == 0)
        {
            return null;
        }

        (Length seam, bool ownSection) = Closing.ZipperSeam(pattern);
        Length room = ownSection ? seam - EndGuards : Closing.ZipperInSeam(seam);
        StockSpecification chosen =
            closed.LastOrDefault(stock => stock.Length <= room && room - stock.Length!.Value <= StockStep)
            ?? closed.FirstOrDefault(stock => stock.Length > room)
            ?? closed[^1];
        return new ClosedZipper(chosen, seam, room, chosen.Length > seam + 2 * cushion.SeamAllowance);
    }
}
