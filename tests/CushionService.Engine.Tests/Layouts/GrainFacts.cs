using CushionService.Engine.Cutting;
using CushionService.Engine.Layouts;
using CushionService.Engine.Measures;
using CushionService.Engine.Quoting;
using CushionService.Engine.Specifications;
using CushionService.Engine.Specifications.Fabrics;
using CushionService.Engine.Specifications.Shapes;
using CushionService.Engine.Specifications.Trimmings;
using CushionService.Nesting;

namespace CushionService.Engine.Tests.Layouts;

/// <summary>All that is seen of a cushion runs one way. Sources.Practice throughout.</summary>
public sealed class GrainFacts
{
    [Fact]
    public void Railroaded_a_seat_of_72_in_has_whole_faces_and_whole_boxing_runs()
    {
        CushionSpecification seat = Boxed(72, 22, 4, BackZipper, BoxingJoins.Back);

        Assert.Contains(Drafting.Of(Order(seat)).Violations, violation => violation.Code == "wider-than-fabric");
        Drafting drafting = Drafting.Of(Order(seat, Fabric with { Grain = Grain.Railroaded }));
        Assert.Empty(drafting.Violations);
        Assert.Equal(["top", "bottom", "zipper-upper", "zipper-lower", "boxing"], drafting.Pieces.Select(piece => piece.Part.ToString()));
        Assert.All(drafting.Pieces, piece => Assert.True(piece.IsRailroaded));
    }

    [Fact]
    public void A_piece_that_is_too_wide_says_whether_it_fits_the_other_way()
    {
        Violation tooWide = Drafting.Of(Order(KnifeEdge(72, 20, HandSewn))).Violations[0];

        Assert.EndsWith("too little. Railroaded it would fit.", tooWide.Detail.ToString(), StringComparison.Ordinal);
        Assert.EndsWith(
            "too little. Choose a wider fabric, or make the piece smaller.",
            Drafting.Of(Order(KnifeEdge(72, 60, HandSewn))).Violations[0].Detail.ToString(),
            StringComparison.Ordinal
        );
    }

    [Theory]
    [InlineData(Grain.UpTheBolt, 0)]
    [InlineData(Grain.Railroaded, 90)]
    public void One_way_fabric_lies_the_same_way_under_all_pieces(Grain grain, int turn)
    {
        OrderSpecification order = Order(Boxed(24, 22, 4, HandSewn), Fabric with { OneWay = true, Grain = grain });

        Assert.All(Quote(order).Yardages[0].Layout.Placements, laid => Assert.Equal(turn, laid.Turn));
    }

    [Fact]
    public void A_cushion_s_own_grain_goes_before_its_fabric_s()
    {
        CushionSpecification cushion = Boxed(24, 22, 4, HandSewn) with { Grain = Grain.UpTheBolt };

        Assert.All(Drafting.Of(Order(cushion, Fabric with { Grain = Grain.Railroaded })).Pieces, piece => Assert.False(piece.IsRailroaded));
    }

    [Theory]
    [InlineData(40, 30, false, "1 3/4 yd")] // Up the bolt 2 × 31 in; railroaded 31 in across is too wide for two, 2 × 41 in.
    [InlineData(52, 25, false, "1 1/2 yd")] // Up the bolt 2 × 26 in; railroaded two of 26 in side by side, 53 in: no less.
    [InlineData(30, 26, true, "7/8 yd")] // Up the bolt 31 in across, 2 × 27 in; railroaded two of 27 in side by side, 31 in.
    [InlineData(72, 20, true, "2 1/8 yd")] // Up the bolt it does not fit.
    public void Either_way_the_shorter_is_taken_and_said(int width, int depth, bool railroaded, string taken)
    {
        Drafting drafting = Drafting.Of(Order(KnifeEdge(width, depth, HandSewn), Fabric with { Grain = Grain.Either }));
        Violation said = Assert.Single(drafting.Warnings);

        Assert.All(drafting.Pieces, piece => Assert.Equal(railroaded, piece.IsRailroaded));
        Assert.Equal("grain-chosen", said.Code);
        Assert.StartsWith(
            $"seat is cut {(railroaded ? "railroaded" : "up the bolt")}. In a first comparison, the order takes {taken} of ",
            said.Detail.ToString(),
            StringComparison.Ordinal
        );
    }

    [Theory]
    [InlineData(Effort.Quick)]
    [InlineData(Effort.Standard)]
    public void Either_way_never_sells_longer_than_one_way(Effort effort)
    {
        var random = new Random(9);
        for (int order = 0; order < (effort == Effort.Quick ? 40 : 6); order++)
        {
            CushionSpecification[] cushions =
            [
                .. Enumerable
                    .Range(0, random.Next(1, 5))
                    .Select(i => KnifeEdge(random.Next(24, 104) / 2m, random.Next(24, 104) / 2m, HandSewn) with { Id = $"c{i}" }),
            ];
            Length? Sold(Grain grain)
            {
                Drafting drafting = Drafting.Of(
                    Order(cushions[0], Fabric with { Grain = grain }) with
                    {
                        Cushions = [.. cushions],
                        Effort = effort,
                    }
                );
                return drafting.Violations.IsEmpty ? QuotePipeline.LayOut(drafting, CancellationToken.None).Single().Sold : null;
            }

            Length least = new[] { Sold(Grain.UpTheBolt), Sold(Grain.Railroaded) }.OfType<Length>().Min();
            Assert.True(Sold(Grain.Either) <= least, $"order {order}");
        }
    }

    [Fact]
    public void Of_three_cushions_every_way_is_tried()
    {
        // Turned one at a time from the better plain way it sold 4 3/8 yd: the last of these alone railroaded sells 4.
        CushionSpecification[] cushions =
        [
            KnifeEdge(32, 25, BackZipper) with
            {
                Id = "a",
                Quantity = 2,
            },
            KnifeEdge(49, 14, BackZipper) with
            {
                Id = "b",
            },
            Boxed(26, 17, 4, BackZipper) with
            {
                Id = "c",
            },
        ];
        FabricSpecification print = Fabric with
        {
            Repeat = new RepeatSpecification(In(9), In(13.5m), DropKind.Straight) { MotifX = In(4.5m), MotifY = In(4) },
        };
        IEnumerable<Length> ways = Enumerable
            .Range(0, 8)
            .Select(way =>
                Sold(print, [.. cushions.Select((one, i) => one with { Grain = (way >> i & 1) == 0 ? Grain.UpTheBolt : Grain.Railroaded })])
            );

        Assert.Equal(ways.Min(), Sold(print with { Grain = Grain.Either }, cushions));

        static Length Sold(FabricSpecification fabric, CushionSpecification[] cushions) =>
            QuotePipeline
                .LayOut(Drafting.Of(Order(cushions[0], fabric) with { Cushions = [.. cushions] }), CancellationToken.None)
                .Single()
                .Sold;
    }

    [Fact]
    public void Cushions_of_a_row_run_one_way_where_each_alone_would_run_another()
    {
        CushionSpecification across = KnifeEdge(52, 25, HandSewn) with { Id = "a" },
            along = KnifeEdge(30, 26, HandSewn) with { Id = "b" };
        OrderSpecification order = Order(across, Fabric with { Grain = Grain.Either }) with { Cushions = [across, along] };
        OrderSpecification row = order with { Rows = [new RowSpecification("bench", ["a", "b"])] };

        Assert.Single(Drafting.Of(row).Pieces.Select(piece => piece.IsRailroaded).Distinct());
        OrderSpecification fixedRow = row with { Cushions = [across with { Grain = Grain.UpTheBolt }, along] };
        Assert.All(Drafting.Of(fixedRow).Pieces, piece => Assert.False(piece.IsRailroaded));
    }

    [Fact]
    public void What_is_hidden_and_what_is_too_small_to_see_turns_freely()
    {
        CushionSpecification cushion = Boxed(24, 22, 4, HandSewn) with
        {
            Fabrics = new FabricRoles("main", "main", "main", "main") { InnerCover = "main" },
            Trim = new TrimSpecification { Edging = new WeltSpecification([EdgingPlace.Top], In(0.15625m), WeltCut.Bias) },
        };
        Drafting plain = Drafting.Of(Order(cushion, Fabric with { Grain = Grain.Railroaded })),
            pile = Drafting.Of(Order(cushion, Fabric with { OneWay = true }));

        Assert.All(plain.Pieces.Where(IsFree), piece => Assert.Equal(Nesting.Rotations.QuarterTurns, piece.Rotations));
        Assert.All(plain.Pieces.Where(piece => !IsFree(piece)), piece => Assert.True(piece.IsRailroaded));
        Assert.Equal(Nesting.Rotations.None, pile.Pieces.Single(piece => piece.Part.ToString() == "welt").Rotations);

        static bool IsFree(CutPiece piece) => piece.Panel!.Role is FabricRole.InnerCover or FabricRole.Edging;
    }

    [Fact]
    public void A_railroaded_layout_is_the_order_laid_by_hand_on_its_side()
    {
        // Two faces of 73 × 21 railroaded lie side by side across 54 in: 73 in, 2 1/8 yd.
        Yardage yardage = Quote(Order(KnifeEdge(72, 20, HandSewn), Fabric with { Grain = Grain.Railroaded })).Yardages[0];

        Assert.Equal(In(73), yardage.Layout.Length);
        Assert.All(yardage.Layout.Placements, laid => Assert.Equal((90, In(21), In(73)), (laid.Turn, laid.Width, laid.Length)));
    }
}
