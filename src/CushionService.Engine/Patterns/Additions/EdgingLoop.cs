using System.Collections.Immutable;
using CushionService.Engine.Geometry;
using CushionService.Engine.Measures;
using CushionService.Engine.Patterns.Panels;
using CushionService.Engine.Specifications;
using CushionService.Engine.Specifications.Fabrics;
using CushionService.Engine.Specifications.Trimmings;

namespace CushionService.Engine.Patterns.Additions;

/// <summary>The seam line of an edging: all round a face, an end or a side panel, or up and down the corners.</summary>
/// <param name="Place">Which.</param>
/// <param name="Edges">The edges on the seam line, without laps.</param>
/// <param name="Length">Finished length, gathered edges as they are drawn up.</param>
/// <param name="IsClosed">Whether it returns to its start; otherwise each edge has an edging of its own, whose ends are caught in other
/// seams.</param>
public sealed record EdgingLoop(EdgingPlace Place, ImmutableArray<EdgeRef> Edges, Length Length, bool IsClosed)
{
    /// <summary>Length of a welt: a closed one's ends lie over each other, one of its own for each edge runs from raw edge to raw
    /// edge.</summary>
    /// <param name="cushion">The cushion.</param>
    public Length WeltLength(CushionSpecification cushion) =>
        Length + (IsClosed ? cushion.Practice.Trims.WeltOverlap : 2L * Edges.Length * cushion.SeamAllowance);

    /// <summary>The seam line: every seam that joins an edge of the face to something that is not of it, or every corner of the
    /// boxing.</summary>
    /// <exception cref="InvalidPatternException">The pattern has no such seam.</exception>
    /// <param name="pattern">A closed pattern.</param>
    /// <param name="place">Which seam line.</param>
    public static EdgingLoop Of(Pattern pattern, EdgingPlace place)
    {
        var edges = ImmutableArray.CreateBuilder<EdgeRef>();
        (Length length, bool closed) = (Length.Zero, place != EdgingPlace.Corners);
        // An inner cover has ends and corners like the cover, yet nothing edges it.
        foreach (Seam seam in pattern.Seams.Where(seam => !seam.RestsOnSeam && !seam.One[0].Part.IsInner))
        {
            bool one = HasEdging(pattern, seam.One[0], place),
                other = HasEdging(pattern, seam.Other[0], place);
            if (place == EdgingPlace.Corners ? seam.IsCorner : one != other)
            {
                // Where a seam has a lap, its other side is longer than the seam line: the one side tells the length.
                ImmutableArray<EdgeRef> side = other && seam.Lap == Length.Zero ? seam.Other : seam.One;
                edges.AddRange(side);
                length += side.Aggregate(Length.Zero, (sum, edge) => sum + DrawnUp(pattern, edge));
            }

            // A seam that runs across from the face to another panel, as at an opened notch, ends the edging.
            closed &= !one || !other || seam.One.Concat(seam.Other).All(edge => HasEdging(pattern, edge, place));
        }

        return edges.Count > 0
            ? new EdgingLoop(place, edges.ToImmutable(), length, closed)
            : throw new InvalidPatternException($"The pattern has no seam for an edging at the {place}.");
    }

    /// <summary>Whether an edge is of the face, end or side panel that a place names.</summary>
    /// <param name="pattern">The pattern that has the edge.</param>
    /// <param name="edge">The edge.</param>
    /// <param name="place">Which seam line; corners are of no face, so nothing is.</param>
    public static bool HasEdging(Pattern pattern, EdgeRef edge, EdgingPlace place) =>
        place switch
        {
            EdgingPlace.Top => pattern[edge.Part].Role == FabricRole.Top,
            EdgingPlace.Bottom => pattern[edge.Part].Role == FabricRole.Bottom,
            EdgingPlace.Left => IsOn(edge.Part, EdgeName.Left),
            EdgingPlace.Right => IsOn(edge.Part, EdgeName.Right),
            _ => false,
        };

    // Sides and ends are named by the run of the seam line that they lie on.
    private static bool IsOn(PartName part, EdgeName run) => part.Kind is PartKind.Side or PartKind.End && part.Run == run;

    // A gathered edge counts as long as it is once drawn up, for the edging is sewn to it then.
    private static Length DrawnUp(Pattern pattern, EdgeRef edge)
    {
        Panel panel = pattern[edge.Part];
        return panel.Gathers.FirstOrDefault(gather => gather.Edge == edge.Edge)?.To ?? panel[edge.Edge].Length;
    }
}
