using System.Collections.Immutable;
using System.Runtime.CompilerServices;
using CushionService.Engine.Measures;

namespace CushionService.Engine.Patterns;

/// <summary>The panels of a cover and the seams that close it, in the order in which they are sewn.</summary>
/// <param name="Panels">By distinct parts.</param>
/// <param name="Seams">In sewing order.</param>
public sealed record Pattern(ImmutableArray<Panel> Panels, ImmutableArray<Seam> Seams)
{
    private const int MostOnStack = 256;

    /// <summary>The panel of that part.</summary>
    /// <exception cref="InvalidPatternException">There is none.</exception>
    public Panel this[string part] => Panels[IndexOf(part)];

    /// <summary>Finished length of a seam.</summary>
    public Length LengthOf(Seam seam) => Sum(seam.One);

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
            Require(seam.OtherFor(one) == Join(seam.Other, joined) - seam.Lap, $"{seam.One[0]} is not as long as {seam.Other[0]}.");
        }

        int at = 0;
        foreach (Panel panel in Panels)
        {
            foreach (Edge edge in panel.Edges)
            {
                Require(!edge.Finish.Joins || joined[at], $"{panel.Part}.{edge.Name} is in no seam.");
                at++;
            }
        }

        return this;
    }

    // Returns the edges' length.
    private Length Join(ImmutableArray<EdgeRef> edges, Span<bool> joined)
    {
        var sum = Length.Zero;
        foreach (EdgeRef named in edges)
        {
            int panel = IndexOf(named.Part), at = Panels[panel].IndexOf(named.Edge);
            Edge edge = Panels[panel].Edges[at];
            for (int before = 0; before < panel; before++)
            {
                at += Panels[before].Edges.Length;
            }

            Require(edge.Finish.Joins, $"{named} is in a seam but is not finished for one.");
            Require(!joined[at], $"{named} is in two seams.");
            joined[at] = true;
            sum += edge.Length;
        }

        return sum;
    }

    private static void RequireOutline(Panel panel)
    {
        for (var i = 0; i < panel.Edges.Length; i++)
        {
            Edge edge = panel.Edges[i];
            Require(edge.To == panel.Edges[(i + 1) % panel.Edges.Length].From, $"{panel.Part}.{edge.Name} does not meet the next edge.");
            for (var j = 1; j < edge.Path.Length; j++)
            {
                Require(edge.Path[j].From == edge.Path[j - 1].To, $"{panel.Part}.{edge.Name} is broken.");
            }

            Require(edge.Length > Length.Zero, $"{panel.Part}.{edge.Name} has no length.");
        }
    }

    private static void Require(bool holds, [InterpolatedStringHandlerArgument(nameof(holds))] ref BrokenInvariant otherwise)
    {
        if (!holds)
        {
            throw new InvalidPatternException(otherwise.ToStringAndClear());
        }
    }

    private int IndexOf(string part)
    {
        for (var i = 0; i < Panels.Length; i++)
        {
            if (Panels[i].Part == part)
            {
                return i;
            }
        }

        throw new InvalidPatternException($"The pattern has no panel {part}.");
    }

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
