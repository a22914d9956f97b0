using CushionService.Engine.Specifications;
using CushionService.Engine.Specifications.Closures;
using CushionService.Engine.Specifications.Outlines;
using CushionService.Engine.Specifications.Shapes;
using CushionService.Engine.Specifications.Trimmings;

namespace CushionService.Engine.Tests.Cutting;

/// <summary>Whole cut lists of worked examples, in inches, widths before lengths.</summary>
public sealed class CutListFacts
{
    private static readonly Dictionary<string, OrderSpecification> Orders = new()
    {
        ["knife-edge 18 × 18"] = Order(KnifeEdge(18, 18, HandSewn)),
        ["knife-edge 18 × 18, zipper in the underside"] = Order(KnifeEdge(18, 18, new ZipperClosure(Side.Bottom, In(0), In(0.75m)))),
        ["envelope 18 × 18, overlap 4, hems 1/2 + 1/2"] = Order(KnifeEdge(18, 18, new EnvelopeClosure(Side.Bottom, In(0.5m), In(4)))),
        ["box 24 × 22 × 4, zipper with returns 3, wide fabric"] = Order(
            Boxed(24, 22, 4, BackZipper, BoxingJoins.Back),
            Fabric with
            {
                Width = In(72),
            }
        ),
        ["box 17 × 15 × 2, hook-and-loop with hems 1/2 + 1/2, overlap 1, strap 1 × 9"] = Order(
            Boxed(17, 15, 2, HookAndLoop(0.5m, 1)) with
            {
                Handle = new HandleSpecification(HandleKind.FoldedStrap, Side.Front, In(1), In(9), In(8.5m)),
            }
        ),
        ["box 17 × 15 × 4, hook-and-loop with hems 1/2 + 1/2, overlap 1"] = Order(Boxed(17, 15, 4, HookAndLoop(0.5m, 1))),
        ["box 22 × 20 × 3, hook-and-loop with hems 1/2 + 1/2, overlap 1 1/4, strap 1 1/4 × 10 1/2"] = Order(
            Boxed(22, 20, 3, HookAndLoop(0.5m, 1.25m)) with
            {
                Handle = Strap,
            }
        ),
        ["box 22 × 20 × 3, hook-and-loop with hems 3/4 + 3/4, overlap 3/4"] = Order(Boxed(22, 20, 3, HookAndLoop(0.75m, 0.75m))),
        ["box 22 × 20 × 4, hook-and-loop with hems 1 + 1, overlap 1"] = Order(Boxed(22, 20, 4, HookAndLoop(1, 1))),
        ["box 22 × 20 × 3, hook-and-loop with hems 1 + 1, overlap 1"] = Order(Boxed(22, 20, 3, HookAndLoop(1, 1))),
        ["box 22 × 20 × 5, hook-and-loop with hems 1 + 1, overlap 1"] = Order(Boxed(22, 20, 5, HookAndLoop(1, 1))),
        ["box 12 × 12 × 3, hand-sewn"] = Order(Boxed(12, 12, 3, HandSewn)),
        ["box 12 × 12 × 3, hand-sewn, wrapped"] = Order(Boxed(12, 12, 3, HandSewn, BoxingJoins.Back)),
        ["box 18 × 18 × 3, envelope underneath"] = Order(Boxed(18, 18, 3, new EnvelopeClosure(Side.Bottom, In(0.5m), In(4)))),
    };

    [Theory]
    [InlineData("knife-edge 18 × 18", "top 19 × 19; bottom 19 × 19", Sources.Derived)]
    [InlineData(
        "knife-edge 18 × 18, zipper in the underside",
        "top 19 × 19; bottom-front 19 × 10 1/4; bottom-back 19 × 10 1/4",
        Sources.Derived
    )]
    [InlineData(
        "envelope 18 × 18, overlap 4, hems 1/2 + 1/2",
        "top 19 × 19; bottom-front 19 × 12 1/2; bottom-back 19 × 12 1/2",
        Sources.Derived
    )]
    [InlineData(
        "box 24 × 22 × 4, zipper with returns 3, wide fabric",
        "top 25 × 23; bottom 25 × 23; zipper-upper 31 × 3 1/4; zipper-lower 31 × 3 1/4; boxing 63 × 5",
        Sources.Derived
    )]
    [InlineData(
        "box 17 × 15 × 2, hook-and-loop with hems 1/2 + 1/2, overlap 1, strap 1 × 9",
        "top 18 × 16; bottom 18 × 16; front 18 × 3; right 16 × 3; closure-upper 18 × 3; closure-lower 18 × 3; left 16 × 3; handle 4 × 10",
        Sources.Practice
    )]
    [InlineData(
        "box 17 × 15 × 4, hook-and-loop with hems 1/2 + 1/2, overlap 1",
        "top 18 × 16; bottom 18 × 16; front 18 × 5; right 16 × 5; closure-upper 18 × 4; closure-lower 18 × 4; left 16 × 5",
        Sources.Practice
    )]
    [InlineData(
        "box 22 × 20 × 3, hook-and-loop with hems 1/2 + 1/2, overlap 1 1/4, strap 1 1/4 × 10 1/2",
        "top 23 × 21; bottom 23 × 21; front 23 × 4; right 21 × 4; closure-upper 23 × 3 5/8; closure-lower 23 × 3 5/8; left 21 × 4; "
            + "handle 5 × 11 1/2",
        Sources.Derived
    )]
    [InlineData(
        "box 22 × 20 × 3, hook-and-loop with hems 3/4 + 3/4, overlap 3/4",
        "top 23 × 21; bottom 23 × 21; front 23 × 4; right 21 × 4; closure-upper 23 × 3 7/8; closure-lower 23 × 3 7/8; left 21 × 4",
        Sources.Derived
    )]
    [InlineData(
        "box 22 × 20 × 4, hook-and-loop with hems 1 + 1, overlap 1",
        "top 23 × 21; bottom 23 × 21; front 23 × 5; right 21 × 5; closure-upper 23 × 5; closure-lower 23 × 5; left 21 × 5",
        Sources.Derived
    )]
    [InlineData(
        "box 22 × 20 × 3, hook-and-loop with hems 1 + 1, overlap 1",
        "top 23 × 21; bottom 23 × 21; front 23 × 4; right 21 × 4; closure-upper 23 × 4 1/2; closure-lower 23 × 4 1/2; left 21 × 4",
        Sources.Derived
    )]
    [InlineData(
        "box 22 × 20 × 5, hook-and-loop with hems 1 + 1, overlap 1",
        "top 23 × 21; bottom 23 × 21; front 23 × 6; right 21 × 6; closure-upper 23 × 5 1/2; closure-lower 23 × 5 1/2; left 21 × 6",
        Sources.Derived
    )]
    [InlineData(
        "box 12 × 12 × 3, hand-sewn",
        "top 13 × 13; bottom 13 × 13; front 13 × 4; right 13 × 4; back 13 × 4; left 13 × 4",
        Sources.Derived
    )]
    [InlineData("box 12 × 12 × 3, hand-sewn, wrapped", "top 13 × 13; bottom 13 × 13; back 13 × 4; boxing 37 × 4", Sources.Derived)]
    [InlineData(
        "box 18 × 18 × 3, envelope underneath",
        "top 19 × 19; bottom-front 19 × 12 1/2; bottom-back 19 × 12 1/2; front 19 × 4; right 19 × 4; back 19 × 4; left 19 × 4",
        Sources.Derived
    )]
    public void A_cushion_is_cut_from(string cushion, string pieces, string source) => Assert.Equal(pieces, CutList(Orders[cushion]));
}
