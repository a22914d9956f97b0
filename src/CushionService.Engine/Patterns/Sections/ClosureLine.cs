using System.Collections.Immutable;
using CushionService.Engine.Geometry;
using CushionService.Engine.Measures;
using CushionService.Engine.Patterns.Panels;
using CushionService.Engine.Specifications.Outlines;

namespace CushionService.Engine.Patterns.Sections;

/// <summary>The lines on which a face is divided for a closure across it: half the lap to either side of the middle of its
/// depth, or of its width.</summary>
public static class ClosureLine
{
    // About 2 in: an inside corner's allowance must not reach over the closure's own.
    private static readonly Length Clearance = Length.FromMillimetres(50);

    /// <summary>Whether both lines part an outline in two: each crosses it exactly twice, 50 mm or more from an inside corner, and runs
    /// along no edge.</summary>
    /// <param name="outline">The face's outline.</param>
    /// <param name="lap">How far the two panels lie over each other; zero where they meet.</param>
    /// <param name="same">Whether the lines must be equally long, as a zipper's edges must.</param>
    /// <param name="sideways">Whether the lines are plumb, in the middle of its width.</param>
    public static bool Divides(Outline outline, Length lap, bool same, bool sideways = false)
    {
        Length across = sideways ? outline.Width : outline.Depth;
        ImmutableArray<Edge> edges = [.. outline.FromBelow(outline.Sides).Select(side => new Edge(side.Name, side.Path, EdgeFinish.Raw))];
        return lap < across
            && !MeetsInsideCorner(edges, across, lap, sideways)
            && Part(edges, across, lap, EdgeFinish.Raw, sideways) is (var front, var back)
            && (!same || front.Before[^1].Length == back.After[^1].Length);
    }

    /// <summary>Whether a closure of the boxing may run round three sides: its own, and one beside each of its ends.</summary>
    public static bool RunsRound(Outline outline, Side side) => Circuit.HasThree(outline, side);

    // An inside corner's allowance would reach over the closure's own.
    private static bool MeetsInsideCorner(ImmutableArray<Edge> edges, Length depth, Length lap, bool sideways)
    {
        Length low = (depth - lap).HalfUp() - Clearance,
            high = (depth + lap).HalfUp() + Clearance;
        return Enumerable
            .Range(0, edges.Length)
            .Any(i =>
                (sideways ? edges[i].To.X : edges[i].To.Y) is var at
                && at > low
                && at < high
                && Math.IEEERemainder(edges[(i + 1) % edges.Length].Path[0].StartDirection - edges[i].Path[^1].EndDirection, 2 * Math.PI)
                    < -0.01
            );
    }

    /// <summary>Parts a face: the first parting's near part is the front or the left panel, the second's far part the other.</summary>
    internal static (Parting Front, Parting Back)? Part(
        ImmutableArray<Edge> edges,
        Length depth,
        Length lap,
        EdgeFinish inner,
        bool sideways = false
    )
    {
        Parting? At(Length at) =>
            sideways
                ? Parting.Plumb(edges, at, (EdgeName.End, inner), (EdgeName.Start, inner))
                : Parting.Level(edges, at, (EdgeName.Upper, inner), (EdgeName.Lower, inner));
        Parting? front = At(depth.HalfUp() + lap.HalfUp());
        Parting? back = front is null ? null : At(front.At - lap);
        return front is null || back is null ? null : (front, back);
    }
}
