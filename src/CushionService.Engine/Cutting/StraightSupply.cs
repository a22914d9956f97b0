using CushionService.Engine.Measures;
using CushionService.Engine.Specifications.Trimmings;

namespace CushionService.Engine.Cutting;

/// <summary>
/// Straight strips for a welt, joined on the slant: n = ⌈need / (Fw − w)⌉, all of one length and no longer than the need asks.
/// </summary>
/// <remarks>A slanted join takes about a strip's width from each strip, so that n strips give n Fw − (n − 1) w; Fw − w a strip is the safe
/// form (follows from the join's 45°).</remarks>
public static class StraightSupply
{
    /// <summary>The strips.</summary>
    /// <param name="need">Length of welt, above zero.</param>
    /// <param name="strip">Width of the strip, above zero.</param>
    /// <param name="longest">How long a strip may be cut: the usable width, for crosswise and for lengthwise strips.</param>
    /// <param name="lengthwise">Whether the strips lie along the fabric.</param>
    /// <param name="step">Cut sizes are multiples of it.</param>
    /// <returns>One strip as long as the need where the fabric is no wider than the strip.</returns>
    public static WeltSupply For(Length need, Length strip, Length longest, bool lengthwise, Length step)
    {
        Length most = Length.FromNanometres(longest.Nanometres - (longest.Nanometres % step.Nanometres)) - strip;
        var strips = most > Length.Zero ? (int)((need.Nanometres + most.Nanometres - 1) / most.Nanometres) : 1;
        // Equal strips, not all as long as the fabric: what is left over is then one strip of fabric, and not an odd end.
        Length each = (Length.FromNanometres((need.Nanometres + strips - 1) / strips) + strip).RoundUpTo(step);
        return new WeltSupply(
            WeltSupplyKind.StraightStrips,
            strips,
            1,
            strip,
            lengthwise ? strip : each,
            lengthwise ? each : strip,
            (strips * each) - ((strips - 1) * strip)
        );
    }

    /// <summary>The supply for a welt, straight or on the bias.</summary>
    /// <param name="need">A need like all that are cut together.</param>
    /// <param name="total">What they need together, and a spare strip end.</param>
    /// <param name="usable">Usable width of the fabric.</param>
    /// <param name="step">Cut sizes are multiples of it.</param>
    /// <param name="sold">The length that is sold for a length along the fabric; null where other pieces are cut from it.</param>
    public static WeltSupply ForWelt(WeltNeed need, Length total, Length usable, Length step, Func<Length, Length>? sold) =>
        need.Strip.Cut == WeltCut.Bias
            ? sold is null
                ? BiasSupply.For(total, need.StripWidth, need.Practice.WeltJoin, usable, step)
                : BiasSupply.Alone(total, need.StripWidth, need.Practice.WeltJoin, usable, step, sold)
            : For(total, need.StripWidth, usable, need.Strip.Cut == WeltCut.Lengthwise, step);
}
