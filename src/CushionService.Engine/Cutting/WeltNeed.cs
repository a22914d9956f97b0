using System.Collections.Immutable;
using CushionService.Engine.Measures;
using CushionService.Engine.Messages;
using CushionService.Engine.Patterns.Additions;
using CushionService.Engine.Patterns.Panels;
using CushionService.Engine.Specifications;
using CushionService.Engine.Specifications.Practices;
using CushionService.Engine.Specifications.Trimmings;

namespace CushionService.Engine.Cutting;

/// <summary>How much welt a cushion line takes, over all covers of the line.</summary>
/// <param name="Welt">The welt.</param>
/// <param name="Cushion">The cushion line.</param>
/// <param name="Loops">The loops of one cover, their lengths up to what a tape is read by.</param>
/// <param name="StripWidth">Width of its strip, up to the cutting step.</param>
public sealed record WeltNeed(WeltSpecification Welt, CushionSpecification Cushion, ImmutableArray<EdgingLoop> Loops, Length StripWidth)
{
    /// <summary>Finished length of welt and of cord: each loop's seam line and its closing overlap, or the allowances at the ends of
    /// what does not close (common practice, no source).</summary>
    public Length Total { get; } = Cushion.Quantity * Loops.Aggregate(Length.Zero, (sum, loop) => sum + loop.WeltLength(Cushion));

    /// <summary>The workroom's usual sizes of additions.</summary>
    public TrimPractice Practice => Cushion.Practice.Trims;

    /// <summary>What a drafted cushion takes; null when it has no welt.</summary>
    public static WeltNeed? Of(CushionSpecification cushion, Pattern pattern, Length cuttingStep) =>
        cushion.Trim.Edging is WeltSpecification welt
            ? new WeltNeed(
                welt,
                cushion,
                [
                    .. welt
                        .At.Select(place => EdgingLoop.Of(pattern, place))
                        .Select(loop => loop with { Length = loop.Length.RoundUpTo(cushion.Practice.MeasuringStep) }),
                ],
                WeltSpecification.StripWidth(welt.CordDiameter, cushion.SeamAllowance).RoundUpTo(cuttingStep)
            )
            : null;

    /// <summary>How the length comes about, in one line.</summary>
    public Message Because =>
        WeltTexts.Need(
            Cushion.Quantity,
            Loops.Select(loop =>
                loop.IsClosed
                    ? WeltTexts.ClosedLoop(loop.Length, loop.Place, Practice.WeltOverlap)
                    : WeltTexts.OpenLoop(loop.Length, loop.Place, 2 * loop.Edges.Length, Cushion.SeamAllowance)
            ),
            Total
        );
}
