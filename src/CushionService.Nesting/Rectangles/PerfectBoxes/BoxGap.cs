namespace CushionService.Nesting.Rectangles.PerfectBoxes;

/// <summary>A level stretch between two higher walls.</summary>
/// <param name="Extent">Its width.</param>
/// <param name="Floor">Its height.</param>
/// <param name="LeftWall">Height to the left.</param>
/// <param name="RightWall">Height to the right.</param>
internal readonly record struct BoxGap(int Extent, int Floor, int LeftWall, int RightWall)
{
    /// <summary>How far the lower wall rises above the floor.</summary>
    public int Depth => Math.Min(LeftWall, RightWall) - Floor;
}
