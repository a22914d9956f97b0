using CushionService.Engine.Measures;

namespace CushionService.Engine.Specifications.Practices;

/// <summary>Where strips and faces are joined that are longer than their fabric.</summary>
/// <param name="CornerClearance">A join nearer to a corner would be a lump where the boxing is clipped and turned: 2 in, or 5 cm.</param>
/// <param name="ShortestPatch">A shorter piece is hard to sew and looks like a mistake: 3 in, or 8 cm.</param>
/// <param name="FaceStep">In such steps the middle of a joined face is made narrower until its joins miss the corners: 1/2 in, or
/// 1 cm.</param>
/// <remarks>Common practice, no source.</remarks>
public sealed record JoinPractice(Length CornerClearance, Length ShortestPatch, Length FaceStep)
{
    /// <summary>A workroom that measures in inches.</summary>
    public static JoinPractice Imperial { get; } = new(Length.FromInches(2), Length.FromInches(3), Length.FromInches(0.5m));

    /// <summary>A workroom that measures in millimetres.</summary>
    public static JoinPractice Metric { get; } = new(Length.FromMillimetres(50), Length.FromMillimetres(80), Length.FromMillimetres(10));
}
