using System.Collections.Immutable;
using CushionService.Engine.Geometry;
using CushionService.Engine.Measures;
using CushionService.Engine.Messages;
using CushionService.Engine.Specifications.Fabrics;

namespace CushionService.Engine.Patterns.Panels;

/// <summary>A finished outline, from (0, 0) upwards and to the right, with what happens at each edge. Its grain and its "up" run along
/// y.</summary>
public sealed record Panel
{
    /// <summary>What it becomes; distinct within the pattern.</summary>
    public required PartName Part { get; init; }

    /// <summary>The role that chooses its fabric.</summary>
    public required FabricRole Role { get; init; }

    /// <summary>Its edges, counter-clockwise, each starting where the one before ends.</summary>
    public required ImmutableArray<Edge> Edges
    {
        get;
        init
        {
            field = value;
            (Extent, IsRectangle) = (ExtentOf(value), IsRectangular(value));
        }
    }

    /// <summary>Marks that its edges do not show.</summary>
    public ImmutableArray<PanelMark> Marks { get; init; } = [];

    /// <summary>The point, on the panel or beyond it, that must lie on a motif for the panel to match its neighbours; null when it need not
    /// match.</summary>
    public Point? Match { get; init; }

    /// <summary>Why it does not carry the pattern on, or not over all of its edges.</summary>
    public MatchLimit MatchLimit { get; init; }

    /// <summary>Whether it is a strip that may be joined from shorter ones, and then where joins are best kept away from (along x); null
    /// when it may not.</summary>
    public ImmutableArray<StripStretch>? Stretches { get; init; }

    /// <summary>Where a strip that closes to a loop by itself is cut open, from where its construction begins it; zero for
    /// another.</summary>
    public Length CutOpenAt { get; init; }

    /// <summary>Layers that it is folded into across its width; 1 when it lies flat.</summary>
    public int Layers { get; init; } = 1;

    /// <summary>Layers that it is folded into along its height; 1 when it lies flat.</summary>
    public int LayersAlong { get; init; } = 1;

    /// <summary>How many of it one cover has.</summary>
    public int Copies { get; init; } = 1;

    /// <summary>How its size comes about, where its edges do not say it; null when they do.</summary>
    public Message? Because { get; init; }

    /// <summary>Whether it is added to the cover rather than part of its shell.</summary>
    public bool IsAddition => Role is not (FabricRole.Top or FabricRole.Bottom or FabricRole.Sides or FabricRole.InnerCover);

    /// <summary>Fabric that stitching into the panel draws in across: it is cut so much wider.</summary>
    public Length TakeUpAcross { get; init; }

    /// <summary>Fabric that stitching into the panel draws in along: it is cut so much longer.</summary>
    public Length TakeUpAlong { get; init; }

    /// <summary>Edges that are gathered before they are sewn.</summary>
    public ImmutableArray<Gather> Gathers { get; init; } = [];

    /// <summary>Whether a part of it hangs upside down on the made cushion, so that a one-way print shows it.</summary>
    public bool Inverts { get; init; }

    /// <summary>Finished extent across; outlines are split where an arc reaches furthest, so corners tell it.</summary>
    public Length Width => Extent.X;

    /// <summary>Finished extent along.</summary>
    public Length Height => Extent.Y;

    private Point Extent { get; init; }

    /// <summary>Whether every edge is level or plumb and the outline is a rectangle.</summary>
    public bool IsRectangle { get; private init; }

    /// <summary>The edge of that name.</summary>
    /// <exception cref="InvalidPatternException">There is none.</exception>
    public Edge this[EdgeName name] => Edges[IndexOf(name)];

    /// <summary>Where the edge of that name is among the edges.</summary>
    /// <exception cref="InvalidPatternException">There is none.</exception>
    internal int IndexOf(EdgeName name)
    {
        for (var i = 0; i < Edges.Length; i++)
        {
            if (Edges[i].Name == name)
            {
                return i;
            }
        }

        throw new InvalidPatternException($"Panel {Part} has no edge {name}.");
    }

    /// <summary>The deepest allowance on the edges that face one way.</summary>
    /// <param name="facing">One of the four sides of the panel.</param>
    /// <returns>Zero where no edge faces that way.</returns>
    public Length Allowance(EdgeFacing facing)
    {
        var deepest = Length.Zero;
        foreach (Edge edge in Edges)
        {
            if (edge.Facing == facing)
            {
                deepest = Length.Max(deepest, edge.Finish.Allowance);
            }
        }

        return deepest;
    }

    /// <summary>How far an outline reaches, across and along.</summary>
    internal static Point ExtentOf(ImmutableArray<Edge> edges)
    {
        Point extent = edges[0].To;
        foreach (Edge edge in edges)
        {
            foreach (Segment segment in edge.Path)
            {
                extent = new Point(Length.Max(extent.X, segment.To.X), Length.Max(extent.Y, segment.To.Y));
            }
        }

        return extent;
    }

    private static bool IsRectangular(ImmutableArray<Edge> edges)
    {
        var corners = 0;
        for (var i = 0; i < edges.Length; i++)
        {
            EdgeFacing facing = edges[i].Facing;
            corners +=
                facing == EdgeFacing.Aslant ? 5
                // Neighbours that face the same way are one side; an edge that slants makes the sum too large whatever
                // the others are.
                : facing != edges[i + 1 == edges.Length ? 0 : i + 1].Facing ? 1
                : 0;
        }

        return corners == 4;
    }
}
