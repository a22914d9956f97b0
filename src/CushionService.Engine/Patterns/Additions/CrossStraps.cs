using System.Collections.Immutable;
using CushionService.Engine.Patterns.Panels;
using CushionService.Engine.Specifications;
using CushionService.Engine.Specifications.Fabrics;
using CushionService.Engine.Specifications.Trimmings;

namespace CushionService.Engine.Patterns.Additions;

/// <summary>Straps across the underside, caught at both ends in the left and the right seam.</summary>
internal static class CrossStraps
{
    /// <summary>Adds the straps and the marks where their ends are caught.</summary>
    /// <param name="pattern">The cover.</param>
    /// <param name="cushion">The cushion, for its sides and its practice.</param>
    /// <param name="straps">How many and how wide; they divide the underside's depth evenly, and lie level.</param>
    public static Pattern AddTo(Pattern pattern, CushionSpecification cushion, StrapSpecification straps)
    {
        var caught = EdgeFinish.Caught(cushion.SeamAllowance);
        Panel strap = NarrowStrip.Of(
            new PartName(PartKind.Strap),
            FabricRole.Straps,
            straps.Count,
            straps.Make,
            cushion.Practice.Trims.TubeSeam,
            straps.Width,
            straps.Length,
            caught,
            caught
        );
        Panel bottom = pattern[PartName.Bottom];
        ImmutableArray<PanelMark> ends =
        [
            .. StrapLevels
                .Of(bottom.Edges.SelectMany(edge => edge.Path), straps.Count)
                .SelectMany(strap => new[] { strap.Left, strap.Right })
                .Select(end => new PanelMark(MarkKind.TieEnd, end, null, MarkPurpose.CatchStrap)),
        ];
        pattern = pattern with { Panels = pattern.Panels.Replace(bottom, bottom with { Marks = bottom.Marks.AddRange(ends) }) };
        return pattern with { Panels = pattern.Panels.Add(strap) };
    }
}
