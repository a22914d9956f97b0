using CushionService.Engine.Geometry;
using CushionService.Engine.Measures;
using CushionService.Engine.Patterns.Panels;
using CushionService.Engine.Specifications;
using CushionService.Engine.Specifications.Trimmings;

namespace CushionService.Engine.Patterns.Additions;

/// <summary>Channels stitched into a rectangular top from front to back or from side to side: the stitching lines, and the
/// fabric that they draw in.</summary>
internal static class Channels
{
    /// <summary>Marks the top; nothing changes when the cushion has no channels.</summary>
    /// <param name="pattern">The cover, with a rectangular top.</param>
    /// <param name="cushion">The cushion.</param>
    public static Pattern AddTo(Pattern pattern, CushionSpecification cushion)
    {
        if (cushion.Channels is not { } channels)
        {
            return pattern;
        }

        Panel top = pattern[PartName.Top];
        bool lengthwise = channels.Direction == ChannelDirection.Lengthwise;
        Length across = lengthwise ? top.Width : top.Height;
        // The product of a length and a count is taken in 128 bits, so that each line is exact to a nanometre and none
        // drifts.
        Length At(int line) => Length.FromNanometres((long)((Int128)across.Nanometres * line / channels.Count));
        IEnumerable<PanelMark> lines = Enumerable
            .Range(1, channels.Count - 1)
            .Select(line => new PanelMark(
                MarkKind.StitchLine,
                lengthwise ? new Point(At(line), Length.Zero) : new Point(Length.Zero, At(line)),
                lengthwise ? new Point(At(line), top.Height) : new Point(top.Width, At(line)),
                MarkPurpose.StitchChannel
            ));
        return pattern with
        {
            Panels = pattern.Panels.Replace(
                top,
                top with
                {
                    Marks = [.. top.Marks, .. lines],
                    TakeUpAcross = channels.Across(top.Width),
                    TakeUpAlong = channels.Along(top.Height),
                }
            ),
        };
    }
}
