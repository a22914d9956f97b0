using System.Collections.Immutable;
using CushionService.Engine.Geometry;
using CushionService.Engine.Measures;
using CushionService.Engine.Patterns.Panels;
using CushionService.Engine.Specifications.Outlines;

namespace CushionService.Engine.Patterns.Sections;

/// <summary>The lines on which a face is divided for a closure across it: half the lap to either side of the middle of its depth.</summary>
public static class ClosureLine
{
    // About 2 in: an inside corner's allowance must not reach over the closure's own.
    private static readonly Length Clearance = Length.FromMillimetres(50);

    /// <summary>Whether both lines part an outline in two: each crosses it exactly twice, 50 mm or more from an inside corner, and runs
    /// along no edge.</summary>
    /// <param name="outline">The face's outline.</param>
    /// <param name="lap">How far the two panels lie over each other; zero where they meet.</param>
    /// <param name="same">Whether the lines must be equally long, as a zipper's edges must.</param>
    public static bool Divides(Outline outline, Length lap, bool same)
    {
        ImmutableArray<Edge> edges = [.. outline.FromBelow(outline.Sides).Select(side => new Edge(side.Name, side.Path, EdgeFinish.Raw))];
        return lap < outline.Depth
            && !MeetsInsideCorner(edges, outline.Depth, lap)
            && Part(edges, outline.Depth, lap, EdgeFinish.Raw) is (var front, var back)
            && (!same || front.Before[^1].Length == back.After[^1].Length);
    }

    // An inside corner's allowance would reach over the closure's own.
    private static bool MeetsInsideCorner(ImmutableArray<Edge> edges, Length depth, Length lap)
    {
        Length low = (depth - lap).HalfUp() - Clearance,
            high = (depth + lap).HalfUp() + Clearance;
        return Enumerable
            .Range(0, edges.Length)
            .Any(i =>
                edges[i].To.Y > low
                && edges[i].To.Y < high
                && Math.IEEERemainder(edges[(i + 1) % edges.Length].Path[0].StartDirection - edges[i].Path[^1].EndDirection, 2 * Math.PI)
                    < -0.01
            );
    }

    /// <summary>Parts a face: the first parting's near part is the front panel, the second's far part the back one.</summary>
    internal static (Parting Front, Parting Back)? Part(ImmutableArray<Edge> edges, Length depth, Length lap, EdgeFinish inner)
    {
        Parting? front = Parting.Level(edges, depth.HalfUp() + lap.HalfUp(), (EdgeName.Upper, inner), (EdgeName.Lower, inner));
        Parting? back = front is null ? null : Parting.Level(edges, front.At - lap, (EdgeName.Upper, inner), (EdgeName.Lower, inner));
        return front is null || back is null ? null : (front, back);
    }
}
