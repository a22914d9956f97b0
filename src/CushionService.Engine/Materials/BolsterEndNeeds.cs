using CushionService.Engine.Measures;
using CushionService.Engine.Specifications;
using CushionService.Engine.Specifications.Shapes;
using CushionService.Engine.Specifications.Stocks;

namespace CushionService.Engine.Materials;

/// <summary>What the ends of a bolster without discs are tied or drawn up with.</summary>
internal static class BolsterEndNeeds
{
    /// <summary>The item that the cord of a bolster's tied ends is priced as.</summary>
    public const string EndCord = "end-cord";

    /// <summary>What one cushion line takes: of each of its covers, both ends.</summary>
    /// <param name="cushion">A cushion line; amounts are for all its copies.</param>
    /// <param name="shop">How cord and twine are sold.</param>
    /// <returns>Nothing for flat ends.</returns>
    public static IEnumerable<Need> Of(CushionSpecification cushion, Shop shop)
    {
        int covers = cushion.Quantity * (cushion.Fabrics.InnerCover is null ? 1 : 2);
        switch (cushion.Ends?.Kind)
        {
            case BolsterEndKind.Tied:
                Length each = cushion.Practice.Trims.EndCord;
                yield return new Need(
                    cushion,
                    shop.ByLength(EndCord, MaterialKind.Cord, shop.Named(EndCord, MaterialKind.Cord)),
                    2 * covers * each.Nanometres,
                    MaterialTexts.EndCord(covers, each)
                );
                break;
            // Run once round the folded end, with enough to draw it up and to knot it (common practice, no source).
            case BolsterEndKind.Gathered:
                Length round = cushion.Outline.Perimeter.RoundUpTo(cushion.Practice.MeasuringStep),
                    knot = cushion.Practice.Trims.TwineToKnot;
                yield return new Need(
                    cushion,
                    shop.ByLength(TrimmingNeeds.Twine, MaterialKind.Twine, shop.Stocked(MaterialKind.Twine)),
                    2 * covers * (round + knot).Nanometres,
                    MaterialTexts.DrawnEnds(covers, round, knot)
                );
                break;
        }
    }
}
