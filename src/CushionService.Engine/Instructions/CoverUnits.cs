using System.Collections.Immutable;
using CushionService.Engine.Patterns.Panels;

namespace CushionService.Engine.Instructions;

/// <summary>Finds the units of a cover: parts that strip joins, a closure or gores make one.</summary>
internal static class CoverUnits
{
    /// <summary>The units, in the pattern's order.</summary>
    /// <param name="pattern">The pattern of one cover.</param>
    public static ImmutableArray<CoverUnit> Of(Pattern pattern)
    {
        PartName[] parts = [.. pattern.Panels.Where(panel => !panel.IsAddition).Select(panel => panel.Part)];
        // Each part begins as a unit of its own; uniting two gives all parts of one the number of the other. A cover has few parts.
        int[] unit = [.. Enumerable.Range(0, parts.Length)];
        foreach (Seam seam in pattern.Seams.Where(Unites))
        {
            PartName[] joined = [.. seam.One.Concat(seam.Other).Select(edge => edge.Part)];
            foreach (PartName part in joined)
            {
                Unite(joined[0], part);
            }
        }

        // Flaps and hemmed strips lie over each other and have no seam between them; the panels of a face are one.
        foreach (
            PartKind[] kinds in (PartKind[][])
                [
                    [PartKind.Top, PartKind.Gore],
                    [PartKind.Bottom],
                    [PartKind.ClosureUpper, PartKind.ClosureLower],
                ]
        )
        {
            PartName[] same = [.. parts.Where(part => kinds.Contains(part.Kind))];
            foreach (PartName part in same)
            {
                Unite(same[0], part);
            }
        }

        return
        [
            .. parts
                .Select((part, i) => (Part: part, Unit: unit[i]))
                .GroupBy(one => one.Unit, one => one.Part)
                .Select(group => new CoverUnit(KindOf([.. group]), [.. group])),
        ];

        void Unite(PartName one, PartName other)
        {
            (int from, int to) = (unit[Array.IndexOf(parts, other)], unit[Array.IndexOf(parts, one)]);
            for (var i = 0; i < unit.Length; i++)
            {
                unit[i] = unit[i] == from ? to : unit[i];
            }
        }

        bool Unites(Seam seam) =>
            !pattern[seam.Other[0].Part].IsAddition && (seam.Kind == SeamKind.StripJoin || CoverSeams.IsInSection(pattern, seam));
    }

    // The first part in the pattern's order decides. A side that is one with other sides is a boxing; one by itself is a single panel, also
    // where it is joined from several.
    private static CoverUnitKind KindOf(ImmutableArray<PartName> parts) =>
        parts[0].Kind switch
        {
            PartKind.Top or PartKind.Gore => CoverUnitKind.Top,
            PartKind.Bottom => CoverUnitKind.Bottom,
            PartKind.Body => CoverUnitKind.Body,
            PartKind.Wall => CoverUnitKind.Wall,
            PartKind.Boxing => CoverUnitKind.Boxing,
            _ when parts.Any(part => part.Kind is PartKind.Side or PartKind.Boxing)
                    && parts.Any(part => !part.IsOf(CoverSeams.Base(parts[0]))) => CoverUnitKind.Boxing,
            PartKind.ZipperUpper or PartKind.ClosureUpper => CoverUnitKind.Section,
            _ => CoverUnitKind.Single,
        };
}
