using System.Collections.Immutable;
using CushionService.Engine.Measures;
using CushionService.Engine.Patterns.Panels;
using CushionService.Engine.Specifications;
using CushionService.Engine.Specifications.Fabrics;
using CushionService.Engine.Specifications.Trimmings;

namespace CushionService.Engine.Patterns.Additions;

/// <summary>Straps across the underside, caught at both ends in the left and the right seam.</summary>
internal static class CrossStraps
{
    // Crossings of slanted sides are exact to a nanometre or two.
    private static readonly Length Sliver = Length.FromNanometres(1000);

    /// <summary>Adds the straps and the marks where their ends are caught.</summary>
    /// <param name="pattern">The cover.</param>
    /// <param name="cushion">The cushion, for its sides and its practice.</param>
    /// <param name="straps">How many and how wide; they divide the underside's depth evenly, and lie level.</param>
    public static Pattern AddTo(Pattern pattern, CushionSpecification cushion, StrapSpecification straps)
    {
        Length[] lengths =
        [
            .. StrapLevels
                .Of(cushion.Outline.Sides.SelectMany(side => side.Path), straps.Count)
                .Select(line => straps.Length ?? line.Right.X - line.Left.X),
        ];
        // Where an outline narrows each has a length of its own, and a number from the front to tell them apart.
        IEnumerable<Panel> strips =
            lengths.Max() - lengths.Min() < Sliver
                ? [Strip(0, straps.Count, lengths.Max())]
                : lengths.Select((length, i) => Strip(i + 1, 1, length));
        Panel bottom = pattern[PartName.Bottom];
        ImmutableArray<PanelMark> ends =
        [
            .. StrapLevels
                .Of(bottom.Edges.SelectMany(edge => edge.Path), straps.Count)
                .SelectMany(strap => new[] { strap.Left, strap.Right })
                .Select(end => new PanelMark(MarkKind.TieEnd, end, null, MarkPurpose.CatchStrap)),
        ];
        pattern = pattern with { Panels = pattern.Panels.Replace(bottom, bottom with { Marks = bottom.Marks.AddRange(ends) }) };
        return pattern with { Panels = pattern.Panels.AddRange(strips) };

        Panel Strip(int number, int copies, Length length)
        {
            var caught = EdgeFinish.Caught(cushion.SeamAllowance);
            return NarrowStrip.Of(
                new PartName(PartKind.Strap) { Number = number },
                FabricRole.Straps,
                copies,
                straps.Make,
                cushion.Practice.Trims.TubeSeam,
                straps.Width,
                length,
                caught,
                caught
            );
        }
    }
}
