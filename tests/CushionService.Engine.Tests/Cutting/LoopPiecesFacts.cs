using CushionService.Engine.Cutting;
using CushionService.Engine.Geometry;
using CushionService.Engine.Layouts;
using CushionService.Engine.Measures;
using CushionService.Engine.Patterns.Panels;
using CushionService.Engine.Quoting;
using CushionService.Engine.Specifications;
using CushionService.Engine.Specifications.Closures;
using CushionService.Engine.Specifications.Fabrics;
using CushionService.Engine.Specifications.Outlines;
using CushionService.Engine.Specifications.Shapes;

namespace CushionService.Engine.Tests.Cutting;

/// <summary>A loop round a cushion without corners that no closure parts: n = ⌈P / (Fw − 2s)⌉ equal pieces of P/n + 2s, the same on both
/// sides of the front's middle (the number follows from each piece carrying two allowances; the rest is common practice, no
/// source).</summary>
public sealed class LoopPiecesFacts
{
    [Theory]
    // π × 34 is 106.81: of 44 in 2.43, so three of 35.60 + 1, on eighths.
    [InlineData(34, 45, 3, "36 5/8")]
    // π × 30 is 94.25: of 44 and of 35 in three of 31.42 + 1.
    [InlineData(30, 45, 3, "32 1/2")]
    [InlineData(30, 36, 3, "32 1/2")]
    // π × 40 is 125.66, 2.37 times 53: three of 41.89 + 1; π × 34 is 2.02 times 53.
    [InlineData(40, 54, 3, "43")]
    [InlineData(34, 54, 3, "36 5/8")]
    // π × 24 is 75.40, 1.42 times 53: two of 37.70 + 1.
    [InlineData(24, 54, 2, "38 3/4")]
    // π × 48 is 150.80, 3.43 times 44: four of 37.70 + 1.
    [InlineData(48, 45, 4, "38 3/4")]
    public void A_round_loop_is_cut_in_the_fewest_equal_pieces(int diameter, int width, int pieces, string cut)
    {
        foreach (CushionSpecification cushion in new[] { Pouf(diameter), Box(diameter) })
        {
            CutPiece[] strip = Strip(cushion, Fabric with { Width = In(width) });

            Assert.Equal(Enumerable.Repeat(cut, pieces), strip.Select(piece => LengthText.FormatNumber(piece.Width, LengthUnit.Inch)));
            AssertSameOnBothSides(strip);
        }
    }

    [Theory]
    // Straight for 20 in at the front: 2 × 20 + π × 20 is 102.83, two of 51.42 + 1 in.
    [InlineData(40, 20, 54, "52 1/2 52 1/2")]
    // Straight for 40: 2 × 40 + π × 12 is 117.70, three of 44 at most. A third, 39.23, would part the front near its ends: the front of 40,
    // and two of 38.85.
    [InlineData(52, 12, 45, "39 7/8 39 7/8 41")]
    public void A_loop_round_round_ends_leaves_no_patch_and_its_front_whole(int length, int depth, int width, string cut)
    {
        CutPiece[] strip = Strip(Box(1) with { Outline = new RoundEndedOutline(In(length), In(depth)) }, Fabric with { Width = In(width) });

        Assert.Equal(cut, string.Join(' ', strip.Select(piece => LengthText.FormatNumber(piece.Width, LengthUnit.Inch))));
        AssertSameOnBothSides(strip);
    }

    [Fact]
    public void A_straight_front_of_a_loop_keeps_its_match()
    {
        // Of 54 in a repeat of 20 leaves 34: 33 in finished. The front is straight for 30 in; of 2 × 30 + π × 20 = 122.83 the rest, 89.83,
        // is two pieces of 44.92 + 1.
        FabricSpecification print = Fabric with
        {
            Repeat = new RepeatSpecification(In(20), In(20), DropKind.Straight),
        };
        CushionSpecification bench = Boxed(1, 1, 4, HandSewn, BoxingJoins.Back) with { Outline = new RoundEndedOutline(In(50), In(20)) };

        CutPiece[] strip = Strip(bench, print);

        Assert.Equal(["46", "46", "34"], strip.Select(piece => LengthText.FormatNumber(piece.Width, LengthUnit.Inch)));
        Assert.True(MatchedAt.Of(print, strip[^1]) is { IsEverywhere: true });
        AssertSameOnBothSides(strip);
    }

    [Fact]
    public void A_strap_at_the_back_moves_the_joins_from_under_it()
    {
        // Three pieces would be joined at the middle of the back, where the strap is.
        CushionSpecification box = Box(34) with
        {
            Handle = Strap with { Side = Side.Back },
        };
        CutPiece[] strip = Strip(box, Fabric with { Width = In(45) });

        Assert.Equal(3, strip.Length);
        Assert.Equal(2, strip.SelectMany(piece => piece.Panel!.Marks).Count(mark => mark.Purpose == MarkPurpose.SewHandleEnd));
        Assert.Single(strip, piece => piece.Panel!.Marks.Any(mark => mark.Purpose == MarkPurpose.SewHandleEnd));
    }

    [Theory]
    [InlineData(24)]
    [InlineData(34)]
    public void Bands_are_level_all_round_a_joined_loop(int diameter)
    {
        // Bands of 10 in along the fabric: every piece has one as high above its lower edge, and none is turned.
        FabricSpecification bands = Fabric with
        {
            Repeat = new RepeatSpecification(In(10), null, DropKind.Straight) { MotifY = In(4) },
        };
        foreach (CushionSpecification cushion in new[] { Pouf(diameter), Box(diameter) })
        {
            LaidPiece[] laid = [.. Quote(Order(cushion, bands)).Yardages[0].Layout.Placements.Where(one => IsOfLoop(one.Piece))];

            Assert.True(laid.Length > 1);
            Assert.All(laid, one => Assert.Equal(0, one.Turn));
            Assert.Single(laid.Select(one => (one.Y + one.Piece.Origin.Y).Nanometres % In(10).Nanometres).Distinct());
        }
    }

    [Fact]
    public void A_print_runs_on_over_the_joins_of_a_loop()
    {
        // Where one piece ends the pattern is a whole number of repeats from where the next begins, but at the one that closes the loop.
        FabricSpecification print = Fabric with
        {
            Repeat = new RepeatSpecification(In(10), In(7), DropKind.Straight),
        };
        CutPiece[] strip = Strip(Pouf(34), print);
        Length from = Length.Zero;
        foreach (CutPiece piece in strip)
        {
            Assert.Equal(strip[0].Panel!.Match, piece.Panel!.Match!.Value.Moved(from, Length.Zero));
            from += piece.Panel.Width;
        }
    }

    // The front's stretches beside the piece in its middle are as long on either side.
    private static void AssertSameOnBothSides(CutPiece[] strip)
    {
        Length[] fronts =
        [
            .. strip.Select(piece =>
                piece
                    .Panel!.Edges.Where(edge => edge.Name.First == EdgeWord.Front && edge.Facing == EdgeFacing.Up)
                    .Aggregate(Length.Zero, (sum, edge) => sum + edge.Length)
            ),
        ];
        int middle = Enumerable.Range(0, fronts.Length).MaxBy(i => fronts[i].Nanometres);
        Length before = fronts[(middle + fronts.Length - 1) % fronts.Length],
            after = fronts[(middle + 1) % fronts.Length];

        Assert.InRange((before - after).Nanometres, -10, 10);
        Edge[] ends = [.. strip[middle].Panel!.Edges.Where(edge => edge.Facing == EdgeFacing.Up)];
        Assert.InRange((Behind(ends[0]) - Behind(ends[^1])).Nanometres, -10, 10);
    }

    private static Length Behind(Edge edge) => edge.Name.First == EdgeWord.Front ? Length.Zero : edge.Length;

    private static bool IsOfLoop(CutPiece piece) => piece.Part.Kind is PartKind.Wall or PartKind.Boxing;

    private static CutPiece[] Strip(CushionSpecification cushion, FabricSpecification fabric) =>
        [.. Drafting.Of(Order(cushion, fabric)).Pieces.Where(IsOfLoop)];

    private static CushionSpecification Pouf(decimal diameter) =>
        KnifeEdge(1, 1, HandSewn) with
        {
            Construction = Construction.Pouf,
            Outline = new CircleOutline(In(diameter)),
            Thickness = In(15),
            Closure = new ZipperClosure(Side.Bottom, Length.Zero, In(0.75m)),
        };

    private static CushionSpecification Box(decimal diameter) =>
        Boxed(1, 1, 4, HandSewn, BoxingJoins.Back) with
        {
            Outline = new CircleOutline(In(diameter)),
            Match = MatchSpecification.Usual with { Boxing = BoxingMatch.AllRound },
        };
}
