using System.Collections.Immutable;
using CushionService.Engine.Geometry;
using CushionService.Engine.Measures;

namespace CushionService.Engine.Patterns.Panels;

/// <summary>Walks round a panel counter-clockwise from its lower left corner, or from a given corner, edge by edge. Stretches without
/// length are left out.</summary>
/// <param name="start">Where it starts.</param>
/// <param name="edges">How many edges it has, as far as is known.</param>
internal sealed class PanelOutline(Point start = default, int edges = 4)
{
    private readonly ImmutableArray<Edge>.Builder _edges = ImmutableArray.CreateBuilder<Edge>(edges);

    // Where the next edge starts; the walk must be counter-clockwise and end where it began.
    private Point _at = start;

    /// <summary>Starts at a point.</summary>
    public PanelOutline(Length x, Length y)
        : this(new Point(x, y)) { }

    /// <summary>An edge with a finish of the same kind on each of its four sides.</summary>
    /// <param name="width">Finished, above zero.</param>
    /// <param name="height">Finished, above zero.</param>
    /// <param name="lower">The finish of the lower edge.</param>
    /// <param name="right">Of the right edge.</param>
    /// <param name="upper">Of the upper edge.</param>
    /// <param name="left">Of the left edge.</param>
    public static ImmutableArray<Edge> Rectangle(
        Length width,
        Length height,
        EdgeFinish lower,
        EdgeFinish right,
        EdgeFinish upper,
        EdgeFinish left
    ) =>
        new PanelOutline()
            .East(EdgeName.Lower, width, lower)
            .North(EdgeName.Right, height, right)
            .West(EdgeName.Upper, width, upper)
            .South(EdgeName.Left, height, left)
            .Edges();

    /// <summary>Adds an edge that runs right.</summary>
    /// <param name="name">Names the edge within its panel.</param>
    /// <param name="length">Finished length, at least zero.</param>
    /// <param name="finish">How the edge is finished.</param>
    public PanelOutline East(EdgeName name, Length length, EdgeFinish finish) => Go(name, length, Length.Zero, finish);

    /// <summary>Adds an edge that runs up, given as that of <see cref="East"/> is.</summary>
    /// <param name="name">Names the edge within its panel.</param>
    /// <param name="length">Finished length, at least zero.</param>
    /// <param name="finish">How the edge is finished.</param>
    public PanelOutline North(EdgeName name, Length length, EdgeFinish finish) => Go(name, Length.Zero, length, finish);

    /// <summary>Adds an edge that runs left.</summary>
    /// <param name="name">Names the edge within its panel.</param>
    /// <param name="length">Finished length, at least zero.</param>
    /// <param name="finish">How the edge is finished.</param>
    public PanelOutline West(EdgeName name, Length length, EdgeFinish finish) => Go(name, -length, Length.Zero, finish);

    /// <summary>Adds an edge that runs down.</summary>
    /// <param name="name">Names the edge within its panel.</param>
    /// <param name="length">Finished length, at least zero.</param>
    /// <param name="finish">How the edge is finished.</param>
    public PanelOutline South(EdgeName name, Length length, EdgeFinish finish) => Go(name, Length.Zero, -length, finish);

    /// <summary>Straight to a point.</summary>
    public PanelOutline Towards(EdgeName name, Length x, Length y, EdgeFinish finish) => Go(name, x - _at.X, y - _at.Y, finish);

    /// <summary>The edges walked so far. It takes them out, so it is called once.</summary>
    public ImmutableArray<Edge> Edges() => _edges.DrainToImmutable();

    private PanelOutline Go(EdgeName name, Length right, Length up, EdgeFinish finish)
    {
        if (right != Length.Zero || up != Length.Zero)
        {
            Point to = _at.Moved(right, up);
            _edges.Add(new Edge(name, _at, to, finish));
            _at = to;
        }

        return this;
    }
}
