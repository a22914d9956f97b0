using CushionService.Engine.Cutting;
using CushionService.Engine.Layouts;
using CushionService.Engine.Measures;
using CushionService.Engine.Quoting;
using CushionService.Engine.Specifications;
using CushionService.Engine.Specifications.Fabrics;
using CushionService.Engine.Specifications.Outlines;
using CushionService.Engine.Specifications.Practices;
using CushionService.Engine.Specifications.Shapes;
using CushionService.Engine.Specifications.Trimmings;

namespace CushionService.Engine.Tests.Layouts;

/// <summary>What is joined of a printed fabric leaves a repeat's width beside it, so that it finds its motif (common practice, no source;
/// the widths follow from the fabric's width less a repeat).</summary>
public sealed class MatchedFrontFacts
{
    [Fact]
    public void A_matched_front_is_a_piece_of_its_own_between_its_corners()
    {
        // 54 − 27 = 27 in may be cut: the front of 24 and its seams is 25, and leaves no reach round the corners.
        Drafting drafting = Drafting.Of(Order(Seat, Printed(27)));

        Assert.Equal([In(20), In(25), In(20)], Boxing(drafting).Select(piece => piece.Width));
        Assert.All(Boxing(drafting), piece => Assert.NotEqual(false, MatchedAt.Of(Printed(27), piece)?.IsEverywhere));
    }

    [Fact]
    public void A_small_repeat_lets_the_front_reach_round_its_corners()
    {
        // 54 − 9 = 45 in, less 2 × 1/2 in of seam: the one join lies 44 in from an end, 4 in short of nothing that shows.
        CutPiece[] boxing = Boxing(Drafting.Of(Order(Seat, Printed(9))));

        Assert.Equal(In(62 + 2), boxing.Aggregate(In(0), (sum, piece) => sum + piece.Width));
        Assert.All(boxing, piece => Assert.True(piece.Width <= In(45)));
    }

    [Fact]
    public void What_is_free_is_as_long_as_the_fabric()
    {
        CushionSpecification seat = Seat with { Match = MatchSpecification.Usual with { Boxing = BoxingMatch.Free } };

        Assert.Equal([In(54), In(10)], Boxing(Drafting.Of(Order(seat, Printed(27)))).Select(piece => piece.Width).OrderDescending());
    }

    [Theory]
    // 36 in of repeat leave 18 in for a front of 25 at every position; on its own it finds its motif at 54 − 25 = 29 in of 36, where its
    // face does. With the motif 30 in across, 30 − 12 1/2 and 30 + 12 1/2 in lie on the fabric.
    [InlineData(24, 22, 36, null, "20 25 20")]
    // 44 in: with a motif at 4 + 2 × 13 = 30 in the front of 45 lies from 7 1/2 to 52 1/2 in; 1 1/2 in more would reach the edge, which is
    // too near to its corner for a join. Its place unknown, it is matched where its face is, at 9 in of 13.
    [InlineData(44, 20, 13, 4.0, "18 45 18")]
    [InlineData(44, 20, 13, null, "18 45 18")]
    // With a motif in the middle of the fabric the piece over the front may reach 27 − 1/2 in to both sides of it, less half a cutting
    // step: 14 7/16 in beyond its corners.
    [InlineData(24, 22, 54, 27.0, "5 5/8 53 7/8 5 5/8")]
    // At 5 in there is no room for half a front: nothing is matched, and the strip is as long as the fabric.
    [InlineData(24, 22, 54, 5.0, "54 10")]
    public void A_front_is_cut_so_that_it_is_matched_wherever_it_fits(
        double front,
        double depth,
        double repeat,
        double? motif,
        string widths
    )
    {
        FabricSpecification fabric = Fabric with
        {
            Repeat = new RepeatSpecification(In((decimal)repeat), In((decimal)repeat), DropKind.Straight)
            {
                MotifX = motif is { } at ? In((decimal)at) : null,
            },
        };
        CutPiece[] boxing = Boxing(Drafting.Of(Order(Boxed((decimal)front, (decimal)depth, 4, BackZipper, BoxingJoins.Back), fabric)));

        Assert.Equal(widths, string.Join(' ', boxing.Select(piece => LengthText.FormatNumber(piece.Width, LengthUnit.Inch))));
        Assert.Equal(motif != 5.0, boxing.Any(piece => FabricNesting.IsMatched(fabric, piece)));
    }

    [Fact]
    public void A_metric_front_is_matched_likewise()
    {
        // A front of 108.5 cm is cut 111.5; a motif at 16.5 + 2 × 33 = 82.5 cm lets it lie from 26.75 to 138.25 cm of 140.
        FabricSpecification fabric = Fabric with
        {
            Width = Mm(1400),
            Repeat = new RepeatSpecification(Mm(330), Mm(330), DropKind.Straight) { MotifX = Mm(165) },
        };
        CushionSpecification bench = Seat with { Outline = new RectangleOutline(Mm(1085), Mm(500)), SeamAllowance = Mm(15) };
        OrderSpecification order = Order(bench, fabric) with { Workroom = WorkroomPractice.Metric };
        Drafting drafting = Drafting.Of(order);

        Assert.Contains(Boxing(drafting), piece => piece.Width == Mm(1115) && MatchedAt.Of(fabric, piece) is { IsEverywhere: true });
        Assert.DoesNotContain(drafting.Warnings, warning => warning.Code == "not-matched");
    }

    [Fact]
    public void A_strip_that_fits_whole_is_joined_where_its_front_would_lose_its_match()
    {
        // 14 + 2 × (14 − 3) = 36 in: cut 37, it is matched where the motif is within 17 in of 27; cut 27 or less, everywhere.
        CutPiece[] boxing = Boxing(Drafting.Of(Order(Boxed(14, 14, 3, BackZipper, BoxingJoins.Back), Printed(27))));

        Assert.Equal(In(36 + 2), boxing.Aggregate(In(0), (sum, piece) => sum + piece.Width));
        Assert.All(boxing, piece => Assert.NotEqual(false, MatchedAt.Of(Printed(27), piece)?.IsEverywhere));
    }

    [Fact]
    public void A_joined_face_is_narrower_where_that_takes_no_further_join()
    {
        // 54 − 13 1/2 = 40 1/2 in may be cut, 39 1/2 in finished; (110 − 39 1/2) / 2 = 35 1/4 at each side.
        CushionSpecification bench = Boxed(110, 20, 4, BackZipper, BoxingJoins.Back) with
        {
            Trim = new TrimSpecification { FaceJoins = FaceJoins.Allow },
        };
        CutPiece[] top = [.. Drafting.Of(Order(bench, Printed(13.5m))).Pieces.Where(piece => piece.Panel!.Role == FabricRole.Top)];

        Assert.Equal([In(36.25m), In(40.5m), In(36.25m)], top.Select(piece => piece.Width));
        Assert.All(top, piece => Assert.True(MatchedAt.Of(Printed(13.5m), piece)!.Value.IsEverywhere));
    }

    private static CushionSpecification Seat => Boxed(24, 22, 4, BackZipper, BoxingJoins.Back);

    private static FabricSpecification Printed(decimal repeat) =>
        Fabric with
        {
            Repeat = new RepeatSpecification(In(repeat), In(repeat), DropKind.Straight),
        };

    private static CutPiece[] Boxing(Drafting drafting) =>
        [.. drafting.Pieces.Where(piece => piece.Part.ToString().StartsWith("boxing", StringComparison.Ordinal))];
}
