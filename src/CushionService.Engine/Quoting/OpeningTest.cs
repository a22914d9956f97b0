using CushionService.Engine.Materials;
using CushionService.Engine.Measures;
using CushionService.Engine.Patterns.Additions;
using CushionService.Engine.Patterns.Panels;
using CushionService.Engine.Specifications;
using CushionService.Engine.Specifications.Closures;
using CushionService.Engine.Specifications.Practices;
using CushionService.Engine.Specifications.Stocks;

namespace CushionService.Engine.Quoting;

/// <summary>How far a closure opens, which is held against what its foam needs.</summary>
public static class OpeningTest
{
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
            HandSewnClosure when Along(SeamKind.Gap) is var seam => seam - 2 * Closing.GapFromCorner(seam, cushion.Practice),
            HookAndLoopClosure => Closing.Tape(Fastenings.Run(cover), practice),
            _ => Fastenings.Run(cover),
        };
    }
}
