using System.Collections.Immutable;
using CushionService.Engine.Geometry;
using CushionService.Engine.Measures;

namespace CushionService.Engine.Specifications.Outlines;

/// <summary>An ellipse, drawn as arcs whose ends and directions lie on it.</summary>
/// <param name="Width">From left to right, above zero.</param>
/// <param name="Depth">From front to back, above zero.</param>
public sealed record OvalOutline(Length Width, Length Depth) : Outline
{
    private const int ArcsInQuarter = 6;

    /// <inheritdoc />
    public override OutlineKind Kind => OutlineKind.Oval;

    /// <inheritdoc />
    public override Length Width { get; } = Width;

    /// <inheritdoc />
    public override Length Depth { get; } = Depth;

    /// <inheritdoc />
    protected override ImmutableArray<OutlineSide> Draw() =>
        [
            new(EdgeName.Front, Side.Front, Arcs(2 * ArcsInQuarter, 4 * ArcsInQuarter)),
            new(EdgeName.Back, Side.Back, Arcs(0, 2 * ArcsInQuarter)),
        ];

    private ImmutableArray<Segment> Arcs(int from, int to) =>
        [.. Enumerable.Range(from, to - from).Select(i => new Segment(Corner(i), Corner(i + 1), Direction(i + 1) - Direction(i)))];

    // The last corner is the first, to the nanometre.
    private Point Corner(int i)
    {
        double angle = Angle(i % (4 * ArcsInQuarter)),
            across = Width.Nanometres / 2.0,
            along = Depth.Nanometres / 2.0;
        return At(
            Length.FromNanometres((long)Math.Round(across + (across * Math.Cos(angle)))),
            Length.FromNanometres((long)Math.Round(along + (along * Math.Sin(angle))))
        );
    }

    // The direction of the ellipse at a corner, growing all the way round.
    private double Direction(int i)
    {
        double angle = Angle(i),
            turn = Math.Atan2(Depth.Nanometres * Math.Cos(angle), -Width.Nanometres * Math.Sin(angle));
        return turn + (2 * Math.PI * Math.Round((angle + (Math.PI / 2) - turn) / (2 * Math.PI)));
    }

    private static double Angle(int i) => i * Math.PI / (2 * ArcsInQuarter);
}
