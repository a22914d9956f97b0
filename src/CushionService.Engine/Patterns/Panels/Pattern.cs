using System.Collections.Immutable;
using CushionService.Engine.Measures;

namespace CushionService.Engine.Patterns.Panels;

/// <summary>The panels of a cover and the seams that close it, in the order in which they are sewn.</summary>
/// <param name="Panels">By distinct parts.</param>
/// <param name="Seams">In sewing order.</param>
public sealed record Pattern(ImmutableArray<Panel> Panels, ImmutableArray<Seam> Seams)
{
    // A larger pattern keeps its marks on the heap.
    private const int MostOnStack = 256;

    /// <summary>The panel of that part.</summary>
    /// <exception cref="InvalidPatternException">There is none.</exception>
    public Panel this[PartName part] => Panels[IndexOf(part)];

    /// <summary>Finished length of a seam.</summary>
    /// <param name="seam">A seam of this pattern; its one side tells the length, which has neither lap nor
    /// fullness.</param>
    /// <returns>Where its edges are gathered first, the length that they are drawn up to.</returns>
    public Length LengthOf(Seam seam)
    {
        Length length = Sum(seam.One);
        foreach (EdgeRef edge in seam.One)
        {
            Panel panel = this[edge.Part];
            if (!panel.Gathers.IsEmpty && panel.Gathers.FirstOrDefault(gather => gather.Edge == edge.Edge) is { } gather)
            {
                length += gather.To - panel[edge.Edge].Length;
            }
        }

        return length;
    }

    /// <summary>Makes sure that the pattern closes: every outline returns to its start, every edge that is to be joined is in exactly
    /// one seam besides those that rest on it, and the two sides of each seam agree but for the stated lap and fullness.</summary>
    /// <exception cref="InvalidPatternException">Names the invariant that is broken.</exception>
    public Pattern Closed()
    {
        foreach (Panel panel in Panels)
        {
            RequireOutline(panel);
        }

        int edges = 0;
        foreach (Panel panel in Panels)
        {
            edges += panel.Edges.Length;
        }

        // The edges of all panels in one row.
        Span<bool> joined = edges <= MostOnStack ? stackalloc bool[edges] : new bool[edges];
        foreach (Seam seam in Seams)
        {
            Length one = seam.RestsOnSeam ? Sum(seam.One) : Join(seam.One, joined);
            if (seam.OtherFor(one) != Join(seam.Other, joined) - seam.Lap)
            {
                throw new InvalidPatternException($"{seam.One[0]} is not as long as {seam.Other[0]}.");
            }
        }

        int at = 0;
        foreach (Panel panel in Panels)
        {
            foreach (Edge edge in panel.Edges)
            {
                if (!joined[at++] && edge.Finish.Joins)
                {
                    throw new InvalidPatternException($"{panel.Part}.{edge.Name} is in no seam.");
                }
            }
        }

        return this;
    }

    // Marks the edges as joined; an edge that is joined already, or is not finished to be joined, breaks the pattern.
    // Returns the edges' length.
    private Length Join(ImmutableArray<EdgeRef> edges, Span<bool> joined)
    {
        var sum = Length.Zero;
        foreach (EdgeRef named in edges)
        {
            Edge edge = Find(named, out int at);
            if (!edge.Finish.Joins || joined[at])
            {
                throw new InvalidPatternException(
                    joined[at] ? $"{named} is in two seams." : $"{named} is in a seam but is not finished for one."
                );
            }

            joined[at] = true;
            sum += edge.Length;
        }

        return sum;
    }

    // The edge, and where it is in the row of all edges.
    private Edge Find(EdgeRef named, out int at)
    {
        int before = 0;
        foreach (Panel panel in Panels)
        {
            if (panel.Part == named.Part)
            {
                int index = panel.IndexOf(named.Edge);
                at = before + index;
                return panel.Edges[index];
            }

            before += panel.Edges.Length;
        }

        throw Missing(named.Part);
    }

    // An outline that does not end where it began, or has an edge twice, is a fault of the construction that drew it.
    private static void RequireOutline(Panel panel)
    {
        for (var i = 0; i < panel.Edges.Length; i++)
        {
            Edge edge = panel.Edges[i];
            if (edge.To != panel.Edges[i + 1 == panel.Edges.Length ? 0 : i + 1].From)
            {
                throw new InvalidPatternException($"{panel.Part}.{edge.Name} does not meet the next edge.");
            }

            for (var j = 1; j < edge.Path.Length; j++)
            {
                if (edge.Path[j].From != edge.Path[j - 1].To)
                {
                    throw new InvalidPatternException($"{panel.Part}.{edge.Name} is broken.");
                }
            }

            if (edge.Length <= Length.Zero)
            {
                throw new InvalidPatternException($"{panel.Part}.{edge.Name} has no length.");
            }
        }
    }

    private int IndexOf(PartName part)
    {
        for (var i = 0; i < Panels.Length; i++)
        {
            if (Panels[i].Part == part)
            {
                return i;
            }
        }

        throw Missing(part);
    }

    private static InvalidPatternException Missing(PartName part) => new($"The pattern has no panel {part}.");

    // Finished length of edges that are sewn as one.
    private Length Sum(ImmutableArray<EdgeRef> edges)
    {
        var sum = Length.Zero;
        foreach (EdgeRef edge in edges)
        {
            sum += this[edge.Part][edge.Edge].Length;
        }

        return sum;
    }
}
