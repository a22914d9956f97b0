using CushionService.Engine.Measures;
using CushionService.Engine.Messages;
using CushionService.Engine.Patterns.Panels;
using CushionService.Engine.Specifications;
using CushionService.Engine.Specifications.Practices;
using CushionService.Engine.Specifications.Trimmings;

namespace CushionService.Engine.Cutting;

/// <summary>How much welt or flat piping a cushion line takes, over all covers of the line.</summary>
/// <param name="Strip">The welt or the piping.</param>
/// <param name="Along">The seams of the cushion line that it follows.</param>
/// <param name="StripWidth">Width of its strip, up to the cutting step.</param>
public sealed record WeltNeed(SeamStripSpecification Strip, EdgingLength Along, Length StripWidth)
{
    /// <summary>The cushion line.</summary>
    public CushionSpecification Cushion => Along.Cushion;

    /// <summary>Finished length of welt and of cord.</summary>
    public Length Total => Along.Total;

    /// <summary>How the length comes about, in one line.</summary>
    public Message Because => Along.Because;

    /// <summary>The workroom's usual sizes of additions.</summary>
    public TrimPractice Practice => Cushion.Practice.Trims;

    /// <summary>What a drafted cushion takes; null when it has neither.</summary>
    /// <param name="cushion">A cushion line.</param>
    /// <param name="pattern">Its pattern, whose seams give the length.</param>
    /// <param name="cuttingStep">The workroom's, above zero.</param>
    public static WeltNeed? Of(CushionSpecification cushion, Pattern pattern, Length cuttingStep) =>
        cushion.Trim.Edging is SeamStripSpecification strip
            ? new WeltNeed(strip, EdgingLength.Of(cushion, pattern, strip), strip.Width(cushion.SeamAllowance).RoundUpTo(cuttingStep))
            : null;
}
