using System.Collections.Immutable;
using CushionService.Engine.Geometry;
using CushionService.Engine.Measures;
using CushionService.Engine.Patterns.Panels;
using CushionService.Engine.Specifications;
using CushionService.Engine.Specifications.Closures;
using CushionService.Engine.Specifications.Fabrics;
using CushionService.Engine.Specifications.Shapes;

namespace CushionService.Engine.Patterns.Sections;

/// <summary>A face of a flanged cushion, or the front or back part of one: a rectangle, or with a double flange an octagon whose slanting
/// sides are folded in half and become the mitres.</summary>
internal sealed class FlangedFace
{
    /// <summary>The sides of a face.</summary>
    public static readonly ImmutableArray<EdgeName> Sides = [EdgeName.Front, EdgeName.Right, EdgeName.Back, EdgeName.Left];

    /// <summary>The thirds of the edge at the closure.</summary>
    public static readonly ImmutableArray<EdgeWord> Thirds = [EdgeWord.Left, EdgeWord.Right, EdgeWord.Middle];

    // The edge at the closure; the default name for a face in one part.
    private readonly EdgeName _inner;

    private FlangedFace(Panel panel, EdgeName inner) => (Panel, _inner) = (panel, inner);

    /// <summary>The face as one panel, flange included.</summary>
    public Panel Panel { get; }

    /// <summary>The two halves of each corner, sewn to each other.</summary>
    public IEnumerable<Seam> Mitres =>
        Panel
            .Edges.Where(edge => edge.Name.Last == EdgeWord.Mitre)
            .Select(edge => new Seam(
                SeamKind.Plain,
                new EdgeRef(Panel.Part, edge.Name),
                new EdgeRef(Panel.Part, edge.Name.With(EdgeWord.Other))
            ));

    /// <summary>A face in one part.</summary>
    /// <param name="part">Names it.</param>
    /// <param name="role">Decides its fabric.</param>
    /// <param name="cushion">The cushion; its size is the body's, to which the flange is added.</param>
    /// <param name="flange">How wide the flange is, and of how many layers.</param>
    public static FlangedFace Whole(PartName part, FabricRole role, CushionSpecification cushion, FlangeSpecification flange) =>
        new(Draw(part, role, cushion, flange, null), default);

    /// <summary>The bottom in a front and a back part, each half as deep and half the overlap more.</summary>
    /// <param name="cushion">The cushion.</param>
    /// <param name="flange">How wide the flange is, and of how many layers.</param>
    /// <param name="lap">How far both parts lie over each other.</param>
    /// <param name="inner">The finish of both edges at the closure.</param>
    public static FlangedFace[] Divided(CushionSpecification cushion, FlangeSpecification flange, Length lap, EdgeFinish inner) =>
        [
            new(
                Draw(PartName.Bottom with { Half = FaceHalf.Front }, FabricRole.Bottom, cushion, flange, (true, lap, inner)),
                EdgeName.Upper
            ),
            new(
                Draw(PartName.Bottom with { Half = FaceHalf.Back }, FabricRole.Bottom, cushion, flange, (false, lap, inner)),
                EdgeName.Lower
            ),
        ];

    /// <summary>A third of the edge at the closure: the body's width, or the flange at its left or right.</summary>
    /// <param name="third">One of <see cref="Thirds"/>.</param>
    public EdgeRef Inner(EdgeWord third) => new(Panel.Part, _inner.With(third));

    /// <summary>The edge on a side; none when the part does not reach it.</summary>
    /// <param name="side">One of <see cref="Sides"/>.</param>
    public IEnumerable<EdgeRef> On(EdgeName side) =>
        Panel.Edges.Where(edge => edge.Name == side).Select(edge => new EdgeRef(Panel.Part, side));

    // Null division for a whole face. A double flange is cut two widths beyond the body, since it is folded back on itself, and its
    // corners are cut off by as much.
    private static Panel Draw(
        PartName part,
        FabricRole role,
        CushionSpecification cushion,
        FlangeSpecification flange,
        (bool Front, Length Lap, EdgeFinish Finish)? division
    )
    {
        bool folded = flange.Layers == FlangeLayers.Double;
        var seam = EdgeFinish.Seam(cushion.SeamAllowance);
        EdgeFinish outer = folded ? new EdgeFinish(FinishKind.TurnIn, 1, flange.Turning) : seam;
        Length cut = folded ? 2 * flange.Width : Length.Zero,
            beyond = folded ? cut : flange.Width;
        Length width = cushion.Width + 2 * beyond,
            depth = cushion.Depth + 2 * beyond;
        Length half = division is { } parts ? OverlappingClosure.VisibleHeight(depth, parts.Lap) : depth;
        Length height = division is { Front: false } back ? depth + back.Lap - half : half;
        bool hasFront = division is not { Front: false },
            hasBack = division is not { Front: true };

        var walk = new Walk(hasFront ? cut : Length.Zero, folded ? Mitre(cushion.SeamAllowance, flange) : seam);
        if (hasFront)
        {
            walk.To(EdgeName.Front, width - cut, Length.Zero, outer).Corner(EdgeName.Front.With(EdgeWord.Right), width, cut, cut);
        }
        else
        {
            walk.InThirds(EdgeName.Lower, beyond, cushion.Width, 1, division!.Value.Finish);
        }

        walk.To(EdgeName.Right, width, hasBack ? height - cut : height, outer);
        if (hasBack)
        {
            walk.Corner(EdgeName.Back.With(EdgeWord.Right), width - cut, height, cut)
                .To(EdgeName.Back, cut, height, outer)
                .Corner(EdgeName.Back.With(EdgeWord.Left), Length.Zero, height - cut, cut);
        }
        else
        {
            walk.InThirds(EdgeName.Upper, beyond, cushion.Width, -1, division!.Value.Finish);
        }

        walk.To(EdgeName.Left, Length.Zero, hasFront ? cut : Length.Zero, outer);
        if (hasFront)
        {
            walk.Corner(EdgeName.Front.With(EdgeWord.Left), cut, Length.Zero, cut);
        }

        IEnumerable<PanelMark> folds = folded ? Folds(flange.Width, width, height, hasFront, hasBack) : [];
        return new Panel
        {
            Part = part,
            Role = role,
            Edges = division is null
                ? walk.Edges
                : [.. walk.Edges.Select(edge => Stretched(edge, depth - 2 * cut, depth - height - cut, hasFront))],
            Marks = [.. folds],
            Match = new Point(width.HalfUp(), hasFront ? depth.HalfUp() : height - depth.HalfUp()),
        };
    }

    // The sides of a divided face are stretches of the face's own, which run up on the right and down on the left.
    private static Edge Stretched(Edge edge, Length whole, Length other, bool hasFront) =>
        (edge.Name == EdgeName.Right && !hasFront) || (edge.Name == EdgeName.Left && hasFront)
            ? edge with
            {
                Stretch = new EdgeStretch(other, whole),
            }
        : edge.Name == EdgeName.Right || edge.Name == EdgeName.Left ? edge with { Stretch = new EdgeStretch(Length.Zero, whole) }
        : edge;

    // The allowance of a mitre is trimmed to the flange that it lies in: a deeper one would leave no corner to cut off (common practice, no
    // source).
    private static EdgeFinish Mitre(Length allowance, FlangeSpecification flange) =>
        EdgeFinish.Seam(Length.Min(allowance, flange.Width + flange.Turning));

    // Where the face is folded back behind its flange, on each outer side.
    private static IEnumerable<PanelMark> Folds(Length flange, Length width, Length height, bool hasFront, bool hasBack)
    {
        Length low = hasFront ? flange : Length.Zero,
            high = hasBack ? height - flange : height;
        PanelMark Fold(Length fromX, Length fromY, Length toX, Length toY) =>
            new(MarkKind.FoldLine, new(fromX, fromY), new(toX, toY), MarkPurpose.FoldFlangeBack);
        return
        [
            Fold(flange, low, flange, high),
            Fold(width - flange, low, width - flange, high),
            .. hasFront ? [Fold(flange, low, width - flange, low)] : Array.Empty<PanelMark>(),
            .. hasBack ? [Fold(flange, high, width - flange, high)] : Array.Empty<PanelMark>(),
        ];
    }

    // Round the face, counter-clockwise from the left end of its lower edge.
    private sealed class Walk(Length start, EdgeFinish seam)
    {
        private readonly ImmutableArray<Edge>.Builder _edges = ImmutableArray.CreateBuilder<Edge>();
        private Point _at = new(start, Length.Zero);

        public ImmutableArray<Edge> Edges => _edges.ToImmutable();

        public Walk To(EdgeName name, Length x, Length y, EdgeFinish finish)
        {
            var to = new Point(x, y);
            _edges.Add(new Edge(name, _at, to, finish));
            _at = to;
            return this;
        }

        // Cut off through the corner of the fold, and sewn half to half; a single flange has square corners.
        public Walk Corner(EdgeName name, Length x, Length y, Length cut)
        {
            if (cut == Length.Zero)
            {
                return this;
            }

            Length midX = Length.FromNanometres((_at.X + x).Nanometres / 2),
                midY = Length.FromNanometres((_at.Y + y).Nanometres / 2);
            return To(name.With(EdgeWord.Mitre), midX, midY, seam).To(name.With(EdgeWord.Mitre).With(EdgeWord.Other), x, y, seam);
        }

        public Walk InThirds(EdgeName name, Length beyond, Length body, int way, EdgeFinish finish)
        {
            (EdgeWord first, EdgeWord last) = way > 0 ? (EdgeWord.Left, EdgeWord.Right) : (EdgeWord.Right, EdgeWord.Left);
            Length y = _at.Y;
            return To(name.With(first), _at.X + way * beyond, y, finish)
                .To(name.With(EdgeWord.Middle), _at.X + way * body, y, finish)
                .To(name.With(last), _at.X + way * beyond, y, finish);
        }
    }
}
