using CushionService.Contract.Answers;
using CushionService.Desk;

namespace CushionService.Tests.Orders;

/// <summary>What is fuller in a seam is its other side: a ruffle, and a face that is tufted deep (follows from the take-up of each
/// interval).</summary>
public sealed class SeamFullnessTests
{
    [Fact]
    public void A_deep_tufted_face_is_the_fuller_side_of_its_seams()
    {
        // Three intervals of 22 / 3 in pulled 1 1/2 in deep take up 2 (√(13.444 + 2.25) − 3.667) = 0.590 each: 23.770 / 22. Along, 20 / 3:
        // 2 (√(11.111 + 2.25) − 3.333) = 0.644 each: 21.932 / 20.
        PiecesAnswer answer = new OrderDesk()
            .Handle(
                new(
                    SampleOrder.Changed(
                        """
                        {
                          "/cushions/0/handle": null,
                          "/cushions/0/tufts": { "rows": 3, "columns": 3, "pullDepth": "1 1/2" }
                        }
                        """
                    ),
                    []
                ),
                Purposes.Pieces,
                CancellationToken.None
            )
            .Answer!;

        Assert.Equal(1.0804, Fullness(answer, "top.front"));
        Assert.Equal(1.0804, Fullness(answer, "bottom.front"));
        Assert.Equal(1.0966, Fullness(answer, "top.right"));
        Assert.All(answer.Seams.Where(seam => seam.Cushion != "seat"), seam => Assert.Null(seam.Fullness));
    }

    private static double? Fullness(PiecesAnswer answer, string edge) =>
        answer.Seams.Single(seam => seam.Cushion == "seat" && seam.Other.Contains(edge)).Fullness;
}
