using CushionService.Engine.Cutting;
using CushionService.Engine.Geometry;
using CushionService.Engine.Measures;
using CushionService.Engine.Patterns.Panels;
using CushionService.Engine.Quoting;
using CushionService.Engine.Specifications;
using CushionService.Engine.Specifications.Fabrics;
using CushionService.Engine.Specifications.Outlines;
using CushionService.Engine.Specifications.Shapes;
using CushionService.Engine.Specifications.Trimmings;

namespace CushionService.Engine.Tests.Layouts;

/// <summary>Where the motif lies on the pieces of a cushion, and what is said where it does not.</summary>
public sealed class MatchingFacts
{
    private static readonly MatchSpecification AllRound = MatchSpecification.Usual with { Boxing = BoxingMatch.AllRound };
    private static readonly RepeatSpecification Oblong = new(In(12), In(9), DropKind.Straight);

    [Fact]
    public void All_round_opposite_sides_are_cut_on_one_phase_and_the_sides_say_where_they_cannot_carry_on()
    {
        // Sources.Practice: upright all round, level with the front, a motif in line with the face's.
        OrderSpecification order = Order(Boxed(14, 16, 3, HandSewn) with { Match = AllRound }, Fabric with { Repeat = Oblong });
        Drafting drafting = Drafting.Of(order);
        Phased front = Phase(drafting, "front"),
            back = Phase(drafting, "back"),
            left = Phase(drafting, "left"),
            right = Phase(drafting, "right");

        Assert.Equal((front, left), (back, right));
        Assert.Equal(front.Along, left.Along);
        Assert.Equal(["seat/left", "seat/right"], Named(drafting, "the face's pattern does not run on").Order());
    }

    [Fact]
    public void A_square_repeat_is_carried_over_the_sides_too()
    {
        // Sources.Mathematics: a quarter turn leaves a square lattice as it is; over the side the motif is half a width above the strip,
        // as it is over the front of a square cushion.
        OrderSpecification order = Order(
            Boxed(16, 16, 3, HandSewn) with
            {
                Match = AllRound,
            },
            Fabric with
            {
                Repeat = new RepeatSpecification(In(12), In(12), DropKind.Straight),
            }
        );
        Drafting drafting = Drafting.Of(order);
        Panel right = drafting.Patterns[0][PartName.Side(EdgeName.Right)];

        Assert.Equal(new Point(In(8), In(3 + 8)), right.Match);
        Assert.Empty(drafting.Warnings);
    }

    [Fact]
    public void Over_the_sides_of_an_oblong_a_square_repeat_is_level_with_the_front_and_said_not_to_run_on()
    {
        // Over the front the motif is 16 / 2 = 8 in above the strip, over the side it would be 14 / 2 = 7: the corners come first.
        OrderSpecification order = Order(
            Boxed(14, 16, 3, HandSewn) with
            {
                Match = AllRound,
            },
            Fabric with
            {
                Repeat = new RepeatSpecification(In(12), In(12), DropKind.Straight),
            }
        );
        Drafting drafting = Drafting.Of(order);

        Assert.Equal(new Point(In(8), In(3 + 8)), drafting.Patterns[0][PartName.Side(EdgeName.Right)].Match);
        Assert.Equal(["seat/left", "seat/right"], Named(drafting, "does not run on").Order());
    }

    [Fact]
    public void A_part_of_a_strip_that_is_matched_elsewhere_is_said_to_continue_from_there()
    {
        // A loop of 24 × 27 in, round at the front, is three pieces on 45 in: the middle one has the middle of the round front.
        CushionSpecification box = Boxed(1, 1, 4, HandSewn, BoxingJoins.Back) with
        {
            Outline = new DShapeOutline(In(24), In(27)),
            Match = AllRound,
        };
        FabricSpecification fabric = Fabric with { Width = In(45), Repeat = new RepeatSpecification(In(5), In(5), DropKind.Straight) };
        Drafting drafting = Drafting.Of(Order(box, fabric));

        Assert.Equal(["seat/boxing-2"], Named(drafting, "at its middle alone"));
        Assert.Equal(
            ["seat/boxing-1", "seat/boxing-3"],
            Named(drafting, "continues the pattern of the piece that it is joined to").Order()
        );
    }

    [Fact]
    public void The_straight_front_of_a_joined_strip_runs_round_nothing()
    {
        // 54 − 27 = 27 in may be cut: the front of 24 and its seams is a piece of its own; the others continue it round the corners.
        CushionSpecification seat = Boxed(24, 22, 4, BackZipper, BoxingJoins.Back) with
        {
            Match = AllRound,
        };
        Drafting drafting = Drafting.Of(Order(seat, Fabric with { Repeat = new RepeatSpecification(In(27), In(27), DropKind.Straight) }));

        Assert.Equal(["seat/boxing-1", "seat/boxing-3"], Named(drafting, "continues").Order());
        Assert.DoesNotContain("seat/boxing-2", Named(drafting, "runs round"));
    }

    [Fact]
    public void A_one_way_print_is_not_carried_over_the_back()
    {
        OrderSpecification order = Order(
            Boxed(14, 16, 3, HandSewn) with
            {
                Match = AllRound,
            },
            Fabric with
            {
                OneWay = true,
                Repeat = new RepeatSpecification(In(12), In(12), DropKind.Straight),
            }
        );

        Assert.Equal(["seat/back", "seat/left", "seat/right"], Named(Drafting.Of(order), "does not run on").Order());
    }

    [Fact]
    public void Both_strips_of_a_closure_carry_one_pattern()
    {
        // The lower strip's motif is as far above the bottom seam as the upper one's above the same line.
        CushionSpecification box = Boxed(14, 16, 3, BackZipper with { Return = Length.Zero }) with
        {
            Match = AllRound,
        };
        Pattern pattern = Drafting.Of(Order(box, Fabric with { Repeat = Oblong })).Patterns[0];
        Panel upper = pattern[new PartName(PartKind.ZipperUpper)],
            lower = pattern[new PartName(PartKind.ZipperLower)];

        Assert.Equal(In(3 + 8), lower.Match!.Value.Y);
        Assert.Equal(lower.Match.Value.Y, upper.Match!.Value.Y + (In(3) - upper.Height));
    }

    [Theory]
    [InlineData(FaceMatch.Centred, UndersideMatch.Free, BoxingMatch.Front, "front top")]
    [InlineData(FaceMatch.Centred, UndersideMatch.AsTop, BoxingMatch.Free, "bottom top")]
    [InlineData(FaceMatch.Free, UndersideMatch.AsTop, BoxingMatch.Free, "")]
    public void What_is_free_is_not_matched(FaceMatch faces, UndersideMatch underside, BoxingMatch boxing, string matched)
    {
        CushionSpecification box = Boxed(14, 14, 3, HandSewn) with { Match = new(faces, underside, boxing) };

        Assert.Equal(matched, string.Join(' ', Matched(Drafting.Of(Order(box, Fabric with { Repeat = Oblong })))));
    }

    [Fact]
    public void The_front_of_a_wedge_carries_on_its_slope()
    {
        // Sources.Mathematics: a slope of √(12² + 5²) = 13 in; its middle is 6 1/2 in above the front's seam.
        CushionSpecification wedge = Boxed(14, 12, 6, HandSewn) with
        {
            Construction = Construction.Wedge,
            FrontThickness = In(1),
        };
        Drafting drafting = Drafting.Of(Order(wedge, Fabric with { Repeat = Oblong }));

        Assert.Equal(new Point(In(7), In(1 + 6.5m)), drafting.Patterns[0][PartName.Side(EdgeName.Front)].Match);
    }

    [Fact]
    public void A_waterfall_is_matched_on_its_top_and_says_what_its_underside_shows()
    {
        CushionSpecification waterfall = Boxed(14, 16, 3, HandSewn) with { Construction = Construction.Waterfall };
        Drafting drafting = Drafting.Of(Order(waterfall, Fabric with { Repeat = Oblong }));

        Assert.Equal(new Point(In(7), In(16 + 3 + 8)), drafting.Patterns[0][new PartName(PartKind.Main)].Match);
        Assert.Equal(["seat/main"], Named(drafting, "on the underside the pattern runs on"));
    }

    [Fact]
    public void A_bolster_bears_a_motif_in_the_middle_of_its_body()
    {
        CushionSpecification bolster = KnifeEdge(1, 1, HandSewn) with
        {
            Construction = Construction.Bolster,
            Outline = new CircleOutline(In(8)),
            Length = In(20),
        };
        Drafting drafting = Drafting.Of(Order(bolster, Fabric with { Repeat = Oblong }));
        Panel body = drafting.Patterns[0][new PartName(PartKind.Body)];

        Assert.Equal(new Point(body.Width.HalfUp(), In(10)), body.Match);
        Assert.Equal(["body", "left-end", "right-end"], Matched(drafting));
    }

    [Theory]
    [InlineData(Construction.Mitred)]
    [InlineData(Construction.GatheredCorner)]
    public void Corners_without_a_boxing_are_said_to_cut_the_pattern(Construction construction)
    {
        CushionSpecification cushion = Boxed(14, 14, 3, HandSewn) with { Construction = construction };

        Assert.Equal(["seat/top"], Named(Drafting.Of(Order(cushion, Fabric with { Repeat = Oblong })), "corners"));
    }

    [Theory]
    [InlineData(0, "bottom top wall")]
    [InlineData(6, "bottom gore-1 gore-2 gore-3 gore-4 gore-5 gore-6 wall-1 wall-2 wall-3 wall-4 wall-5 wall-6")]
    public void A_pouf_is_matched_to_its_bottom(int gores, string matched)
    {
        CushionSpecification pouf = KnifeEdge(1, 1, HandSewn) with
        {
            Construction = Construction.Pouf,
            Outline = new CircleOutline(In(14)),
            Thickness = In(10),
            Gores = gores,
        };
        Drafting drafting = Drafting.Of(Order(pouf, Fabric with { Repeat = new RepeatSpecification(In(12), In(4), DropKind.Straight) }));

        Assert.Equal(matched, string.Join(' ', Matched(drafting)));
        Assert.Equal(gores == 0 ? ["seat/wall"] : [], Named(drafting, "curve"));
    }

    [Fact]
    public void Every_stretch_of_a_joined_front_is_matched()
    {
        CushionSpecification bench = Boxed(90, 20, 3, HandSewn, BoxingJoins.Corners) with
        {
            Trim = TrimSpecification.None with { FaceJoins = FaceJoins.Allow },
        };
        Drafting drafting = Drafting.Of(Order(bench, Fabric with { Repeat = new RepeatSpecification(In(12), In(3), DropKind.Straight) }));

        Assert.Equal(["bottom-1", "bottom-2", "bottom-3", "front-1", "front-2", "front-3", "top-1", "top-2", "top-3"], Matched(drafting));
        // The stretches lie under the face's: each front's motif is in line with that of the panel above it.
        Pattern pattern = drafting.Patterns[0];
        foreach (int stretch in Enumerable.Range(1, 3))
        {
            Panel front = pattern.Panels.Single(panel => panel.Part.ToString() == $"front-{stretch}"),
                top = pattern.Panels.Single(panel => panel.Part.ToString() == $"top-{stretch}");
            Assert.Equal(top.Match!.Value.X, front.Match!.Value.X);
        }
    }

    [Fact]
    public void What_fits_only_at_some_positions_is_said_with_the_positions()
    {
        // Sources.Mathematics: a face of 45 in moves by 9 in on 54 in; its middle, and so a motif, lies from 22 1/2 to 31 1/2 in.
        FabricSpecification fabric = Fabric with
        {
            Repeat = new RepeatSpecification(In(12), In(40), DropKind.Straight),
        };
        Violation warning = Drafting.Of(Order(KnifeEdge(44, 18, HandSewn), fabric)).Warnings[0];

        Assert.Equal("not-matched", warning.Code);
        Assert.Contains(
            "only where the centre of a motif is from 22 1/2 in to 31 1/2 in",
            warning.Detail.ToString(),
            StringComparison.Ordinal
        );
    }

    private static string[] Matched(Drafting drafting) =>
        [.. drafting.Pieces.Where(piece => piece.Panel?.Match is not null).Select(piece => piece.Part.ToString()).Order()];

    private static string[] Named(Drafting drafting, string reason) =>
        [
            .. drafting
                .Warnings.Where(warning =>
                    warning.Code == "not-matched" && warning.Detail.ToString().Contains(reason, StringComparison.Ordinal)
                )
                .Select(warning => warning.Detail.ToString().Split(' ')[1]),
        ];

    // Where the motif is above the strip's lower seam, and off its middle, modulo the repeat.
    private static Phased Phase(Drafting drafting, string part)
    {
        CutPiece piece = drafting.Pieces.Single(piece => piece.Part.ToString() == part);
        Point match = piece.Panel!.Match!.Value;
        long Modulo(Length length, decimal repeat) =>
            ((length.Nanometres % In(repeat).Nanometres) + In(repeat).Nanometres) % In(repeat).Nanometres;
        return new Phased(Modulo(match.X - piece.Panel.Width.HalfUp(), 9), Modulo(match.Y, 12));
    }

    private readonly record struct Phased(long Across, long Along);
}
