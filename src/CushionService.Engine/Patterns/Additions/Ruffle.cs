using System.Collections.Immutable;
using CushionService.Engine.Geometry;
using CushionService.Engine.Measures;
using CushionService.Engine.Patterns.Panels;
using CushionService.Engine.Specifications;
using CushionService.Engine.Specifications.Fabrics;
using CushionService.Engine.Specifications.Trimmings;

namespace CushionService.Engine.Patterns.Additions;

/// <summary>A ruffle: a loop of fullness times the seam line, gathered into it. Folded, it is cut twice its depth and two seam allowances
/// wide, and both raw edges are gathered as one; single, its depth, a seam allowance and a double hem.</summary>
/// <remarks>Strip length = r × P (follows from the fullness). Very soft fabric takes about 3, fabric with some body about 2 (The New
/// Dressmaker, 1921, chapter 28).</remarks>
internal static class Ruffle
{
    /// <summary>Adds a loop for each seam that has one, and the seams that gather it.</summary>
    /// <param name="pattern">The cover.</param>
    /// <param name="cushion">The cushion, for its allowance and hem.</param>
    /// <param name="ruffle">Its depth, its fullness, and the seams that it is in.</param>
    public static Pattern AddTo(Pattern pattern, CushionSpecification cushion, RuffleSpecification ruffle)
    {
        var seam = EdgeFinish.Seam(cushion.SeamAllowance);
        bool folded = ruffle.Lining == RuffleLining.Folded;
        Length height = folded ? 2 * ruffle.Depth : ruffle.Depth;
        foreach (EdgingLoop loop in ruffle.At.Select(place => EdgingLoop.Of(pattern, place)))
        {
            var part = new PartName(PartKind.Ruffle) { Place = ruffle.At.Length == 1 ? null : loop.Place };
            var gathering = new Seam(SeamKind.Gathered, loop.Edges, [new EdgeRef(part, EdgeName.Inner)]) { Fullness = ruffle.Fullness };
            // With several places each has a ruffle of its own, named by its place.
            Length strip = gathering.OtherFor(loop.Length);
            var panel = new Panel
            {
                Part = part,
                Role = FabricRole.Edging,
                LayersAlong = folded ? 2 : 1,
                Edges = new PanelOutline()
                    .East(EdgeName.Inner, strip, seam)
                    .North(EdgeName.End, height, seam)
                    .West(EdgeName.Outer, strip, folded ? seam : EdgeFinish.DoubleHem(cushion.Practice.Trims.RuffleHem))
                    .South(EdgeName.Start, height, seam)
                    .Edges(),
                Stretches = [new StripStretch(strip, false)],
                Because = AdditionTexts.Ruffle(
                    decimal.Round((decimal)ruffle.Fullness.Numerator / (decimal)ruffle.Fullness.Denominator, 3),
                    loop.Length,
                    strip
                ),
                Marks = folded ? [Fold(strip, ruffle.Depth)] : [],
            };
            var closing = new Seam(SeamKind.StripJoin, new EdgeRef(part, EdgeName.End), new EdgeRef(part, EdgeName.Start));
            // Both raw edges of a folded ruffle are gathered as one, so the pattern has two gathered seams on the same
            // seam line.
            ImmutableArray<Seam> seams = folded
                ? [closing, gathering, gathering with { Other = [new EdgeRef(part, EdgeName.Outer)] }]
                : [closing, gathering];
            pattern = pattern with { Panels = pattern.Panels.Add(panel), Seams = pattern.Seams.AddRange(seams) };
        }

        return pattern;
    }

    private static PanelMark Fold(Length strip, Length depth) =>
        new(MarkKind.FoldLine, new Geometry.Point(Length.Zero, depth), new Geometry.Point(strip, depth), MarkPurpose.FoldLengthwise);
}
