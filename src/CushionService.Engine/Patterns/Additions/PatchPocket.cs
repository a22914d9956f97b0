using System.Collections.Immutable;
using CushionService.Engine.Geometry;
using CushionService.Engine.Measures;
using CushionService.Engine.Patterns.Panels;
using CushionService.Engine.Patterns.Sections;
using CushionService.Engine.Specifications;
using CushionService.Engine.Specifications.Fabrics;
using CushionService.Engine.Specifications.Trimmings;

namespace CushionService.Engine.Patterns.Additions;

/// <summary>A patch pocket: turned under at three edges, a double hem at its mouth, sewn down in the middle of a side of the
/// boxing.</summary>
internal static class PatchPocket
{
    /// <summary>Adds the pocket, and the lines on the side that it is sewn down on.</summary>
    /// <param name="pattern">The cover.</param>
    /// <param name="cushion">The cushion, for its turn-under and hem.</param>
    /// <param name="pocket">Finished sizes, and the side that it is on.</param>
    /// <exception cref="InvalidPatternException">No single strip covers that side from top to bottom.</exception>
    public static Pattern AddTo(Pattern pattern, CushionSpecification cushion, PocketSpecification pocket)
    {
        BoxingSide side =
            BoxingSide.Of(pattern, cushion, pocket.Side)
            ?? throw new InvalidPatternException($"No single panel covers the {pocket.Side} side for a pocket.");
        Panel strip = pattern[side.Part];
        Length left = side.MiddleFor(pocket.Width) - pocket.Width.HalfUp(),
            low = (strip.Height - pocket.Height).HalfUp();
        Point lowLeft = new(left, low),
            lowRight = lowLeft.Moved(pocket.Width, Length.Zero);
        var turn = EdgeFinish.TurnIn(cushion.Practice.Trims.PocketTurnUnder);
        var patch = new Panel
        {
            Part = new PartName(PartKind.Pocket),
            Role = FabricRole.Pocket,
            Edges = PanelOutline.Rectangle(
                pocket.Width,
                pocket.Height,
                turn,
                turn,
                EdgeFinish.DoubleHem(cushion.Practice.Trims.PocketHem),
                turn
            ),
        };
        ImmutableArray<PanelMark> lines =
        [
            Line(lowLeft.Moved(Length.Zero, pocket.Height), lowLeft),
            Line(lowLeft, lowRight),
            Line(lowRight, lowRight.Moved(Length.Zero, pocket.Height)),
        ];
        return pattern with { Panels = pattern.Panels.Replace(strip, strip with { Marks = strip.Marks.AddRange(lines) }).Add(patch) };
    }

    // Three lines; the mouth of the pocket stays open and has none.
    private static PanelMark Line(Point from, Point to) => new(MarkKind.StitchLine, from, to, MarkPurpose.SewPocket);
}
