using System.Collections.Immutable;
using CushionService.Engine.Measures;
using CushionService.Engine.Patterns.Panels;

namespace CushionService.Engine.Cutting;

/// <summary>Notches of the top where a join comes of what is sewn to it: of a boxing, or of a divided underside.</summary>
/// <remarks>Common practice, no source. Edges that are sewn together run against each other, for each panel is drawn counter-clockwise as
/// one looks at its outside; an underside that is cut the same as the top is drawn as the top is, and runs with it.</remarks>
internal static class JoinNotches
{
    /// <summary>What is nearer to a join or to another notch needs no notch of its own: one could not tell the two apart.</summary>
    public static readonly Length Nearest = Length.FromMillimetres(3);

    /// <summary>The pattern with the places of the joins on the edges of its top.</summary>
    /// <param name="pattern">The pattern, its strips and faces joined.</param>
    /// <param name="isSymmetric">Whether the underside is cut the same as the top.</param>
    public static Pattern AddTo(Pattern pattern, bool isSymmetric)
    {
        Dictionary<EdgeRef, ImmutableArray<Length>>? met = null;
        foreach (Seam seam in pattern.Seams)
        {
            if (seam.Kind is SeamKind.Plain or SeamKind.Gap or SeamKind.Zipper && seam.One.Length + seam.Other.Length > 2)
            {
                Meet(seam.One, seam.Other);
                Meet(seam.Other, seam.One);
            }
        }

        return met is null ? pattern : pattern with { Panels = [.. pattern.Panels.Select(panel => Notched(panel, met))] };

        void Meet(ImmutableArray<EdgeRef> face, ImmutableArray<EdgeRef> along)
        {
            if (along.Length < 2 || face.Any(edge => edge.Part.Kind != PartKind.Top))
            {
                return;
            }

            EdgeStretch[] parts = [.. along.Select(edge => StretchOf(pattern, edge)).OrderBy(stretch => stretch.Before)];
            Length whole = parts[0].Whole;
            // The stretches of one edge each, or the seam is not between two edges.
            if (parts.Any(part => part.Whole != whole) || face.Any(edge => StretchOf(pattern, edge).Whole != whole))
            {
                return;
            }

            bool runsWith = isSymmetric && along[0].Part.Kind == PartKind.Bottom;
            foreach (Length join in Joins(pattern, along))
            {
                Length at = runsWith ? join : whole - join;
                foreach (EdgeRef edge in face)
                {
                    (Length before, Length length) = (StretchOf(pattern, edge).Before, pattern[edge.Part][edge.Edge].Length);
                    if (at > before + Nearest && at < before + length - Nearest)
                    {
                        met ??= [];
                        met[edge] = met.TryGetValue(edge, out ImmutableArray<Length> known) ? known.Add(at - before) : [at - before];
                    }
                }
            }
        }
    }

    // Where one stretch ends and the next begins; stretches that overlap have no join.
    private static IEnumerable<Length> Joins(Pattern pattern, ImmutableArray<EdgeRef> along)
    {
        HashSet<Length> ends = [.. along.Select(edge => StretchOf(pattern, edge).Before + pattern[edge.Part][edge.Edge].Length)];
        return along.Select(edge => StretchOf(pattern, edge).Before).Where(before => before > Length.Zero && ends.Contains(before)).Order();
    }

    private static EdgeStretch StretchOf(Pattern pattern, EdgeRef edge) => pattern[edge.Part][edge.Edge].Stretch;

    private static Panel Notched(Panel panel, Dictionary<EdgeRef, ImmutableArray<Length>> met) =>
        panel.Edges.Any(edge => met.ContainsKey(new EdgeRef(panel.Part, edge.Name)))
            ? panel with
            {
                Edges =
                [
                    .. panel.Edges.Select(edge =>
                        met.TryGetValue(new EdgeRef(panel.Part, edge.Name), out ImmutableArray<Length> joins)
                            ? edge with
                            {
                                Joins = joins,
                            }
                            : edge
                    ),
                ],
            }
            : panel;
}
