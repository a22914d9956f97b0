using CushionService.Engine.Measures;

namespace CushionService.Engine.Specifications.Practices;

/// <summary>The sizes of what belongs to one construction, where an order does not say.</summary>
/// <remarks>Common practice, no source.</remarks>
public sealed record ShapePractice
{
    /// <summary>A workroom that measures in inches.</summary>
    public static ShapePractice Imperial { get; } =
        new()
        {
            Tail = Length.FromInches(6),
            EndTurning = Length.FromInches(0.75m),
            FlangeTurning = Length.FromInches(0.5m),
            ChannelTakeUp = Fraction.Of(1, 50),
            NarrowestChannel = Length.FromInches(0.5m),
            BayBulk = Length.FromInches(0.25m),
        };

    /// <summary>A workroom that measures in millimetres.</summary>
    public static ShapePractice Metric { get; } =
        new()
        {
            Tail = Length.FromMillimetres(150),
            EndTurning = Length.FromMillimetres(20),
            FlangeTurning = Length.FromMillimetres(13),
            ChannelTakeUp = Imperial.ChannelTakeUp,
            NarrowestChannel = Length.FromMillimetres(13),
            BayBulk = Length.FromMillimetres(6),
        };

    /// <summary>Length of the tail beyond a tied end of a bolster.</summary>
    public required Length Tail { get; init; }

    /// <summary>Turning of the casing at a gathered or tied end.</summary>
    public required Length EndTurning { get; init; }

    /// <summary>Turning of a double flange.</summary>
    public required Length FlangeTurning { get; init; }

    /// <summary>What flat channels take up, as a fraction of the width.</summary>
    public required Fraction ChannelTakeUp { get; init; }

    /// <summary>The least width of a channel between two lines of stitching.</summary>
    public required Length NarrowestChannel { get; init; }

    /// <summary>What each end of a bay's seat that meets another is shorter by, for the two boxings between them.</summary>
    public required Length BayBulk { get; init; }
}
