using CushionService.Engine.Cutting;
using CushionService.Engine.Measures;
using CushionService.Engine.Quoting;
using CushionService.Engine.Specifications;
using CushionService.Engine.Specifications.Fabrics;
using CushionService.Engine.Specifications.Outlines;
using CushionService.Engine.Specifications.Shapes;
using CushionService.Engine.Specifications.Trimmings;

namespace CushionService.Engine.Tests.Cutting;

/// <summary>Faces that are wider than their fabric. Sources.Practice: joins stand away from the front's centre.</summary>
public sealed class FaceJoiningFacts
{
    private static readonly CushionSpecification Bench = Boxed(72, 60, 3, HandSewn);
    private static readonly CushionSpecification Joined = Bench with { Trim = new TrimSpecification { FaceJoins = FaceJoins.Allow } };

    [Fact]
    public void A_face_wider_than_the_fabric_is_refused_unless_it_may_be_joined()
    {
        Assert.Contains(Drafting.Of(Order(Bench)).Violations, violation => violation.Code == "wider-than-fabric");
        Assert.Empty(Drafting.Of(Order(Joined)).Violations);
    }

    [Fact]
    public void A_joined_face_has_a_whole_breadth_in_the_middle_and_says_where_it_is_joined()
    {
        // Sources.Derived: 54 − 2 × 1/2 = 53 in the middle, (72 − 53) / 2 = 9 1/2 at each side.
        Drafting drafting = Drafting.Of(Order(Joined));
        CutPiece[] top = [.. drafting.Pieces.Where(piece => piece.Part.ToString().StartsWith("top-", StringComparison.Ordinal))];

        Assert.Equal([In(10.5m), In(54), In(10.5m)], top.Select(piece => piece.Width));
        Assert.Equal(2, drafting.Warnings.Count(warning => warning.Code == "joined-face"));
        Assert.Contains("9 1/2 in and 62 1/2 in from its left edge", drafting.Warnings[0].Detail.ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public void An_ell_is_split_at_its_inside_corner()
    {
        // Sources.Practice: 60 × 60 with arms of 20 has one seam, in line with the inner edge of an arm: 20 × 60 and 40 × 20.
        CushionSpecification ell = Joined with
        {
            Outline = new Engine.Specifications.Outlines.EllOutline(In(60), In(60), In(40), In(40), Side.Right),
        };
        Drafting drafting = Drafting.Of(Order(ell));
        CutPiece[] top = [.. drafting.Pieces.Where(piece => piece.Part.ToString().StartsWith("top", StringComparison.Ordinal))];

        Assert.Empty(drafting.Violations);
        Assert.Equal(2, top.Length);
        Assert.Equal(
            [(20m, 60m), (40m, 20m)],
            top.Select(piece => (piece.Panel!.Width.In(LengthUnit.Inch), piece.Panel.Height.In(LengthUnit.Inch))).Order()
        );
    }

    [Fact]
    public void A_joined_front_boxing_lies_under_its_face_s_seams()
    {
        Drafting drafting = Drafting.Of(Order(Joined));
        Length[] Joins(string part) =>
            [
                .. drafting
                    .Pieces.Where(piece => piece.Part.ToString().StartsWith(part + "-", StringComparison.Ordinal))
                    .Select(piece => piece.Panel!.Width),
            ];

        Assert.Equal(Joins("top"), Joins("front"));
    }

    [Fact]
    public void Shorter_returns_come_before_a_join_through_the_zipper()
    {
        // Sources.Practice: 50 + 2 × 3 in is too long for 53 in; with returns of 1 1/2 in the section is whole.
        Drafting drafting = Drafting.Of(Order(Boxed(50, 22, 4, BackZipper, BoxingJoins.Back)));

        Assert.Contains(drafting.Pieces, piece => piece.Part.ToString() == "zipper-upper" && piece.Width == In(54));
        Assert.Contains(
            drafting.Warnings,
            warning => warning.Code == "returns-shortened" && warning.Detail.ToString().Contains("1 1/2 in")
        );
        Assert.DoesNotContain(
            Drafting.Of(Order(Boxed(46, 22, 4, BackZipper, BoxingJoins.Back))).Warnings,
            warning => warning.Code == "returns-shortened"
        );
    }

    [Fact]
    public void Fabric_that_may_be_railroaded_needs_no_join()
    {
        // 4.8, Sources.Practice: turned, the fabric's width limits the depth instead of the width.
        CushionSpecification shallow = Joined with
        {
            Outline = new Engine.Specifications.Outlines.RectangleOutline(In(72), In(40)),
        };
        Drafting railroaded = Drafting.Of(Order(shallow, Fabric with { Grain = Grain.Railroaded }));

        Assert.Contains(railroaded.Pieces, piece => piece.Part.ToString() == "top");
        Assert.DoesNotContain(railroaded.Warnings, warning => warning.Code == "joined-face");
    }

    [Fact]
    public void No_join_meets_the_centre_and_every_panel_fits_the_fabric()
    {
        for (var width = 54; width <= 240; width++)
        {
            Drafting drafting = Drafting.Of(
                Order(Joined with { Outline = new Engine.Specifications.Outlines.RectangleOutline(In(width), In(60)) })
            );
            CutPiece[] top = [.. drafting.Pieces.Where(piece => piece.Part.ToString().StartsWith("top-", StringComparison.Ordinal))];

            Assert.Equal(1, top.Length % 2);
            Assert.All(top, piece => Assert.True(piece.Width <= In(54), $"{width}"));
            Assert.Equal(In(width), top.Aggregate(Length.Zero, (sum, piece) => sum + piece.Panel!.Width));
            Assert.Empty(drafting.Violations);
        }
    }
}
