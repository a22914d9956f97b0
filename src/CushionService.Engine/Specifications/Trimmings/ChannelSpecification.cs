using CushionService.Engine.Measures;

namespace CushionService.Engine.Specifications.Trimmings;

/// <summary>Channels of equal width stitched into a top.</summary>
/// <param name="Count">At least 2.</param>
/// <param name="Crown">How far each channel rises over its chord, at most half the chord; zero for channels that are stitched flat.</param>
/// <param name="TakeUp">What flat stitching draws in, as a share of the finished size in each direction.</param>
public sealed record ChannelSpecification(int Count, Length Crown, Fraction TakeUp)
{
    /// <summary>Which way they run.</summary>
    public ChannelDirection Direction { get; init; }

    /// <summary>Fabric over one channel.</summary>
    /// <param name="chord">Finished width of a channel.</param>
    /// <param name="crown">Its rise, above zero.</param>
    /// <remarks>R = (c²/4 + k²) / 2k, arc = 2R asin(c / 2R) (general geometry).</remarks>
    public static Length Arc(Length chord, Length crown)
    {
        double c = chord.Nanometres,
            k = crown.Nanometres,
            radius = ((c * c / 4) + (k * k)) / (2 * k);
        return Length.FromNanometres((long)Math.Ceiling(2 * radius * Math.Asin(Math.Min(1, c / (2 * radius)))));
    }

    /// <summary>How much more fabric a top takes across.</summary>
    /// <param name="width">Finished width of the top.</param>
    public Length Across(Length width) => Direction == ChannelDirection.Lengthwise ? Over(width) : With(width);

    /// <summary>How much more fabric a top takes along.</summary>
    /// <param name="depth">Finished depth of the top.</param>
    public Length Along(Length depth) => Direction == ChannelDirection.Lengthwise ? With(depth) : Over(depth);

    // Over the channels, each an arc where they are crowned.
    private Length Over(Length size) =>
        Crown > Length.Zero
            ? Count * Arc(Length.FromNanometres(size.Nanometres / Count), Crown) - Length.FromNanometres(size.Nanometres / Count * Count)
            : TakenUp(size);

    // Along the channels a crown takes nothing up.
    private Length With(Length size) => Crown > Length.Zero ? Length.Zero : TakenUp(size);

    private Length TakenUp(Length size) => Length.FromNanometres(TakeUp.CeilingOf(size.Nanometres));
}
