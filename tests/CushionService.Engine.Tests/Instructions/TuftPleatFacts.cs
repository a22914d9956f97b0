using CushionService.Engine.Measures;
using CushionService.Engine.Patterns.Additions;
using CushionService.Engine.Patterns.Panels;
using CushionService.Engine.Quoting;
using CushionService.Engine.Specifications;
using CushionService.Engine.Specifications.Outlines;
using CushionService.Engine.Specifications.Trimmings;
using static CushionService.Engine.Tests.Instructions.StepOrder;

namespace CushionService.Engine.Tests.Instructions;

/// <summary>A face that is tufted deep is longer than its boxing: its extra is eased into small pleats opposite the tufts before the
/// seam, and before what is basted to its edge (common practice, no source).</summary>
public sealed class TuftPleatFacts
{
    private static readonly TuftSpecification Deep = new(3, 3, TuftGrid.Square, In(0.875m), false, In(1.5m));

    private static CushionSpecification Tufted(TuftSpecification tufts) =>
        Boxed(24, 22, 4, BackZipper) with
        {
            Trim = new TrimSpecification { Tufts = tufts },
        };

    [Fact]
    public void The_extra_of_both_faces_is_pleated_before_the_boxing_is_sewn_on() =>
        // Three intervals of 8 in, 2 (√(16 + 2.25) − 4) = 0.544 each, are 1.632; of 7 1/3 in, 0.590 each, 1.770.
        InOrder(
            Tufted(Deep),
            "Along the edges of top and bottom lay what is cut to spare for the tufts, about 1 5/8 in across and about 1 3/4 in along, in "
                + "small pleats opposite the outer tufts, and baste them within the allowance, until the seam line measures 24 in "
                + "by 22 in.",
            "Sew the top to the boxing, right sides together, 92 in on the seam line",
            "Tuft through the marks"
        );

    [Fact]
    public void A_base_that_is_cut_like_the_face_is_pleated_with_it() =>
        InOrder(
            Tufted(Deep) with
            {
                Trim = new TrimSpecification { Tufts = Deep, Base = BaseKind.AntiSlip },
            },
            "Cut the anti-slip base like bottom",
            "in small pleats opposite the outer tufts, the anti-slip base with the face that it lies on, and baste them",
            "Sew the bottom to the boxing"
        );

    [Fact]
    public void Each_seam_of_the_face_says_how_much_fuller_the_face_is()
    {
        // The front and the back: 25.632 / 24; the sides, each in two parts beside the zipper's returns: 23.770 / 22; joins: none.
        CushionSpecification cushion = Tufted(Deep);
        Pattern pattern = Drafting.Of(Order(cushion)).Patterns[0];
        double?[] ease =
        [
            .. pattern
                .Seams.Where(seam => seam.One.Concat(seam.Other).Any(edge => edge.Part == PartName.Top))
                .Select(seam => TuftEase.Of(cushion, pattern, seam))
                .Select(ratio => ratio < 1 ? 1 / ratio : ratio),
        ];

        Assert.Equal([1.0680, 1.0680, 1.0804, 1.0804, 1.0804, 1.0804], ease.Select(ratio => Math.Round(ratio!.Value, 4)).Order());
        Assert.All(pattern.Seams.Where(seam => seam.Kind == SeamKind.StripJoin), seam => Assert.Null(TuftEase.Of(cushion, pattern, seam)));
    }

    [Fact]
    public void A_disc_is_fuller_by_the_stretch_of_its_circle()
    {
        // One tuft in the middle of a disc of 16 in, pulled 3 in: 2 (√(64 + 9) − 8) = 1.088 in both ways, so its rim is π × 17.088.
        CushionSpecification round = Tufted(Deep with { Rows = 1, Columns = 1, PullDepth = In(3) }) with
        {
            Outline = new CircleOutline(In(16)),
        };
        Pattern pattern = Drafting.Of(Order(round)).Patterns[0];
        Seam seam = pattern.Seams.First(seam => seam.One.Concat(seam.Other).Any(edge => edge.Part == PartName.Top));
        double ratio = TuftEase.Of(round, pattern, seam)!.Value;

        Assert.Equal(17.088 / 16, ratio < 1 ? 1 / ratio : ratio, 1e-3);
    }

    [Fact]
    public void Shallow_tufts_leave_nothing_to_ease_and_faces_that_are_sewn_to_each_other_are_as_long()
    {
        CushionSpecification shallow = Tufted(Deep with { PullDepth = Length.Zero });
        CushionSpecification pillow = KnifeEdge(24, 22, HandSewn) with { Trim = new TrimSpecification { Tufts = Deep } };
        foreach (CushionSpecification cushion in (CushionSpecification[])[shallow, pillow])
        {
            Pattern pattern = Drafting.Of(Order(cushion)).Patterns[0];

            Assert.All(pattern.Seams, seam => Assert.Null(TuftEase.Of(cushion, pattern, seam)));
        }
    }
}
