using System.Collections.Immutable;
using CushionService.Engine.Measures;
using CushionService.Engine.Messages;
using CushionService.Engine.Patterns.Additions;
using CushionService.Engine.Patterns.Panels;
using CushionService.Engine.Specifications;
using CushionService.Engine.Specifications.Trimmings;

namespace CushionService.Engine.Cutting;

/// <summary>How long what follows the seams of a cushion line is, over all covers of the line.</summary>
/// <param name="Cushion">The cushion line.</param>
/// <param name="Loops">The loops of one cover, their lengths up to what a tape is read by.</param>
public sealed record EdgingLength(CushionSpecification Cushion, ImmutableArray<EdgingLoop> Loops)
{
    /// <summary>Each loop's seam line and its closing overlap, or the allowances at the ends of what does not close (common practice, no
    /// source).</summary>
    public Length Total { get; } = Cushion.Quantity * Loops.Aggregate(Length.Zero, (sum, loop) => sum + loop.WeltLength(Cushion));

    /// <summary>The length along the seams of an edging.</summary>
    /// <param name="cushion">The cushion line.</param>
    /// <param name="pattern">Its pattern.</param>
    /// <param name="edging">The edging.</param>
    public static EdgingLength Of(CushionSpecification cushion, Pattern pattern, EdgingSpecification edging) =>
        new(
            cushion,
            [
                .. edging
                    .At.Select(place => EdgingLoop.Of(pattern, place))
                    .Select(loop => loop with { Length = loop.Length.RoundUpTo(cushion.Practice.MeasuringStep) }),
            ]
        );

    /// <summary>How the length comes about, in one line.</summary>
    public Message Because =>
        WeltTexts.Need(
            Cushion.Quantity,
            Loops.Select(loop =>
                loop.IsClosed
                    ? WeltTexts.ClosedLoop(loop.Length, loop.Place, Cushion.Practice.Trims.WeltOverlap)
                    : WeltTexts.OpenLoop(loop.Length, loop.Place, 2 * loop.Edges.Length, Cushion.SeamAllowance)
            ),
            Total
        );
}
