using System.Collections.Immutable;
using System.Runtime.CompilerServices;
using CushionService.Engine.Measures;

namespace CushionService.Engine.Patterns;

/// <summary>The panels of a cover and the seams that close it, in the order in which they are sewn.</summary>
/// <param name="Panels">By distinct parts.</param>
/// <param name="Seams">In sewing order.</param>
public sealed record Pattern(ImmutableArray<Panel> Panels, ImmutableArray<Seam> Seams)
{
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

        bool[][] joined = [.. Panels.Select(panel => new bool[panel.Edges.Length])];
        foreach (Seam seam in Seams)
        {
            Join(seam.RestsOnSeam ? [] : seam.One, joined);
            Join(seam.Other, joined);
            Require(seam.OtherFor(Sum(seam.One)) == Sum(seam.Other) - seam.Lap, $"{seam.One[0]} is not as long as {seam.Other[0]}.");
        }

        for (var i = 0; i < Panels.Length; i++)
        {
            Panel panel = Panels[i];
            for (var j = 0; j < panel.Edges.Length; j++)
            {
                Require(!panel.Edges[j].Finish.Joins || joined[i][j], $"{panel.Part}.{panel.Edges[j].Name} is in no seam.");
            }
        }

        return this;
    }

    private void Join(ImmutableArray<EdgeRef> edges, bool[][] joined)
    {
        foreach (EdgeRef named in edges)
        {
            int panel = IndexOf(named.Part), edge = Panels[panel].IndexOf(named.Edge);
            Require(Panels[panel].Edges[edge].Finish.Joins, $"{named} is in a seam but is not finished for one.");
            Require(!joined[panel][edge], $"{named} is in two seams.");
            joined[panel][edge] = true;
        }
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
