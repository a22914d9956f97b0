namespace CushionService.Nesting.Rectangles.Repeats;

/// <summary>A free stretch of the strip.</summary>
/// <param name="Left">Left edge, in grid units.</param>
/// <param name="Lower">Lower edge, in grid units.</param>
/// <param name="Right">Right edge, above the left one.</param>
/// <param name="Upper">Upper edge, above the lower one.</param>
internal readonly record struct FreeRectangle(long Left, long Lower, long Right, long Upper)
{
    /// <summary>Whether the two share area.</summary>
    /// <remarks>Open intervals: rectangles that touch at an edge or a corner share no area.</remarks>
    public bool Meets(in FreeRectangle other) => Left < other.Right && other.Left < Right && Lower < other.Upper && other.Lower < Upper;

    /// <summary>Whether the other lies within this one.</summary>
    /// <remarks>Closed intervals: every rectangle holds itself.</remarks>
    public bool Holds(in FreeRectangle other) => Left <= other.Left && other.Right <= Right && Lower <= other.Lower && other.Upper <= Upper;
}
