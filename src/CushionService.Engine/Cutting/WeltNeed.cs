using System.Collections.Immutable;
using CushionService.Engine.Measures;
using CushionService.Engine.Patterns.Additions;
using CushionService.Engine.Patterns.Panels;
using CushionService.Engine.Specifications;
using CushionService.Engine.Specifications.Trimmings;

namespace CushionService.Engine.Cutting;

/// <summary>How much welt a cushion line takes, over all cushions made alike.</summary>
/// <param name="Welt">The welt.</param>
/// <param name="Loops">The loops of one cover.</param>
/// <param name="Seam">Seam allowance.</param>
/// <param name="Covers">How many covers are made alike.</param>
/// <param name="StripWidth">Width of its strip, up to the cutting step.</param>
public sealed record WeltNeed(WeltSpecification Welt, ImmutableArray<EdgingLoop> Loops, Length Seam, int Covers, Length StripWidth)
{
    /// <summary>Finished length of welt and of cord: each loop's seam line and its closing overlap, or the allowances at the ends of
    /// what does not close (common practice, no source).</summary>
    public Length Total { get; } = Covers * Loops.Aggregate(Length.Zero, (sum, loop) => sum + loop.WeltLength(Seam));

    /// <summary>What a drafted cushion takes; null when it has no welt.</summary>
    public static WeltNeed? Of(CushionSpecification cushion, Pattern pattern, Length cuttingStep) =>
        cushion.Trim.Edging is WeltSpecification welt
            ? new WeltNeed(
                welt,
                [.. welt.At.Select(place => EdgingLoop.Of(pattern, place))],
                cushion.SeamAllowance,
                cushion.Quantity,
                WeltSpecification.StripWidth(welt.CordDiameter, cushion.SeamAllowance).RoundUpTo(cuttingStep)
            )
            : null;

    /// <summary>How the length comes about, in one line.</summary>
    public string Because(LengthUnit unit)
    {
        string Text(Length length) => LengthText.Format(length, unit);
        string loops = string.Join(
            " + ",
            Loops.Select(loop =>
                $"{Text(loop.Length)} {(loop.Place == EdgingPlace.Corners ? "at" : "round")} the {loop.Place.ToString().ToLowerInvariant()} + {(loop.IsClosed ? $"{Text(WeltSpecification.ClosingOverlap)} to close" : $"{2 * loop.Edges.Length} × {Text(Seam)} seam")}"
            )
        );
        return Covers == 1 ? $"{loops} = {LengthText.Format(Total, unit)}" : $"{Covers} × ({loops}) = {LengthText.Format(Total, unit)}";
    }

    /// <summary>How the width of the strip comes about, in one line.</summary>
    public string BecauseWidth(Length seam, LengthUnit unit) =>
        $"strip π × {LengthText.Format(Welt.CordDiameter, unit)} cord + 2 × {LengthText.Format(seam, unit)} seam, up to {LengthText.Format(StripWidth, unit)}";
}
