using CushionService.Engine.Instructions;
using CushionService.Engine.Measures;
using CushionService.Engine.Patterns.Panels;
using CushionService.Engine.Quoting;
using CushionService.Engine.Specifications;
using CushionService.Engine.Specifications.Closures;
using CushionService.Engine.Specifications.Fabrics;
using CushionService.Engine.Specifications.Outlines;
using CushionService.Engine.Specifications.Shapes;
using CushionService.Engine.Specifications.Trimmings;

namespace CushionService.Engine.Tests.Instructions;

/// <summary>A face or a body that is too wide for its fabric is joined from panels first: what is sewn onto it later lies on any of them
/// (common practice, no source).</summary>
public sealed class JoinedPartFacts
{
    private static readonly CushionSpecification ThickRoll = BolsterStepFacts.Roll with { Outline = new CircleOutline(In(20)) };

    public static TheoryData<string, CushionSpecification, MarkPurpose, string> Marked =>
        new()
        {
            {
                "a tied roll",
                ThickRoll with
                {
                    Ends = new BolsterEnds(BolsterEndKind.Tied, In(6), In(0.75m)),
                },
                MarkPurpose.TieBody,
                "wind cord round body at"
            },
            {
                "straps across a wide underside",
                Wide(new TrimSpecification { Straps = new StrapSpecification(2, In(1), In(70), StrapMake.Folded) }),
                MarkPurpose.CatchStrap,
                "across the right side of bottom and"
            },
            {
                "ties at both ends of a wide back",
                Wide(new TrimSpecification { Ties = new TieSpecification(2, Side.Back, In(12), In(0.5m), StrapMake.Folded) }),
                MarkPurpose.CatchTies,
                "to the raw edge of bottom at"
            },
            {
                "corners that are drawn in over the joins of a wide face",
                KnifeEdge(70, 20, HandSewn) with
                {
                    CornerTaper = In(0.5m),
                    Trim = new TrimSpecification { FaceJoins = FaceJoins.Allow },
                },
                MarkPurpose.TaperCorner,
                "Mark the taper lines of top,"
            },
        };

    [Theory]
    [MemberData(nameof(Marked))]
    public void The_step_of_a_mark_names_the_whole_part_and_has_every_panel_that_carries_it(
        string what,
        CushionSpecification cushion,
        MarkPurpose purpose,
        string words
    )
    {
        OrderSpecification order = Order(cushion);
        Drafting drafting = Drafting.Of(order);
        string[] marked =
        [
            .. drafting.Pieces.Where(piece => piece.Panel?.Marks.Any(mark => mark.Purpose == purpose) == true).Select(piece => piece.Id),
        ];
        var step = SewingOrder
            .Of(order, drafting.Patterns, drafting.Pieces)
            .Single(step => step.Text.ToString().Contains(words, StringComparison.Ordinal));

        Assert.True(marked.Length > 1, $"{what}: {string.Join(", ", marked)}");
        Assert.Empty(marked.Except(step.Pieces));
    }

    [Fact]
    public void The_corners_of_a_face_that_is_joined_are_gathered_in_one_step()
    {
        OrderSpecification order = Order(
            Boxed(70, 20, 3, HandSewn) with
            {
                Construction = Construction.GatheredCorner,
                Trim = new TrimSpecification { FaceJoins = FaceJoins.Allow },
            }
        );
        Drafting drafting = Drafting.Of(order);
        string[] gathers =
        [
            .. SewingOrder
                .Of(order, drafting.Patterns, drafting.Pieces)
                .Select(step => step.Text.ToString())
                .Where(text => text.Contains("gathering rows", StringComparison.Ordinal)),
        ];

        Assert.Contains(drafting.Pieces, piece => piece.Part.ToString() == "top-3");
        Assert.Equal(2, gathers.Length);
        Assert.All(
            (string[])["front-left", "front-right", "of top, "],
            word => Assert.Contains(word, gathers[0], StringComparison.Ordinal)
        );
    }

    private static CushionSpecification Wide(TrimSpecification trim) =>
        Boxed(70, 20, 3, new ZipperClosure(Side.Front, Length.Zero, In(0.75m))) with
        {
            Trim = trim with { FaceJoins = FaceJoins.Allow },
        };
}
