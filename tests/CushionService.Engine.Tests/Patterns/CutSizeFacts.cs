using CushionService.Engine.Cutting;
using CushionService.Engine.Measures;
using CushionService.Engine.Patterns.Panels;
using CushionService.Engine.Quoting;
using CushionService.Engine.Specifications;
using CushionService.Engine.Specifications.Closures;
using CushionService.Engine.Specifications.Outlines;
using CushionService.Engine.Specifications.Shapes;
using CushionService.Engine.Specifications.Trimmings;

namespace CushionService.Engine.Tests.Patterns;

/// <summary>What each construction cuts, in inches, widths before lengths; cut to a hundredth of a millimetre, so that nothing is rounded
/// away.</summary>
public sealed class CutSizeFacts
{
    private static readonly CushionSpecification Plain = Boxed(24, 22, 4, HandSewn);
    private static readonly BolsterEnds Gathered = new(BolsterEndKind.Gathered, Length.Zero, In(1));

    public static TheoryData<string, CushionSpecification, string, double, double, string> Pieces() =>
        new()
        {
            { "knife-edge 18 × 18", KnifeEdge(18, 18, HandSewn), "top", 19, 19, Sources.FieldOfficer },
            { "box 24 × 22 × 4", Boxed(24, 22, 4, BackZipper, BoxingJoins.Back), "top", 25, 23, Sources.Derived },
            { "its zipper section", Boxed(24, 22, 4, BackZipper, BoxingJoins.Back), "zipper-upper", 31, 3.25, Sources.Derived },
            { "its boxing, in one", Boxed(24, 22, 4, BackZipper, BoxingJoins.Back), "boxing", 63, 5, Sources.Derived },
            {
                "boxing of a 12 × 12 check, zipper strips cut 16",
                Boxed(12, 12, 3, BackZipper with { Return = In(1.5m) }, BoxingJoins.Back),
                "boxing",
                34,
                4,
                Sources.Derived
            },
            { "round box 16 × 3", Round(16, 3), "top", 17, 17, Sources.Mathematics },
            { "its boxing", Round(16, 3), "boxing", (Math.PI * 16) + 1, 4, Sources.Mathematics },
            { "bolster 8 × 24", Bolster(8, 24), "left-end", 9, 9, Sources.Mathematics },
            { "its body", Bolster(8, 24), "body", 26.13274, 25, Sources.Mathematics },
            { "bolster 9 × 14", Bolster(9, 14), "body", 29.27433, 15, Sources.Mathematics },
            { "gathered neck roll 6 × 16, 1 in turned in", Bolster(6, 16) with { Ends = Gathered }, "body", 19.84956, 24, Sources.Derived },
            {
                "sweet 6 × 16, tails of 6 in, 3/4 in turned in",
                Bolster(6, 16) with
                {
                    Ends = new BolsterEnds(BolsterEndKind.Tied, In(6), In(0.75m)),
                },
                "body",
                19.84956,
                35.5,
                Sources.Derived
            },
            {
                "half bolster 10 × 30",
                Bolster(10, 30) with
                {
                    Outline = new HalfRoundOutline(In(10)),
                },
                "body",
                (Math.PI * 5) + 11,
                31,
                Sources.Mathematics
            },
            { "wedge 24 × 20, 2 to 6: top", Wedge(24, 20, 2, 6), "top", 25, 21.39608, Sources.Mathematics },
            { "its front", Wedge(24, 20, 2, 6), "front", 25, 3, Sources.Mathematics },
            { "its back", Wedge(24, 20, 2, 6), "back", 25, 7, Sources.Mathematics },
            { "triangle 20 × 10: top", Wedge(24, 20, 0, 10), "top", 25, 23.36068, Sources.Mathematics },
            { "waterfall 24 × 20 × 4, square", Waterfall(FrontShape.Square), "main", 25, 45, Sources.CanvasWork },
            { "its side", Waterfall(FrontShape.Square), "left", 21, 5, Sources.CanvasWork },
            { "waterfall with a bull-nose", Waterfall(FrontShape.BullNose), "main", 25, 43.28319, Sources.CanvasWork },
            { "its side", Waterfall(FrontShape.BullNose), "right", 21, 5, Sources.CanvasWork },
            { "its back", Waterfall(FrontShape.BullNose), "back", 25, 5, Sources.CanvasWork },
            {
                "mitred 16 × 16 × 3",
                Boxed(16, 16, 3, HandSewn) with
                {
                    Construction = Construction.Mitred,
                },
                "top",
                20,
                20,
                Sources.Derived
            },
            {
                "gathered corner 16 × 16 × 3",
                Boxed(16, 16, 3, HandSewn) with
                {
                    Construction = Construction.GatheredCorner,
                },
                "top",
                20,
                20,
                Sources.Practice
            },
            { "single flange of 2 round 18", Flanged(FlangeLayers.Single, 0), "top", 23, 23, Sources.Derived },
            { "double flange of 2 round 18, 1/2 in turned under", Flanged(FlangeLayers.Double, 0.5m), "top", 27, 27, Sources.Derived },
            { "pouf 20 × 12: drum", Pouf(0), "wall", (Math.PI * 20) + 1, 13, Sources.Mathematics },
            { "pouf of 8 gores: a panel of its wall", Pouf(8), "wall-1", 8.85398, 13, Sources.Mathematics },
            {
                "4 channels of 6, crown 1",
                Channelled(24, new ChannelSpecification(4, In(1), default)),
                "top",
                (4 * 6.43501) + 1,
                23,
                Sources.Mathematics
            },
            {
                "6 channels of 4, crown 3/4",
                Channelled(24, new ChannelSpecification(6, In(0.75m), default)),
                "top",
                (6 * 4.36504) + 1,
                23,
                Sources.Mathematics
            },
            {
                "flat channels, 2 % drawn in",
                Channelled(50, new ChannelSpecification(5, Length.Zero, Percent(2))),
                "top",
                52,
                23.44,
                Sources.Practice
            },
        };

    [Theory]
    [MemberData(nameof(Pieces))]
    public void A_piece_is_cut(string what, CushionSpecification cushion, string part, double width, double length, string source)
    {
        CutPiece piece = Cut(cushion, part);

        Assert.True(Near(width, piece.Width) && Near(length, piece.Length), $"{what} ({source}) is cut {piece.Width} × {piece.Length}");
    }

    [Fact]
    public void A_mitred_sheet_loses_a_square_of_half_its_thickness_from_each_raw_corner()
    {
        // Sources.Derived: corner squares of 1 1/2 in, 20 × 20 less four of them.
        CutPiece sheet = Cut(Boxed(16, 16, 3, HandSewn) with { Construction = Construction.Mitred }, "top");

        Assert.Equal(12, sheet.Outline.Length);
        Assert.Equal(400 - (4 * 1.5 * 1.5), sheet.Area.In(LengthUnit.Inch), 1e-3);
        Assert.Contains(sheet.Outline, corner => Near(1.5, corner.X) && Near(1.5, corner.Y));
    }

    [Fact]
    public void The_corner_seam_of_a_mitred_box_is_as_long_as_the_box_is_thick()
    {
        Pattern pattern = Drafting.Of(Order(Boxed(16, 16, 3, HandSewn) with { Construction = Construction.Mitred })).Patterns[0];

        Assert.Equal(4, pattern.Seams.Count(seam => seam.One.Length == 2 && pattern.LengthOf(seam) == In(3)));
    }

    [Fact]
    public void The_side_of_a_wedge_is_a_trapezoid_and_of_a_triangle_is_truncated()
    {
        // Sources.Mathematics: 80 in², an angle of 11.30993°; the tip would reach s cot(α/2) and is cut off at 2s.
        Panel side = Drafting.Of(Order(Wedge(24, 20, 2, 6))).Patterns[0].Panel("left");
        CutPiece sharp = Cut(Wedge(24, 20, 0, 4), "right");

        Assert.Equal(80, Geometry(side), 1e-6);
        Assert.Equal(11.30993, Math.Atan2(4, 20) * 180 / Math.PI, 1e-5);
        Assert.True(sharp.Width <= In(20 + 0.5m + 1.05m), "The sharp point is not truncated.");
        Assert.Equal(4, sharp.Outline.Length);
    }

    [Fact]
    public void Gores_have_the_circle_s_rim_and_straight_ones_would_be_shorter()
    {
        // Sources.Mathematics: 8 × 7.85398 = 62.83185; straight-edged sectors give 61.22935.
        Pattern pouf = Drafting.Of(Order(Pouf(8))).Patterns[0];
        Length rim = pouf.Panel("gore-1").Edge("rim").Length;

        Assert.True(Near(7.85398, rim) && Near(62.83185, 8 * rim));
        Assert.Equal(61.22935, 8 * 20 * Math.Sin(Math.PI / 8), 1e-5);
        Assert.True(Near(61.22935, new RegularPolygonOutline(8, In((decimal)(20 * Math.Sin(Math.PI / 8)))).Perimeter));
    }

    [Fact]
    public void An_envelope_on_18_by_18_is_two_backs_of_12_1_2_by_19() =>
        Assert.Equal(
            "top 19 × 19; bottom-front 19 × 12 1/2; bottom-back 19 × 12 1/2",
            CutList(Order(KnifeEdge(18, 18, new EnvelopeClosure(Side.Bottom, In(0.5m), In(4)))))
        );

    [Fact]
    public void A_bay_s_cut_outline_follows_both_offset_rules()
    {
        // Sources.Mathematics: front 61.69951, back 40.58840, depth 19, area 971.73522.
        CutPiece top = Cut(Boxed(1, 1, 3, HandSewn) with { Outline = new TrapezoidOutline(In(60), In(40), In(18), In(10)) }, "top");

        Assert.True(Near(61.69951, top.Width) && Near(19, top.Length));
        Assert.Equal(971.73522, top.Area.In(LengthUnit.Inch), 0.01);
    }

    private static CutPiece Cut(CushionSpecification cushion, string part)
    {
        OrderSpecification order = Order(cushion, Fabric with { Width = In(118) });
        return Drafting
            .Of(order with { Workroom = order.Workroom with { CuttingStep = Mm(0.01m) } })
            .Pieces.First(piece => piece.Part.ToString() == part);
    }

    // A round template is cut along tangents, no more than 0.4 mm outside its arc.
    private static bool Near(double inches, Length length) => (double)length.In(LengthUnit.Inch) - inches is > -1e-5 and < 1.5e-3;

    private static double Geometry(Panel panel) =>
        Engine.Geometry.Polygon.Area([.. panel.Edges.Select(edge => edge.From)]).In(LengthUnit.Inch);

    private static CushionSpecification Round(decimal diameter, decimal thickness) =>
        Boxed(1, 1, thickness, HandSewn, BoxingJoins.Back) with
        {
            Outline = new CircleOutline(In(diameter)),
        };

    private static CushionSpecification Bolster(decimal diameter, decimal length) =>
        KnifeEdge(1, 1, HandSewn) with
        {
            Construction = Construction.Bolster,
            Outline = new CircleOutline(In(diameter)),
            Length = In(length),
        };

    private static CushionSpecification Wedge(decimal width, decimal depth, decimal front, decimal rear) =>
        Boxed(width, depth, rear, HandSewn) with
        {
            Construction = Construction.Wedge,
            FrontThickness = In(front),
        };

    private static CushionSpecification Waterfall(FrontShape front) =>
        Boxed(24, 20, 4, HandSewn) with
        {
            Construction = Construction.Waterfall,
            Front = front,
        };

    private static CushionSpecification Flanged(FlangeLayers layers, decimal turning) =>
        KnifeEdge(18, 18, HandSewn) with
        {
            Construction = Construction.Flanged,
            Flange = new FlangeSpecification(layers, In(2), In(turning)),
        };

    private static CushionSpecification Pouf(int gores) =>
        Boxed(1, 1, 12, HandSewn) with
        {
            Construction = Construction.Pouf,
            Outline = new CircleOutline(In(20)),
            Gores = gores,
        };

    private static CushionSpecification Channelled(decimal width, ChannelSpecification channels) =>
        Plain with
        {
            Outline = new RectangleOutline(In(width), In(22)),
            Channels = channels,
        };
}
