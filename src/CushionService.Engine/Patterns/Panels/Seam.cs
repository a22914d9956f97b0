using System.Collections.Immutable;
using CushionService.Engine.Measures;

namespace CushionService.Engine.Patterns.Panels;

/// <summary>Joins edges: the finished lengths of both sides agree exactly, but for an overlap or a fullness of the other side.</summary>
/// <param name="Kind">How they are joined.</param>
/// <param name="One">Edges that lie end to end on one side.</param>
/// <param name="Other">Edges on the other side, end to end or overlapping.</param>
/// <param name="Lap">How far edges of the other side lie over each other.</param>
public sealed record Seam(SeamKind Kind, ImmutableArray<EdgeRef> One, ImmutableArray<EdgeRef> Other, Length Lap = default)
{
    // Boxed: few seams are gathered, and every order makes many seams.
    private readonly object? _fullness;

    /// <summary>Finished length of the other side for each length of this one, where the other is gathered; null where they
    /// agree.</summary>
    public Fraction? Fullness
    {
        get => (Fraction?)_fullness;
        init => _fullness = value;
    }

    /// <summary>Whether it rests on another seam, which joins the edges of its one side to what lies beyond.</summary>
    public bool RestsOnSeam => Kind is SeamKind.Gathered or SeamKind.Inset;

    /// <summary>How long the other side must be, without its lap, for a length of the one side; up to a nanometre.</summary>
    /// <param name="one">Finished length of the one side.</param>
    public Length OtherFor(Length one) => Fullness is { } fullness ? Length.FromNanometres(fullness.CeilingOf(one.Nanometres)) : one;

    /// <summary>Whether it is at a corner of a boxing, from the bottom to the top.</summary>
    public bool IsCorner { get; init; }

    /// <summary>Joins one edge to one other.</summary>
    public Seam(SeamKind kind, EdgeRef one, EdgeRef other)
        : this(kind, [one], [other]) { }
}
