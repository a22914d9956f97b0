using CushionService.Engine.Geometry;
using CushionService.Engine.Measures;
using CushionService.Engine.Patterns.Additions;
using CushionService.Engine.Patterns.Panels;
using CushionService.Engine.Specifications;
using CushionService.Engine.Specifications.Closures;
using CushionService.Engine.Specifications.Fabrics;
using CushionService.Engine.Specifications.Trimmings;

namespace CushionService.Engine.Materials;

/// <summary>Stitching besides seams and hems: tapes, strips, trims that are sewn on by hand, threads that draw ends up, and rows that only
/// baste.</summary>
/// <remarks>Common practice, no source.</remarks>
internal static class AdditionStitching
{
    /// <summary>Its length in one cover.</summary>
    /// <param name="cushion">The cushion: its edging, closure, base and raw edges say what is sewn.</param>
    /// <param name="pattern">Its pattern, closed: edging loops are measured on it.</param>
    /// <returns>Of one cover, not of the line's quantity; zero for a cover without additions.</returns>
    public static Length Of(CushionSpecification cushion, Pattern pattern) =>
        Tapes(cushion, pattern)
        + Strips(pattern)
        + Edging(cushion, pattern)
        + Basting(cushion, pattern)
        + Gathering(pattern)
        + Drawn(pattern);

    // A doubled thread is run round each end of a bolster that is drawn up.
    private static Length Drawn(Pattern pattern) =>
        pattern
            .Panels.SelectMany(panel => panel.Edges)
            .Where(edge => edge.Finish.Kind == FinishKind.Drawn)
            .Aggregate(Length.Zero, (sum, edge) => sum + (2 * edge.Length));

    // Two rows along each edge that is drawn up, sewn while it is as long as it was cut; both layers of a folded ruffle as one.
    private static Length Gathering(Pattern pattern) =>
        pattern
            .Panels.SelectMany(panel => panel.Gathers, (panel, gather) => panel[gather.Edge].Length)
            .Concat(pattern.Panels.Where(panel => panel.Part.Kind == PartKind.Ruffle).Select(ruffle => ruffle[EdgeName.Inner].Length))
            .Aggregate(Length.Zero, (sum, edge) => sum + (2 * edge));

    // A welt is stitched round its cord once; topstitching has its rows, a French seam a second one, a trim over the seam two.
    private static Length Edging(CushionSpecification cushion, Pattern pattern) =>
        cushion.Trim.Edging switch
        {
            WeltSpecification welt => Sum(pattern, welt, loop => loop.WeltLength(cushion)),
            // The spacing of the rows does not change their length here: each is counted as long as the seam.
            TopstitchSpecification topstitch => topstitch.Rows * Sum(pattern, topstitch, loop => loop.Length),
            FrenchSeamSpecification french => Sum(pattern, french, loop => loop.Length),
            // By hand, along both edges of a gimp or of a fringe's heading.
            BoughtTrimSpecification { IsCaught: false } trim => 2 * Sum(pattern, trim, loop => loop.Length),
            _ => Length.Zero,
        };

    private static Length Sum(Pattern pattern, EdgingSpecification edging, Func<EdgingLoop, Length> length) =>
        edging.At.Aggregate(Length.Zero, (sum, place) => sum + length(EdgingLoop.Of(pattern, place)));

    // Hook and loop are each sewn along both edges; a binding is folded over its raw edge, and one row catches both its folds.
    private static Length Tapes(CushionSpecification cushion, Pattern pattern) =>
        // Two tapes of two edges each: hence four.
        (cushion.Closure is HookAndLoopClosure ? 4 * Closing.Tape(Fastenings.Run(pattern), cushion.Practice.Closures) : Length.Zero)
        + EdgeBinding.Of(cushion, pattern).Edges;

    // One row along each tie and strap, edge-stitched or sewn into a tube.
    private static Length Strips(Pattern pattern) =>
        pattern
            .Panels.Where(panel => panel.Part.Kind is PartKind.Tie or PartKind.ClosureTie or PartKind.Strap)
            .Aggregate(Length.Zero, (sum, panel) => sum + panel.Copies * panel.Height);

    // An edging round its face, the ends of strips that overlap, the opening of a zipper in a seam, and the base round the underside.
    private static Length Basting(CushionSpecification cushion, Pattern pattern)
    {
        var total = Length.Zero;
        if (cushion.Trim.Edging is { IsCaught: true } edging)
        {
            total += Sum(pattern, edging, loop => loop.Length);
        }

        if (cushion.Closure is OverlappingClosure overlapping)
        {
            // Both ends of the opening are held together over the overlap before the strip is sewn in.
            total += 2 * overlapping.Overlap;
        }

        // A seam is basted shut before a zipper is set behind it; a section of its own has no seam to baste.
        if (cushion.Closure is ZipperClosure && Closing.ZipperSeam(pattern) is { OwnSection: false, Seam: var side })
        {
            total += Closing.ZipperInSeam(side, cushion.Practice.Closures);
        }

        if (cushion.Trim.Base == BaseKind.AntiSlip)
        {
            total += pattern
                .Panels.Where(panel => panel.Role == FabricRole.Bottom)
                .SelectMany(panel => panel.Edges)
                .Aggregate(Length.Zero, (sum, edge) => sum + edge.Length);
        }

        return total;
    }
}
