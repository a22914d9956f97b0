using System.Collections.Immutable;
using CushionService.Engine.Measures;
using CushionService.Engine.Specifications.Outlines;

namespace CushionService.Engine.Patterns;

/// <summary>The lines on which a face is divided for a closure across it: half the lap to either side of the middle of its depth.</summary>
public static class ClosureLine
{
    /// <summary>Whether both lines part an outline in two: each crosses it exactly twice and runs along no edge.</summary>
    /// <param name="outline">The face's outline.</param>
    /// <param name="lap">How far the two panels lie over each other, less than the outline is deep; zero where they meet.</param>
    public static bool Divides(Outline outline, Length lap) =>
        lap < outline.Depth && Part([.. outline.Sides.Select(side => new Edge(side.Name, side.Path, EdgeFinish.Raw))], outline.Depth, lap, EdgeFinish.Raw) is not null;

    /// <summary>Parts a face: the first parting's near part is the front panel, the second's far part the back one.</summary>
    internal static (Parting Front, Parting Back)? Part(ImmutableArray<Edge> edges, Length depth, Length lap, EdgeFinish inner)
    {
        Parting? front = Parting.Level(edges, depth.HalfUp() + lap.HalfUp(), ("upper", inner), ("lower", inner));
        Parting? back = front is null ? null : Parting.Level(edges, front.At - lap, ("upper", inner), ("lower", inner));
        return front is null || back is null ? null : (front, back);
    }
}
