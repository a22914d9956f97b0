using CushionService.Engine.Cutting;
using CushionService.Engine.Measures;
using CushionService.Engine.Quoting;
using CushionService.Engine.Specifications;
using CushionService.Engine.Specifications.Closures;
using CushionService.Engine.Specifications.Outlines;
using CushionService.Engine.Specifications.Shapes;

namespace CushionService.Engine.Tests.Cutting;

/// <summary>A bolster's body that is wider than its fabric: its outer ends keep the allowance of the closure, each join a seam's (follows
/// from the pieces; common practice, no source, for the place of the join).</summary>
public sealed class BodyPiecesFacts
{
    [Theory]
    // π × 14 is 43.98. Turned under 3/4 in at both ends, and 1/2 in at both sides of the join: one piece of 36, 36 − 1 1/4 = 34.75 of it
    // finished, and 43.98 − 34.75 + 1.25 = 10.48 on eighths.
    [InlineData(14, 36, "36 10 1/2")]
    // π × 10 is 31.42: 27 − 1 1/4 = 25.75 finished, and 5.67 + 1.25 = 6.92.
    [InlineData(10, 27, "27 7")]
    // 45 − 1 1/4 = 43.75 leaves 0.23: the shorter piece is 3 in at the least with what it takes more than a seam, 2.75 + 1.25 = 4.
    [InlineData(14, 45, "42 1/2 4")]
    // π × 16 is 50.27: 43.75 and 6.52 + 1.25 = 7.77.
    [InlineData(16, 45, "45 7 7/8")]
    // π × 18 is 56.55: 52.75 and 3.80 + 1.25 = 5.05.
    [InlineData(18, 54, "54 5 1/8")]
    public void A_zippered_body_leaves_its_turn_under_at_both_ends(int diameter, int width, string widths)
    {
        Drafting drafting = Drafting.Of(Order(Bolster(diameter, BackZipper), Fabric with { Width = In(width) }));
        CutPiece[] body = [.. drafting.Pieces.Where(piece => piece.Part.ToString().StartsWith("body", StringComparison.Ordinal))];

        Assert.Empty(drafting.Violations);
        Assert.Equal(widths, string.Join(' ', body.Select(piece => LengthText.FormatNumber(piece.Width, LengthUnit.Inch))));
    }

    [Fact]
    public void Every_closure_s_body_fits_on_every_fabric_that_takes_a_piece()
    {
        foreach (ClosureSpecification closure in new ClosureSpecification[] { BackZipper, HandSewn, HookAndLoop(0.5m, 1.5m) })
        {
            for (var eighths = 8 * 12; eighths < 8 * 60; eighths += 5)
            {
                Drafting drafting = Drafting.Of(Order(Bolster(14, closure), Fabric with { Width = In(eighths / 8m) }));

                Assert.DoesNotContain(
                    drafting.Violations,
                    violation => violation.Detail.ToString().Contains("body", StringComparison.Ordinal)
                );
            }
        }
    }

    private static CushionSpecification Bolster(decimal diameter, ClosureSpecification closure) =>
        KnifeEdge(1, 1, closure) with
        {
            Construction = Construction.Bolster,
            Outline = new CircleOutline(In(diameter)),
            Length = In(30),
        };
}
