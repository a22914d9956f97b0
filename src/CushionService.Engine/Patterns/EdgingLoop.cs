using System.Collections.Immutable;
using CushionService.Engine.Measures;
using CushionService.Engine.Specifications;

namespace CushionService.Engine.Patterns;

/// <summary>The seam line round a face, in which an edging stands.</summary>
/// <param name="Place">The face.</param>
/// <param name="Edges">The edges on the seam line, without laps.</param>
/// <param name="Length">Finished length all round.</param>
public sealed record EdgingLoop(EdgingPlace Place, ImmutableArray<EdgeRef> Edges, Length Length)
{
    /// <summary>The loop round a face: every seam that joins an edge of the face to something that is not of the face.</summary>
    /// <exception cref="InvalidPatternException">The pattern has no such face.</exception>
    public static EdgingLoop Of(Pattern pattern, EdgingPlace place)
    {
        string face = place == EdgingPlace.Top ? "top" : "bottom";
        var edges = ImmutableArray.CreateBuilder<EdgeRef>();
        var length = Length.Zero;
        foreach (Seam seam in pattern.Seams)
        {
            bool one = IsOf(seam.One[0], face), other = IsOf(seam.Other[0], face);
            if (one != other && !seam.RestsOnSeam)
            {
                edges.AddRange(other && seam.Lap == Length.Zero ? seam.Other : seam.One);
                length += pattern.LengthOf(seam);
            }
        }

        return edges.Count > 0 ? new EdgingLoop(place, edges.ToImmutable(), length) : throw new InvalidPatternException($"Nothing is sewn to the {face}.");
    }

    private static bool IsOf(EdgeRef edge, string face) =>
        edge.Part.StartsWith(face, StringComparison.Ordinal) && (edge.Part.Length == face.Length || edge.Part[face.Length] == '-');
}
