using System.Collections.Immutable;
using CushionService.Engine.Geometry;
using CushionService.Engine.Measures;
using CushionService.Engine.Specifications;
using CushionService.Engine.Specifications.Closures;
using CushionService.Engine.Specifications.Fabrics;

namespace CushionService.Engine.Patterns;

/// <summary>A face of a flanged cushion, or the front or back part of one: a rectangle, or with a double flange an octagon whose slanting
/// sides are folded in half and become the mitres.</summary>
internal sealed class FlangedFace
{
    /// <summary>The sides of a face.</summary>
    public static readonly ImmutableArray<string> Sides = ["front", "right", "back", "left"];

    /// <summary>The thirds of the edge at the closure.</summary>
    public static readonly ImmutableArray<string> Thirds = ["left", "right", "middle"];

    private readonly string _inner;

    private FlangedFace(Panel panel, string inner) => (Panel, _inner) = (panel, inner);

    public Panel Panel { get; }

    /// <summary>The two halves of each corner, sewn to each other.</summary>
    public IEnumerable<Seam> Mitres =>
        Panel
            .Edges.Where(edge => edge.Name.EndsWith("-mitre", StringComparison.Ordinal))
            .Select(edge => new Seam(SeamKind.Plain, new EdgeRef(Panel.Part, edge.Name), new EdgeRef(Panel.Part, $"{edge.Name}-other")));

    public static FlangedFace Whole(string part, FabricRole role, CushionSpecification cushion, FlangeSpecification flange) =>
        new(Draw(part, role, cushion, flange, null), "");

    /// <summary>The bottom in a front and a back part, each half as deep and half the overlap more.</summary>
    public static FlangedFace[] Divided(CushionSpecification cushion, FlangeSpecification flange, Length lap, EdgeFinish inner) =>
        [
            new(Draw("bottom-front", FabricRole.Bottom, cushion, flange, (true, lap, inner)), "upper"),
            new(Draw("bottom-back", FabricRole.Bottom, cushion, flange, (false, lap, inner)), "lower"),
        ];

    /// <summary>A third of the edge at the closure: the body's width, or the flange at its left or right.</summary>
    public EdgeRef Inner(string third) => new(Panel.Part, $"{_inner}-{third}");

    /// <summary>The edge on a side; none when the part does not reach it.</summary>
    public IEnumerable<EdgeRef> On(string side) =>
        Panel.Edges.Where(edge => edge.Name == side).Select(edge => new EdgeRef(Panel.Part, side));

    private static Panel Draw(
        string part,
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

        var walk = new Walk(hasFront ? cut : Length.Zero, seam);
        if (hasFront)
        {
            walk.To("front", width - cut, Length.Zero, outer).Corner("front-right", width, cut, cut);
        }
        else
        {
            walk.InThirds("lower", beyond, cushion.Width, 1, division!.Value.Finish);
        }

        walk.To("right", width, hasBack ? height - cut : height, outer);
        if (hasBack)
        {
            walk.Corner("back-right", width - cut, height, cut)
                .To("back", cut, height, outer)
                .Corner("back-left", Length.Zero, height - cut, cut);
        }
        else
        {
            walk.InThirds("upper", beyond, cushion.Width, -1, division!.Value.Finish);
        }

        walk.To("left", Length.Zero, hasFront ? cut : Length.Zero, outer);
        if (hasFront)
        {
            walk.Corner("front-left", cut, Length.Zero, cut);
        }

        IEnumerable<PanelMark> folds = folded ? Folds(flange.Width, width, height, hasFront, hasBack) : [];
        return new Panel
        {
            Part = part,
            Role = role,
            Edges = walk.Edges,
            Marks = [.. folds],
            Match = new Point(width.HalfUp(), hasFront ? depth.HalfUp() : height - depth.HalfUp()),
        };
    }

    // Where the face is folded back behind its flange, on each outer side.
    private static IEnumerable<PanelMark> Folds(Length flange, Length width, Length height, bool hasFront, bool hasBack)
    {
        Length low = hasFront ? flange : Length.Zero,
            high = hasBack ? height - flange : height;
        PanelMark Fold(Length fromX, Length fromY, Length toX, Length toY) =>
            new(MarkKind.FoldLine, new(fromX, fromY), new(toX, toY), "Fold the flange back");
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

        public Walk To(string name, Length x, Length y, EdgeFinish finish)
        {
            var to = new Point(x, y);
            _edges.Add(new Edge(name, _at, to, finish));
            _at = to;
            return this;
        }

        // Cut off through the corner of the fold, and sewn half to half; a single flange has square corners.
        public Walk Corner(string name, Length x, Length y, Length cut)
        {
            if (cut == Length.Zero)
            {
                return this;
            }

            Length midX = Length.FromNanometres((_at.X + x).Nanometres / 2),
                midY = Length.FromNanometres((_at.Y + y).Nanometres / 2);
            return To($"{name}-mitre", midX, midY, seam).To($"{name}-mitre-other", x, y, seam);
        }

        public Walk InThirds(string name, Length beyond, Length body, int way, EdgeFinish finish)
        {
            (string first, string last) = way > 0 ? ("left", "right") : ("right", "left");
            Length y = _at.Y;
            return To($"{name}-{first}", _at.X + way * beyond, y, finish)
                .To($"{name}-middle", _at.X + way * body, y, finish)
                .To($"{name}-{last}", _at.X + way * beyond, y, finish);
        }
    }
}
