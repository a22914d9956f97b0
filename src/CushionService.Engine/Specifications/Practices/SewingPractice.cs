using CushionService.Engine.Measures;

namespace CushionService.Engine.Specifications.Practices;

/// <summary>The distances that a sewing step names.</summary>
/// <remarks>Common practice, no source.</remarks>
public sealed record SewingPractice
{
    /// <summary>A workroom that measures in inches.</summary>
    public static SewingPractice Imperial { get; } =
        new()
        {
            StayStitch = Length.FromInches(1),
            ClipSpacing = Length.FromInches(0.5m),
            ClipMargin = Length.FromInches(0.125m),
            GatheringRow = Length.FromInches(0.125m),
            GapFromCorner = Length.FromInches(2),
            CornerReinforcement = Length.FromInches(1),
            Tolerance = Length.FromInches(0.25m),
        };

    /// <summary>A workroom that measures in millimetres.</summary>
    public static SewingPractice Metric { get; } =
        new()
        {
            StayStitch = Length.FromMillimetres(25),
            ClipSpacing = Length.FromMillimetres(12),
            ClipMargin = Length.FromMillimetres(3),
            GatheringRow = Length.FromMillimetres(3),
            GapFromCorner = Length.FromMillimetres(50),
            CornerReinforcement = Length.FromMillimetres(25),
            Tolerance = Length.FromMillimetres(6),
        };

    /// <summary>How far stay-stitching runs each way from an inside corner.</summary>
    public required Length StayStitch { get; init; }

    /// <summary>Distance between the clips of a boxing that goes round a curve.</summary>
    public required Length ClipSpacing { get; init; }

    /// <summary>How far a clip ends from the seam line.</summary>
    public required Length ClipMargin { get; init; }

    /// <summary>Distance of each of two gathering rows from the seam line.</summary>
    public required Length GatheringRow { get; init; }

    /// <summary>How far a gap for turning ends from each corner.</summary>
    public required Length GapFromCorner { get; init; }

    /// <summary>How far a corner is sewn twice.</summary>
    public required Length CornerReinforcement { get; init; }

    /// <summary>How far a finished size may differ from the one ordered, either way.</summary>
    public required Length Tolerance { get; init; }
}
