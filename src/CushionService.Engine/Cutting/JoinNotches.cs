using System.Collections.Immutable;
using CushionService.Engine.Geometry;
using CushionService.Engine.Measures;
using CushionService.Engine.Patterns.Panels;

namespace CushionService.Engine.Cutting;

/// <summary>Notches of what is sewn to another edge and must match it: of the top, or of a wall, where a join comes of a boxing or of a
/// divided underside, and the double one in the middle of what is sewn to the back.</summary>
/// <remarks>Common practice, no source. Edges that are sewn together run against each other, for each panel is drawn counter-clockwise as
/// one looks at its outside; an underside that is cut the same as the top is drawn as the top is, and runs with it.</remarks>
internal static class JoinNotches
{
    /// <summary>What is nearer to a join or to another notch needs no notch of its own: one could not tell the two apart.</summary>
    public static readonly Length Nearest = Length.FromMillimetres(3);

    /// <summary>The pattern with the places of the joins on the edges of its top and its wall, and with the edges that meet the back named
    /// so.</summary>
    /// <param name="pattern">The pattern, its strips and faces joined.</param>
    /// <param name="isSymmetric">Whether the underside is cut the same as the top.</param>
    public static Pattern AddTo(Pattern pattern, bool isSymmetric)
    {
        Dictionary<EdgeRef, ImmutableArray<Length>>? met = null;
        HashSet<EdgeRef>? back = null;
        foreach (Seam seam in pattern.Seams)
        {
            if (seam.Kind is SeamKind.Plain or SeamKind.Gap or SeamKind.Zipper && IsBack(seam.One) != IsBack(seam.Other))
            {
                (back ??= []).UnionWith(IsBack(seam.One) ? seam.Other : seam.One);
            }

            if (seam.Kind is SeamKind.Plain or SeamKind.Gap or SeamKind.Zipper && seam.One.Length + seam.Other.Length > 2)
            {
                Meet(seam.One, seam.Other);
                Meet(seam.Other, seam.One);
            }
        }

        return met is null && back is null
            ? pattern
            : pattern with
            {
                Panels = [.. pattern.Panels.Select(panel => Notched(panel, met ?? [], back ?? []))],
            };

        void Meet(ImmutableArray<EdgeRef> face, ImmutableArray<EdgeRef> along)
        {
            if (along.Length < 2 || face.Any(edge => edge.Part.Kind is not (PartKind.Top or PartKind.Wall)))
            {
                return;
            }

            EdgeStretch[] parts = [.. along.Select(edge => StretchOf(pattern, edge)).OrderBy(stretch => stretch.Before)];
            Length whole = parts[0].Whole;
            // The stretches of one edge each, or the seam is not between two edges.
            if (
                parts.Any(part => part.Whole != whole)
                || face.Aggregate(Length.Zero, (sum, edge) => sum + pattern[edge.Part][edge.Edge].Length) != whole
            )
            {
                return;
            }

            bool runsWith = isSymmetric && along[0].Part.Kind == PartKind.Bottom && face[0].Part.Kind == PartKind.Top;
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

    private static bool IsBack(ImmutableArray<EdgeRef> edges) => edges.All(edge => edge.Edge.First == EdgeWord.Back);

    private static Panel Notched(Panel panel, Dictionary<EdgeRef, ImmutableArray<Length>> met, HashSet<EdgeRef> back) =>
        panel.Edges.Select(edge => new EdgeRef(panel.Part, edge.Name)).Any(edge => met.ContainsKey(edge) || back.Contains(edge))
            ? panel with
            {
                Edges =
                [
                    .. panel.Edges.Select(edge =>
                        edge with
                        {
                            Joins = met.GetValueOrDefault(new EdgeRef(panel.Part, edge.Name), []),
                            MeetsBack = back.Contains(new EdgeRef(panel.Part, edge.Name)),
                        }
                    ),
                ],
            }
            : panel;
}
