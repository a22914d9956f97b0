using CushionService.Engine.Cutting;
using CushionService.Engine.Measures;
using CushionService.Engine.Patterns.Panels;
using CushionService.Engine.Quoting;
using CushionService.Engine.Specifications;
using CushionService.Engine.Specifications.Closures;
using CushionService.Engine.Specifications.Fabrics;
using CushionService.Engine.Specifications.Outlines;
using CushionService.Engine.Specifications.Shapes;

namespace CushionService.Engine.Tests.Cutting;

/// <summary>What is joined or divided is notched as the edge that it is sewn to: at the middle of the whole edge, not of each part, and
/// the top has a notch where a join comes (common practice, no source).</summary>
public sealed class JoinNotchFacts
{
    [Fact]
    public void A_joined_boxing_and_its_top_are_notched_at_the_same_distance_from_the_corner()
    {
        // The strip of 19 + 24 + 19 in is joined 53 in from its start, 10 in beyond the front's right corner. The right side is 19 in long
        // to the closure: its middle is 9 1/2 in from that corner, 1/2 + 19 + 24 + 9 1/2 = 53 in from the cut end.
        CutPiece[] pieces = Pieces(Boxed(24, 22, 4, BackZipper, BoxingJoins.Back));
        PieceMark middle = Assert.Single(Marks(pieces, "boxing-1", "Notch middle of right-top;"));
        PieceMark join = Assert.Single(Marks(pieces, "top", "Notch on right where a join comes;"));

        Assert.Equal(In(53), middle.From.X);
        Assert.Empty(Marks(pieces, "boxing-2", "Notch middle of right-top;"));
        Assert.Equal(In(0.5m + 9.5m), Assert.Single(Marks(pieces, "top", "Notch middle of right;")).From.Y);
        Assert.Equal(In(0.5m + 10), join.From.Y);
        Assert.Single(pieces.SelectMany(PieceMarks.Of), mark => mark.Because.ToString().Contains("a join comes", StringComparison.Ordinal));
    }

    [Fact]
    public void The_halves_of_an_underside_meet_the_tops_middle_notch()
    {
        // The side of 18 in is halved by the zipper: the join is the middle, and the halves have no middle of their own.
        CutPiece[] pieces = Pieces(KnifeEdge(20, 18, new ZipperClosure(Side.Bottom, Length.Zero, In(0.75m))));

        Assert.Equal(In(9.5m), Assert.Single(Marks(pieces, "top", "Notch middle of right;")).From.Y);
        Assert.Empty(Marks(pieces, "bottom-front", "Notch middle of right;"));
        Assert.Empty(Marks(pieces, "bottom-back", "Notch middle of right;"));
        Assert.Empty(Marks(pieces, "top", "where a join comes"));
    }

    [Theory]
    [InlineData(Construction.KnifeEdge)]
    [InlineData(Construction.Flanged)]
    public void Flaps_that_overlap_are_both_notched_in_the_middle_of_the_side(Construction construction)
    {
        // Of a side of 18 in, 9 in from the front of the front flap, and 9 in from the back of the back one; a flange of 2 in adds to both.
        decimal flange = construction == Construction.Flanged ? 2 : 0;
        CushionSpecification cushion = KnifeEdge(20, 18, HookAndLoop(0.5m, 1, Side.Bottom)) with
        {
            Construction = construction,
            Flange = flange > 0 ? new FlangeSpecification(FlangeLayers.Single, In(flange), In(0.5m)) : null,
        };
        CutPiece[] pieces = Pieces(cushion);
        CutPiece back = pieces.Single(piece => piece.Part.ToString() == "bottom-back");

        foreach (string side in new[] { "left", "right" })
        {
            PieceMark onFront = Assert.Single(Marks(pieces, "bottom-front", $"Notch middle of {side};")),
                onBack = Assert.Single(Marks(pieces, "bottom-back", $"Notch middle of {side};"));
            Assert.Equal(In(0.5m + 9 + flange), onFront.From.Y);
            Assert.Equal(In(0.5m + 9 + flange), back.Length - onBack.From.Y);
        }
    }

    [Fact]
    public void A_loop_round_a_disc_has_the_discs_notches_and_no_others()
    {
        // Half of π × 34 in is longer than 37.7 in: middle and quarters, once each, however many pieces the loop takes. The two joins
        // beside the front lie on the front half.
        CushionSpecification box = Boxed(1, 1, 4, HandSewn, BoxingJoins.Back) with
        {
            Outline = new CircleOutline(In(34)),
        };
        CutPiece[] pieces = Pieces(box, Fabric with { Width = In(45) });
        CutPiece[] loop = [.. pieces.Where(piece => piece.Part.Kind == PartKind.Boxing)];

        Assert.Equal(3, loop.Length);
        foreach (string notch in new[] { "middle", "first quarter", "last quarter" })
        {
            Assert.Single(loop.SelectMany(PieceMarks.Of), mark => Is(mark, $"Notch {notch} of front-top"));
        }

        // At the middle of the back the third join is: the disc alone has a notch there.
        Assert.DoesNotContain(loop.SelectMany(PieceMarks.Of), mark => Is(mark, "Notch middle of back"));
        Assert.Single(Marks(pieces, "top", "Notch middle of back;"));
        Assert.Empty(Marks(pieces, "top", "Notch on back"));
        PieceMark[] joins = [.. Marks(pieces, "top", "Notch on front where a join comes;")];
        Assert.Equal(2, joins.Length);
        // As far from the middle of the front on both sides.
        Assert.InRange((joins[0].From.X + joins[1].From.X - In(35)).Nanometres, -100, 100);
        Assert.InRange((joins[0].From.Y - joins[1].From.Y).Nanometres, -100, 100);
    }

    private static CutPiece[] Pieces(CushionSpecification cushion, FabricSpecification? fabric = null) =>
        [.. Drafting.Of(Order(cushion, fabric)).Pieces];

    private static IEnumerable<PieceMark> Marks(CutPiece[] pieces, string part, string what) =>
        PieceMarks.Of(pieces.Single(piece => piece.Part.ToString() == part)).Where(mark => Is(mark, what));

    private static bool Is(PieceMark mark, string what) => mark.Because.ToString().Contains(what, StringComparison.Ordinal);
}
