using CushionService.Engine.Measures;

namespace CushionService.Engine.Layouts;

/// <summary>Positions across at which a motif may be: from one to another, both included.</summary>
/// <param name="From">The first position, from the left edge of the usable width.</param>
/// <param name="Over">How much further the last one is, at least zero; zero where the position is known.</param>
/// <remarks>What is laid for the first position on a fabric that is <paramref name="Over"/> narrower serves every one of them: all of it is
/// moved across with the motif.</remarks>
internal readonly record struct MotifSpan(Length From, Length Over)
{
    /// <summary>The last position.</summary>
    public Length To => From + Over;

    /// <summary>The position in its middle.</summary>
    public MotifSpan Middle => new(From + Length.FromNanometres(Over.Nanometres / 2), Length.Zero);
}
