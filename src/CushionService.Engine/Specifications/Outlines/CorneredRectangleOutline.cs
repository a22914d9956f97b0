using System.Collections.Immutable;
using CushionService.Engine.Geometry;
using CushionService.Engine.Measures;

namespace CushionService.Engine.Specifications.Outlines;

/// <summary>A rectangle each of whose corners has a radius of its own, or none: P = 2(W + D) − (2 − π/2) Σr (general geometry).</summary>
/// <param name="Width">From left to right, more than the two radii on either side of it.</param>
/// <param name="Depth">From front to back, likewise.</param>
/// <param name="Radii">Four radii, counter-clockwise from the front left; at least one above zero.</param>
public sealed record CorneredRectangleOutline(Length Width, Length Depth, ImmutableArray<Length> Radii) : Outline
{
    private const double Quarter = Math.PI / 2;

    /// <inheritdoc />
    public override OutlineKind Kind => OutlineKind.RoundedRectangle;

    /// <inheritdoc />
    public override Length Width { get; } = Width;

    /// <inheritdoc />
    public override Length Depth { get; } = Depth;

    /// <inheritdoc />
    public override bool IsSymmetric => Radii[0] == Radii[1] && Radii[2] == Radii[3];

    /// <inheritdoc />
    public override IEnumerable<OutlineFault> Faults() =>
        Enumerable
            .Range(0, 4)
            .Select(OnSide)
            .OfType<OutlineFault>()
            .GroupBy(fault => fault.Field)
            .Select(faults => faults.MinBy(fault => fault.Below!.Value.Nanometres)!);

    // The larger of two corners is at fault where they use up the side between them; the second of two that are equal.
    private OutlineFault? OnSide(int i)
    {
        int next = (i + 1) % 4;
        (int at, int other) = Radii[i] > Radii[next] ? (i, next) : (next, i);
        Length side = i % 2 == 0 ? Width : Depth;
        // What the other leaves; half the side where that is too large by itself.
        Length limit = Radii[other] < side ? side - Radii[other] : Half(side);
        return Radii[at] >= limit ? new OutlineFault($"Corners[{at}]", limit, OutlineTexts.CornersOnSide(limit)) : null;
    }

    /// <inheritdoc />
    protected override ImmutableArray<OutlineSide> Draw()
    {
        (Length frontLeft, Length frontRight, Length backRight, Length backLeft) = (Radii[0], Radii[1], Radii[2], Radii[3]);
        var front = new Segment(At(frontLeft, Length.Zero), At(Width - frontRight, Length.Zero));
        var right = new Segment(At(Width, frontRight), At(Width, Depth - backRight));
        var back = new Segment(At(Width - backRight, Depth), At(backLeft, Depth));
        var left = new Segment(At(Length.Zero, Depth - backLeft), At(Length.Zero, frontLeft));
        return
        [
            new(EdgeName.Front, Side.Front, [front]),
            new(EdgeName.Right, Side.Right, [.. Corner(front, right), right, .. Corner(right, back)]),
            new(EdgeName.Back, Side.Back, [back]),
            new(EdgeName.Left, Side.Left, [.. Corner(back, left), left, .. Corner(left, front)]),
        ];
    }

    // A quarter circle, or nothing at a square corner.
    private static IEnumerable<Segment> Corner(Segment one, Segment next) =>
        one.To == next.From ? [] : [new Segment(one.To, next.From, Quarter)];
}
