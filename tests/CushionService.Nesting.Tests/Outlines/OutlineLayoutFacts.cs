using System.Collections.Immutable;
using CsCheck;
using CushionService.Nesting.Solving;

namespace CushionService.Nesting.Tests.Outlines;

/// <summary>Properties of whole layouts. The audit runs inside the kernel; NetTopologySuite is asked again.</summary>
public sealed class OutlineLayoutFacts
{
    private static readonly Gen<NestingPiece> GenRectangle = Gen.Select(
        Gen.Int[1, 40],
        Gen.Int[1, 40],
        Gen.Enum<Rotations>(),
        (width, length, turns) =>
            new NestingPiece
            {
                Width = width,
                Length = length,
                Rotations = turns,
            }
    );

    [Fact]
    public void Outlines_and_rectangles_share_a_strip_and_are_never_longer_than_their_boxes() =>
        Gen.Select(Gen.Int[60, 120], Shapes.GenPiece.Array[1, 5], GenRectangle.Array[0, 3])
            .Sample(
                (width, outlines, rectangles) =>
                {
                    var problem = new StripProblem { Width = width, Pieces = [.. outlines, .. rectangles] };
                    var layout = Nester.Nest(problem, Effort.Quick);
                    var boxes = Nester.Nest(
                        problem with
                        {
                            Pieces = [.. problem.Pieces.Select(piece => piece with { Outline = [] })],
                        },
                        Effort.Quick
                    );
                    Assert.True(Shapes.LargestSharedArea(problem, layout) < 1e-6);
                    Assert.True(layout.Length <= boxes.Length);
                    Assert.True(layout.LowerBound <= layout.Length);
                },
                seed: "0000000000001",
                iter: 20
            );

    [Fact]
    public void Flaws_and_repeats_are_kept() =>
        Gen.Select(Gen.Int[100, 150], Shapes.GenPiece.Array[2, 5], Gen.Int[0, 9], Gen.Int[5, 20])
            .Sample(
                (width, pieces, across, along) =>
                {
                    var problem = new StripProblem
                    {
                        Width = width,
                        Pieces =
                        [
                            .. pieces.Select(
                                (piece, index) =>
                                    index % 2 == 0
                                        ? piece with
                                        {
                                            Rotations = Rotations.None,
                                            Alignment = new Alignment(index, -2 * index),
                                        }
                                        : piece
                            ),
                        ],
                        Repeat = new RepeatLattice(across, along, across == 0 ? 0 : along / 2),
                        Flaws = [new GridRectangle(-5, 10, 20, 3), new GridRectangle(60, 0, 1, 70)],
                    };
                    var layout = Nester.Nest(problem, Effort.Quick);
                    Assert.True(Shapes.LargestSharedArea(problem, layout) < 1e-6);
                },
                seed: "0000000000001",
                iter: 15
            );

    [Fact]
    public void Two_right_triangles_make_a_square_when_they_may_turn_upside_down()
    {
        var triangle = Shapes.Piece((0, 0), (100, 0), (0, 100)) with { Quantity = 2 };
        Assert.Equal(200, Nester.Nest(Strip(100, triangle), Effort.Quick).Length);
        var turned = Nester.Nest(Strip(100, triangle with { Rotations = Rotations.HalfTurn }), Effort.Quick);
        Assert.Equal(100, turned.Length);
        Assert.True(turned.ProvenMinimal);
    }

    [Fact]
    public void A_piece_lies_in_the_hollow_of_another()
    {
        var tee = Shapes.Piece((30, 0), (60, 0), (60, 60), (90, 60), (90, 90), (0, 90), (0, 60), (30, 60));
        var block = new NestingPiece
        {
            Width = 30,
            Length = 60,
            Quantity = 2,
        };
        var layout = Nester.Nest(Strip(90, tee, block), Effort.Quick);
        Assert.Equal(90, layout.Length);
        Assert.Equal(ProofKind.Area, layout.Proof);
    }

    [Fact]
    public void Rectangles_within_the_pieces_prove_a_length_that_the_area_does_not()
    {
        // Two blocks and the box of an octagon are each more than half as wide as the strip: no two lie side by side. The octagon holds a
        // box of 80 by 80 (its corners, (10, 10) and the like, lie on the cut-off edges), as do two blocks of 60 by 50.
        var octagon = Shapes.Piece((20, 0), (80, 0), (100, 20), (100, 80), (80, 100), (20, 100), (0, 80), (0, 20));
        // They need 80 + 50 + 50 along the strip; the areas alone need (9200 + 6000) / 110, which is 138 and a little.
        var block = new NestingPiece
        {
            Width = 60,
            Length = 50,
            Quantity = 2,
        };
        var layout = Nester.Nest(Strip(110, octagon, block) with { Sale = new SaleLadder(0, 170, 1, 1) }, Effort.Quick);
        Assert.Equal(ProofKind.DualFeasible, layout.Proof);
        Assert.True(layout.ProvenMinimal);
        Assert.Equal(171, layout.LowerBound);
    }

    [Fact]
    public void A_length_is_not_shortened_below_what_can_be_bought_cheaper()
    {
        var problem = Strip(100, Shapes.Piece((0, 0), (100, 0), (50, 100)) with { Quantity = 3, Rotations = Rotations.HalfTurn });
        var layout = Nester.Nest(problem with { Sale = new SaleLadder(400, 50, 1, 1) }, Effort.Quick);
        Assert.True(layout.ProvenMinimal);
    }

    [Theory]
    [MemberData(nameof(IllFormed))]
    public void An_outline_that_is_no_simple_polygon_in_its_box_is_refused(string _, NestingPiece piece) =>
        Assert.Throws<ArgumentException>(() => Nester.Nest(Strip(100, piece), Effort.Quick));

    public static TheoryData<string, NestingPiece> IllFormed() =>
        new()
        {
            { "clockwise", Shapes.Piece((0, 0), (0, 9), (9, 0)) },
            { "crosses itself", Shapes.Piece((0, 0), (9, 9), (9, 0), (0, 9)) },
            { "two corners", Shapes.Piece((0, 0), (9, 9)) },
            { "runs back on itself", Shapes.Piece((0, 0), (9, 0), (9, 9), (9, 4), (0, 9)) },
            { "touches itself", Shapes.Piece((0, 0), (9, 0), (9, 9), (4, 0), (0, 9)) },
            { "smaller than its box", Shapes.Piece((0, 0), (9, 0), (9, 9)) with { Width = 10 } },
            { "twice the same corner", Shapes.Piece((0, 0), (9, 0), (9, 0), (9, 9)) },
            {
                "too large",
                new NestingPiece
                {
                    Width = 1,
                    Length = (1L << 30) + 1,
                    Outline = [new(0, 0), new(1, 0), new(0, (1L << 30) + 1)],
                }
            },
        };

    private static StripProblem Strip(long width, params ImmutableArray<NestingPiece> pieces) => new() { Width = width, Pieces = pieces };
}
