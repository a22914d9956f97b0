using CushionService.Contract.Orders;
using CushionService.Engine.Measures;
using CushionService.Engine.Specifications.Trimmings;

namespace CushionService.Intake;

/// <summary>Checks channels in the top of a cushion, and specifies them.</summary>
/// <remarks>Channels run from front to back, evenly over the width, or across. Their crown is the height of an arc over each; without
/// one, a take-up says how much wider the fabric is cut for the stitching, as a share.</remarks>
internal static class ChannelIntake
{
    private static readonly LengthField<Channels> Crown = RecordForm<Channels>.Length(nameof(Channels.Crown));

    /// <summary>The channels; null where there are none, or they were refused.</summary>
    /// <param name="channels">The channels as written; null for none.</param>
    /// <param name="body">The cushion.</param>
    public static ChannelSpecification? Read(Channels? channels, CushionBody body)
    {
        if (channels is null)
        {
            return null;
        }

        Findings at = body.At.Within(nameof(Cushion.Channels));
        Fields<Channels> fields = RecordForm<Channels>.Read(channels, at);
        if (channels is { Crown: not null, TakeUp: not null })
        {
            at.NotApplicable(nameof(channels.TakeUp), FieldTexts.NotWithCrown("Take up"));
        }

        body.NeedsRectangle(nameof(Cushion.Channels));
        // Corners are drawn in before channels are stitched, and the top is larger than the bottom until then.
        if (body.Written.CornerTaper is not null)
        {
            body.At.Refuse(nameof(Cushion.CornerTaper), "not-combinable", ShapeTexts.TaperWithChannels);
        }

        if (!fields.IsSound || channels.Count is not { } count || fields.Or(Crown, Length.Zero) is not { } crown)
        {
            return null;
        }

        ChannelDirection direction = channels.Direction ?? ChannelDirection.Lengthwise;
        if (body.Outline is { } outline)
        {
            FitAcross(direction == ChannelDirection.Lengthwise ? outline.Width : outline.Depth, count, crown, body, at);
        }

        return new ChannelSpecification(count, crown, Shares.Of(channels.TakeUp) ?? body.Practice.Shapes.ChannelTakeUp)
        {
            Direction = direction,
        };
    }

    // Whether the channels lie side by side on the face, each as wide as its crown needs.
    private static void FitAcross(Length across, int count, Length crown, CushionBody body, Findings at)
    {
        Length narrowest = body.Practice.Shapes.NarrowestChannel;
        if (count * narrowest > across)
        {
            long most = Math.Max(1, across.Nanometres / narrowest.Nanometres);
            at.Refuse(
                nameof(Channels.Count),
                "out-of-range",
                ShapeTexts.NarrowChannels(count, across, narrowest, most),
                new FindingRange(null, most)
            );
        }
        // Half of a chord is the sagitta of a half circle: an arc over the channel cannot rise higher.
        else if (Length.FromNanometres(across.Nanometres / count / 2) is var highest && crown > highest)
        {
            at.RefuseRange(Crown.Name, "out-of-range", ShapeTexts.Crown(highest), null, highest);
        }
    }
}
