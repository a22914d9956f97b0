using CushionService.Engine.Measures;
using CushionService.Engine.Specifications;
using CushionService.Engine.Specifications.Closures;
using CushionService.Engine.Specifications.Outlines;
using CushionService.Engine.Specifications.Shapes;
using static CushionService.Engine.Tests.Instructions.StepOrder;

namespace CushionService.Engine.Tests.Instructions;

/// <summary>A zipper in the seam between two faces (common practice, no source).</summary>
public sealed class SeamZipperFacts
{
    private static readonly ZipperClosure Lapped = new(Side.Left, Length.Zero, In(0.75m), In(0.5m));

    [Fact]
    public void The_seam_of_a_lapped_zipper_is_sewn_as_deep_as_its_sides_are_cut()
    {
        // Sources.Derived: 18 + 4 and 3/4 + 1/2 make 23 1/4 in; the left side has the 3/4.
        CushionSpecification mitred = Boxed(18, 16, 4, Lapped) with
        {
            Construction = Construction.Mitred,
        };

        Assert.StartsWith("top 23 1/4 × 21; bottom 23 1/4 × 21", CutList(Order(mitred)), StringComparison.Ordinal);
        InOrder(
            mitred,
            "Sew the left seam of the top and the bottom, right sides together with 3/4 in seams",
            "Sew the other sides of the top and the bottom together, right sides together and notches matched, 52 in with 1/2 in seams"
        );
        InOrder(
            KnifeEdge(18, 16, Lapped),
            "Sew the left seam of the top and the bottom, right sides together with 3/4 in seams",
            "52 in with 1/2 in seams"
        );
    }

    [Fact]
    public void The_seam_of_a_centred_one_has_the_usual_allowance() =>
        InOrder(KnifeEdge(18, 16, BackZipper), "Sew the back seam of the top and the bottom, right sides together with 1/2 in seams");
}
