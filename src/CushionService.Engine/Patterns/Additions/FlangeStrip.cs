using System.Collections.Immutable;
using CushionService.Engine.Geometry;
using CushionService.Engine.Measures;
using CushionService.Engine.Patterns.Panels;
using CushionService.Engine.Specifications;
using CushionService.Engine.Specifications.Fabrics;
using CushionService.Engine.Specifications.Outlines;
using CushionService.Engine.Specifications.Trimmings;

namespace CushionService.Engine.Patterns.Additions;

/// <summary>A flange set into the seam round the top: for each side a strip twice its depth, folded lengthwise, its ends mitred to the
/// next.</summary>
/// <remarks>On a side of length e between interior angles a and b the fold is e + f (cot(a/2) + cot(b/2)) long for a depth f, as the offset
/// of an outline is (general geometry).</remarks>
public static class FlangeStrip
{
    /// <summary>Whether every strip has a fold, so that no inside corner uses one up; false on curves, which a flat strip cannot
    /// follow.</summary>
    /// <param name="outline">The finished outline of the top.</param>
    /// <param name="depth">Finished depth of the flange, above zero.</param>
    public static bool Fits(Outline outline, Length depth)
    {
        ImmutableArray<OutlineSide> sides = outline.Sides;
        return outline.HasCorners
            && Enumerable
                .Range(0, sides.Length)
                .All(i =>
                    sides[i].Length
                        + Reach(sides[(i + sides.Length - 1) % sides.Length].Path[0], sides[i].Path[0], depth)
                        + Reach(sides[i].Path[0], sides[(i + 1) % sides.Length].Path[0], depth)
                    > Length.Zero
                );
    }

    /// <summary>Adds the strips, the seams of their mitres and those that they are laid into.</summary>
    /// <param name="pattern">The cover.</param>
    /// <param name="cushion">The cushion, for its seam allowance.</param>
    /// <param name="flange">A flange that <see cref="Fits"/> its outline.</param>
    internal static Pattern AddTo(Pattern pattern, CushionSpecification cushion, FlangeStripSpecification flange)
    {
        var seam = EdgeFinish.Seam(cushion.SeamAllowance);
        Panel top = pattern[PartName.Top];
        ImmutableArray<Edge> sides = top.Edges;
        var strips = ImmutableArray.CreateBuilder<Panel>();
        var seams = ImmutableArray.CreateBuilder<Seam>();
        for (var i = 0; i < sides.Length; i++)
        {
            (Edge before, Edge side, Edge after) = (sides[(i + sides.Length - 1) % sides.Length], sides[i], sides[(i + 1) % sides.Length]);
            Panel strip = Strip(
                Named(i),
                side.Length,
                Reach(before.Path[0], side.Path[0], flange.Depth),
                Reach(side.Path[0], after.Path[0], flange.Depth),
                flange.Depth,
                seam
            );
            strips.Add(strip);
            PartName next = Named((i + 1) % sides.Length);
            seams.Add(
                new Seam(
                    SeamKind.Plain,
                    new EdgeRef(strip.Part, EdgeName.End.With(EdgeWord.Lower)),
                    new EdgeRef(next, EdgeName.Start.With(EdgeWord.Lower))
                )
            );
            seams.Add(
                new Seam(
                    SeamKind.Plain,
                    new EdgeRef(strip.Part, EdgeName.End.With(EdgeWord.Upper)),
                    new EdgeRef(next, EdgeName.Start.With(EdgeWord.Upper))
                )
            );
            seams.Add(new Seam(SeamKind.Inset, new EdgeRef(PartName.Top, side.Name), new EdgeRef(strip.Part, EdgeName.Inner)));
            seams.Add(new Seam(SeamKind.Inset, new EdgeRef(PartName.Top, side.Name), new EdgeRef(strip.Part, EdgeName.Outer)));
        }

        return pattern with
        {
            Panels = pattern.Panels.AddRange(strips),
            Seams = pattern.Seams.AddRange(seams),
        };

        PartName Named(int side) => new(PartKind.Flange) { Run = sides[side].Name };
    }

    // How much longer the fold is than the seam line at a corner; below zero at an inside corner.
    private static Length Reach(Segment one, Segment next, Length depth)
    {
        // Between -π and π, above zero where the outline turns left, as it does at an outer corner. For an interior angle
        // a the turn is π − a, and tan((π − a) / 2) is the cotangent of a / 2.
        double turn = Math.IEEERemainder(next.StartDirection - one.EndDirection, 2 * Math.PI);
        return Length.FromNanometres((long)Math.Round(depth.Nanometres * Math.Tan(turn / 2)));
    }

    // A hexagon: the seam line below, the fold across the middle, the seam line again above, and slanting ends. At an inside corner the
    // fold is the shorter line, so the strip begins at the widest point of its left end.
    private static Panel Strip(PartName part, Length side, Length atStart, Length atEnd, Length depth, EdgeFinish seam)
    {
        Length x = Length.Max(atStart, Length.Zero);
        ImmutableArray<Edge> edges = new PanelOutline(x, Length.Zero)
            .East(EdgeName.Inner, side, seam)
            .Towards(EdgeName.End.With(EdgeWord.Lower), x + side + atEnd, depth, seam)
            .Towards(EdgeName.End.With(EdgeWord.Upper), x + side, 2 * depth, seam)
            .West(EdgeName.Outer, side, seam)
            .Towards(EdgeName.Start.With(EdgeWord.Upper), x - atStart, depth, seam)
            .Towards(EdgeName.Start.With(EdgeWord.Lower), x, Length.Zero, seam)
            .Edges();
        Length left = x - atStart,
            right = x + side + atEnd;
        return new Panel
        {
            Part = part,
            Role = FabricRole.Edging,
            Edges = edges,
            LayersAlong = 2,
            Stretches = [new StripStretch(Length.Max(right, x + side), part.Run == EdgeName.Front)],
            Marks = [new PanelMark(MarkKind.FoldLine, new Point(left, depth), new Point(right, depth), MarkPurpose.FoldLengthwise)],
            Because = AdditionTexts.FlangeStrip(side, right - left),
        };
    }
}
