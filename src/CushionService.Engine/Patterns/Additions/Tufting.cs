using System.Collections.Immutable;
using CushionService.Engine.Geometry;
using CushionService.Engine.Measures;
using CushionService.Engine.Patterns.Panels;
using CushionService.Engine.Specifications;
using CushionService.Engine.Specifications.Fabrics;
using CushionService.Engine.Specifications.Trimmings;

namespace CushionService.Engine.Patterns.Additions;

/// <summary>Tufts: a grid marked on both faces, fabric taken up where they are pulled deep, and the covers of their buttons.</summary>
internal static class Tufting
{
    private const int CoverAcrossButtons = 2;

    /// <summary>Adds the marks, the take-up and the covers.</summary>
    /// <param name="pattern">The cover; a divided face is not tufted.</param>
    /// <param name="cushion">The cushion, for its finished sizes.</param>
    /// <param name="tufts">The grid; it leaves out what lies outside the outline.</param>
    public static Pattern AddTo(Pattern pattern, CushionSpecification cushion, TuftSpecification tufts)
    {
        ImmutableArray<Point> grid = tufts.On(cushion.Width, cushion.Depth);
        (Length across, Length along) = tufts.TakeUpOf(cushion.Width, cushion.Depth);
        IEnumerable<Panel> panels = pattern.Panels.Select(panel =>
            panel.Part switch
            {
                { Kind: PartKind.Top, IsInner: false, Half: FaceHalf.Whole } => Marked(panel, grid, across, along),
                { Kind: PartKind.Bottom, IsInner: false, Half: FaceHalf.Whole } => Marked(
                    panel,
                    // The underside is drawn as it is seen from below, so a lopsided grid is mirrored: each tuft goes
                    // straight through.
                    cushion.Outline.IsSymmetric
                        ? grid
                        : [.. grid.Select(point => point with { X = cushion.Width - point.X })],
                    across,
                    along
                ),
                _ => panel,
            }
        );
        return pattern with { Panels = [.. panels, .. tufts.Covered ? [Cover(tufts)] : Array.Empty<Panel>()] };
    }

    private static Panel Marked(Panel panel, ImmutableArray<Point> grid, Length across, Length along) =>
        panel with
        {
            Marks = panel.Marks.AddRange(grid.Select(point => new PanelMark(MarkKind.Tuft, point, null, MarkPurpose.Tuft))),
            TakeUpAcross = panel.TakeUpAcross + across,
            TakeUpAlong = panel.TakeUpAlong + along,
            // What is taken up is spread to both sides of the middle, and the matching point moves with it.
            Match = panel.Match?.Moved(across.HalfUp(), along.HalfUp()),
        };

    // A circle of about twice the button's diameter (common practice, no source), cut from its square.
    private static Panel Cover(TuftSpecification tufts) =>
        new()
        {
            Part = new PartName(PartKind.ButtonCover),
            Role = FabricRole.Buttons,
            Copies = 2 * tufts.Count,
            Edges = PanelOutline.Rectangle(
                CoverAcrossButtons * tufts.ButtonDiameter,
                CoverAcrossButtons * tufts.ButtonDiameter,
                EdgeFinish.Raw,
                EdgeFinish.Raw,
                EdgeFinish.Raw,
                EdgeFinish.Raw
            ),
            Because = AdditionTexts.ButtonCover(tufts.ButtonDiameter, tufts.Count),
        };
}
