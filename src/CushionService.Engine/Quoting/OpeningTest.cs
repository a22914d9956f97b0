using CushionService.Engine.Materials;
using CushionService.Engine.Measures;
using CushionService.Engine.Patterns.Additions;
using CushionService.Engine.Patterns.Panels;
using CushionService.Engine.Specifications;
using CushionService.Engine.Specifications.Closures;
using CushionService.Engine.Specifications.Practices;
using CushionService.Engine.Specifications.Stocks;

namespace CushionService.Engine.Quoting;

/// <summary>Whether a block of foam goes in through the closure: folded in half, it must pass (common practice, no source).</summary>
public static class OpeningTest
{
    /// <summary>How long an opening a folded block needs: half its middle size and all of its smallest. For a seat that is
    /// min(W, D)/2 + T.</summary>
    /// <param name="cushion">A cushion with a block of foam.</param>
    /// <remarks>A cushion without a thickness is a bolster, whose length is its third size.</remarks>
    public static Length Needed(CushionSpecification cushion)
    {
        Length third = cushion.Thickness > Length.Zero ? cushion.Thickness : cushion.Length;
        Length[] sizes = [cushion.Width, cushion.Depth, third];
        Array.Sort(sizes);
        return sizes[0] + sizes[1].HalfUp();
    }

    /// <summary>How long the closure opens: a zipper's section less its guards, a zipper in a seam or with closed ends
    /// as long as it is, hook and loop as long as their tape, a gap short of each corner, flaps as wide as they are.</summary>
    /// <param name="cushion">The cushion.</param>
    /// <param name="cover">Its cover, without an inner one.</param>
    /// <param name="stocks">What the shop stocks, zippers with closed ends among it.</param>
    public static Length Opening(CushionSpecification cushion, Pattern cover, IEnumerable<StockSpecification> stocks)
    {
        Length Along(SeamKind kind) =>
            cover.Seams.Where(seam => seam.Kind == kind).Aggregate(Length.Zero, (sum, seam) => sum + cover.LengthOf(seam));
        ClosurePractice practice = cushion.Practice.Closures;
        return cushion.Closure switch
        {
            ZipperClosure when ClosedZipper.For(cushion, cover, stocks) is { } zipper => zipper.Opening,
            ZipperClosure
                when cover.Seams.Any(seam =>
                    seam.Kind == SeamKind.Zipper && cover[seam.One[0].Part][seam.One[0].Edge].Finish.Kind == FinishKind.Seam
                ) => Closing.ZipperInSeam(Along(SeamKind.Zipper), practice),
            ZipperClosure => Along(SeamKind.Zipper) - practice.ZipperGuard,
            HandSewnClosure => Along(SeamKind.Gap) - 2 * cushion.Practice.Sewing.GapFromCorner,
            HookAndLoopClosure => Closing.Tape(Fastenings.Run(cover), practice),
            _ => Fastenings.Run(cover),
        };
    }
}
