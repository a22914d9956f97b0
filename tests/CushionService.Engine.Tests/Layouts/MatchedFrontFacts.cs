using CushionService.Engine.Cutting;
using CushionService.Engine.Layouts;
using CushionService.Engine.Quoting;
using CushionService.Engine.Specifications;
using CushionService.Engine.Specifications.Fabrics;
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

    [Theory]
    [InlineData(BoxingMatch.Free)]
    [InlineData(BoxingMatch.Front)]
    public void Where_nothing_can_be_matched_pieces_are_as_long_as_the_fabric(BoxingMatch match)
    {
        // Free, or a front of 24 in beside a repeat of 36: only 18 in would be left.
        FabricSpecification fabric = Printed(match == BoxingMatch.Free ? 27 : 36);
        CushionSpecification seat = Seat with { Match = MatchSpecification.Usual with { Boxing = match } };

        Assert.Equal([In(54), In(10)], Boxing(Drafting.Of(Order(seat, fabric))).Select(piece => piece.Width).OrderDescending());
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
