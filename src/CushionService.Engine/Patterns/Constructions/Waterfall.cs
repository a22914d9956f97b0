using System.Collections.Immutable;
using CushionService.Engine.Geometry;
using CushionService.Engine.Measures;
using CushionService.Engine.Patterns.Additions;
using CushionService.Engine.Patterns.Panels;
using CushionService.Engine.Patterns.Sections;
using CushionService.Engine.Specifications;
using CushionService.Engine.Specifications.Closures;
using CushionService.Engine.Specifications.Fabrics;
using CushionService.Engine.Specifications.Outlines;
using CushionService.Engine.Specifications.Shapes;
using CushionService.Engine.Specifications.Trimmings;

namespace CushionService.Engine.Patterns.Constructions;

/// <summary>One sheet runs over the top, down the front and back along the underside; a panel closes each side, and the closure's section
/// the back. The front is square, or a half circle as high as the cushion is thick.</summary>
/// <remarks>The sheet is as long as the path: 2D + T, or 2 (D − T/2) + πT/2 with a bull-nose (general geometry). It is notched at the top,
/// the middle and the bottom of the front, and so are the sides (D. Casey, International Marine/McGraw-Hill, ISBN 0-07-013391-3). What is
/// upright on the top hangs upside down on the underside.</remarks>
internal sealed class Waterfall : IConstruction
{
    public ConstructionOffer Offer { get; } =
        new()
        {
            Kind = Construction.Waterfall,
            Description = ConstructionTexts.Waterfall,
            Outlines = [OutlineKind.Rectangle],
            Closures =
            [
                new(ClosureKind.Zipper, [Side.Back]),
                new(ClosureKind.HookAndLoop, [Side.Back]),
                new(ClosureKind.HandSewn, [Side.Back]),
                new(ClosureKind.Buttons, [Side.Back]),
                new(ClosureKind.Ties, [Side.Back]),
            ],
            Thickness = true,
            Edgings = EdgingOffer.Along([EdgingPlace.Left, EdgingPlace.Right]),
            Handles = [HandleKind.FoldedStrap, HandleKind.Webbing, HandleKind.StrapAndWebbing],
            Fields = [new(ConstructionField.Front)],
        };

    public Pattern Draft(CushionSpecification cushion)
    {
        var seam = EdgeFinish.Seam(cushion.SeamAllowance);
        OutlineSide rear = cushion.Outline.Sides.First(run => run.Side == Side.Back);
        Panel right = SidePanel(PartName.Side(EdgeName.Right), cushion, seam),
            // The left side is the right one's mirror image, so the pieces of a one-way fabric differ.
            left =
                right with
                {
                    Part = PartName.Side(EdgeName.Left),
                    Edges = [.. right.Edges.Reverse().Select(edge => Mirrored(edge, right.Width))],
                };
        Panel main = Main(cushion.Width, right, seam);
        BoxingSection back = BoxingSection.Closing(cushion.Closure, [rear], cushion.Thickness, PartName.Side(EdgeName.Back), seam);
        BoxingSection atRight = BoxingSection.Of(right),
            atLeft = BoxingSection.Of(left);

        IEnumerable<Seam> sides = new[] { right, left }.SelectMany(side =>
            side.Edges.Where(edge => edge.Name != EdgeName.End && edge.Name != EdgeName.Start)
                .Select(edge => new Seam(
                    SeamKind.Plain,
                    new EdgeRef(new PartName(PartKind.Main), side.Part.Run.With(edge.Name)),
                    new EdgeRef(side.Part, edge.Name)
                ))
        );
        var cover = new Pattern(
            [main, right, left, .. back.Panels],
            [
                .. back.Middle is { } middle ? [middle] : Array.Empty<Seam>(),
                .. sides,
                atRight.JoinedTo(back) with
                {
                    Kind = SeamKind.Plain,
                },
                back.JoinedTo(atLeft) with
                {
                    Kind = SeamKind.Plain,
                },
                new Seam(SeamKind.Plain, back.Upper(rear), new EdgeRef(new PartName(PartKind.Main), EdgeName.Upper)),
                new Seam(
                    cushion.Closure is HandSewnClosure ? SeamKind.Gap : SeamKind.Plain,
                    back.Lower(rear),
                    new EdgeRef(new PartName(PartKind.Main), EdgeName.Lower)
                ),
            ]
        );
        return FoldedStrap.AddTo(cover, cushion, MiddleOf).Closed();
    }

    // The sheet covers the front; panels the sides, and the back where it does not open.
    // On the sheet, the middle of the front is where the front's upper half begins.
    private static (PartName Part, Point Middle)? MiddleOf(Pattern pattern, Side side)
    {
        PartName part = side switch
        {
            Side.Left => PartName.Side(EdgeName.Left),
            Side.Right => PartName.Side(EdgeName.Right),
            Side.Back => PartName.Side(EdgeName.Back),
            _ => new PartName(PartKind.Main),
        };
        return pattern.Panels.FirstOrDefault(panel => panel.Part == part) is not { } panel ? null
            : side == Side.Front
                ? (part, new Point(panel.Width.HalfUp(), panel[EdgeName.Right.With(EdgeName.Front.With(EdgeWord.Upper))].From.Y))
            : (part, new Point(panel.Width.HalfUp(), panel.Height.HalfUp()));
    }

    /// <summary>The box, less what a bull-nose takes from its front: W × (D T − (1 − π/4) T²/2) (general geometry).</summary>
    public Volume Block(CushionSpecification cushion, Length oversize)
    {
        Volume box = FillBlock.OfOutline(cushion, oversize);
        decimal thickness = cushion.Thickness.In(LengthUnit.Millimetre),
            width = (cushion.Width + oversize).In(LengthUnit.Millimetre);
        return cushion.Front == FrontShape.Square
            ? box
            : new Volume(box.CubicMillimetres - (width * thickness * thickness * (decimal)((1 - (Math.PI / 4)) / 2)));
    }

    // As one looks at it from the right: the front at the left, in two halves, so that its middle is notched.
    private static Panel SidePanel(PartName part, CushionSpecification cushion, EdgeFinish seam)
    {
        (Length depth, Length thickness) = (cushion.Depth, cushion.Thickness);
        Length half = Length.FromNanometres(thickness.Nanometres / 2),
            nose = cushion.Front == FrontShape.Square ? Length.Zero : half;
        // With a square front both arcs are straight, and the middle of the front still is a corner that is notched.
        double quarter = nose == Length.Zero ? 0 : Math.PI / 2;
        Point low = new(nose, Length.Zero),
            tip = new(Length.Zero, half),
            high = new(nose, thickness);
        return new Panel
        {
            Part = part,
            Role = FabricRole.Sides,
            Edges =
            [
                new Edge(new(EdgeWord.Bottom), low, new(depth, Length.Zero), seam),
                new Edge(EdgeName.End, new(depth, Length.Zero), new(depth, thickness), seam),
                new Edge(new(EdgeWord.Top), new(depth, thickness), high, seam),
                new Edge(EdgeName.Front.With(EdgeWord.Upper), [new Segment(high, tip, quarter)], seam),
                new Edge(EdgeName.Front.With(EdgeWord.Lower), [new Segment(tip, low, quarter)], seam),
            ],
        };
    }

    // The left side meets the back with its start.
    private static Edge Mirrored(Edge edge, Length width) =>
        edge with
        {
            Name = edge.Name == EdgeName.End ? EdgeName.Start : edge.Name,
            Path = [.. edge.Path.Reverse().Select(segment => segment.Mirrored(width))],
        };

    // From the underside's back edge, round the front, to the top's back edge.
    // Its side edges are as long as those of the side panel, arcs and all, so that the two agree to the nanometre.
    private static Panel Main(Length width, Panel side, EdgeFinish seam)
    {
        ImmutableArray<EdgeName> path =
        [
            new(EdgeWord.Bottom),
            EdgeName.Front.With(EdgeWord.Lower),
            EdgeName.Front.With(EdgeWord.Upper),
            new(EdgeWord.Top),
        ];
        PanelOutline walk = path.Aggregate(
                new PanelOutline().East(EdgeName.Lower, width, seam),
                (walk, name) => walk.North(EdgeName.Right.With(name), side[name].Length, seam)
            )
            .West(EdgeName.Upper, width, seam);
        return new Panel
        {
            Part = new PartName(PartKind.Main),
            Role = FabricRole.Top,
            Edges = path.Reverse().Aggregate(walk, (walk, name) => walk.South(EdgeName.Left.With(name), side[name].Length, seam)).Edges(),
            Inverts = true,
        };
    }
}
