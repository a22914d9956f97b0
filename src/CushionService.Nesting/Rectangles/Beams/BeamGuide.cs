namespace CushionService.Nesting.Rectangles.Beams;

/// <summary>What makes a partial layout look good: all terms count against it.</summary>
/// <param name="Segments">For each level segment of the skyline.</param>
/// <param name="Steps">For each upright edge of the skyline, in sides of an average square.</param>
/// <param name="Noise">Range of the liking or dislike that each kind gets for one run.</param>
/// <param name="GivesUp">Whether a gap may be closed although something fits it.</param>
internal readonly record struct BeamGuide(double Segments, double Steps, double Noise, bool GivesUp = false)
{
    /// <summary>The area that can no longer be covered, in average rectangles.</summary>
    public const double Waste = 8;

    /// <summary>The same in a tight box, where wasted area is soon missed.</summary>
    public const double WasteInTight = 20;

    /// <summary>What is still to be laid, in average squares: what is hard to lay late comes early.</summary>
    public const double Remaining = 1;

    /// <summary>One after the other, since no one guide is best for every order.</summary>
    public static BeamGuide[] InTurn { get; } =
    [new(0.2, 0.1, 0.5), new(0, 0, 0.2), new(0.3, 0, 0.5), new(0, 0, 0.5), new(0.25, 0.05, 1), new(1, 0, 1, true)];
}
