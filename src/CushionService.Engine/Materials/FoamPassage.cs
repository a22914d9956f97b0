using CushionService.Engine.Measures;
using CushionService.Engine.Specifications;
using CushionService.Engine.Specifications.Practices;
using CushionService.Engine.Specifications.Stocks;

namespace CushionService.Engine.Materials;

/// <summary>How a block of foam goes through an opening: folded in half, or pressed together where it is too thick or too firm for
/// that.</summary>
/// <remarks>A slit of length L opens to a loop of 2 L, and soft foam is pressed to half its thickness: a block of W × T goes through
/// W + T/2, and folded, when it is W/2 × 2 T, through W/2 + T (common practice, no source).</remarks>
public static class FoamPassage
{
    /// <summary>Whether a sewer can fold the foam in half: it is no thicker than a third of what is folded, and not so firm that it springs
    /// back (common practice, no source).</summary>
    /// <param name="cushion">A cushion that is filled with foam.</param>
    /// <param name="stocks">What the shop stocks, which says how firm a foam is.</param>
    public static bool Folds(CushionSpecification cushion, IEnumerable<StockSpecification> stocks)
    {
        Length[] sizes = Sizes(cushion);
        return sizes[1] >= FillPractice.FoldedThicknesses * sizes[0]
            && !stocks.Any(stock =>
                stock.Firmness is { } firmness
                && firmness.Newtons > FillPractice.FirmestFolded.Newtons
                && FoamBuildUp.Layers(cushion).Any(layer => layer.Fill!.Item == stock.Id)
            );
    }

    /// <summary>How long an opening the foam needs. For a seat that folds that is min(W, D)/2 + T.</summary>
    /// <param name="cushion">A cushion that is filled with foam.</param>
    /// <param name="stocks">What the shop stocks, which says how firm a foam is.</param>
    public static Length Needed(CushionSpecification cushion, IEnumerable<StockSpecification> stocks)
    {
        Length[] sizes = Sizes(cushion);
        return Folds(cushion, stocks) ? sizes[1].HalfUp() + sizes[0] : sizes[1] + sizes[0].HalfUp();
    }

    // From the smallest to the largest. A cushion without a thickness is a bolster, whose length is its third size.
    private static Length[] Sizes(CushionSpecification cushion)
    {
        Length[] sizes = [cushion.Width, cushion.Depth, cushion.Thickness > Length.Zero ? cushion.Thickness : cushion.Length];
        Array.Sort(sizes);
        return sizes;
    }
}
