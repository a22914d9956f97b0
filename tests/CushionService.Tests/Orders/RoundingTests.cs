using CushionService.Contract.Answers;
using CushionService.Desk;

namespace CushionService.Tests.Orders;

/// <summary>Radii of single corners and arcs between points: what is refused, and that it makes no difference which way round points are
/// written.</summary>
public sealed class RoundingTests
{
    private const string Points = "\"points\": [[0, 0], [40, 0], [40, 30], [0, 30]]";
    private const string Turned = "\"points\": [[0, 0], [0, 30], [40, 30], [40, 0]]";

    [Theory]
    [InlineData(
        """ "kind": "rectangle", "width": 40, "depth": 30, "corners": [0, 6, 0] """,
        "/cushions/2/outline/corners out-of-range 4..4"
    )]
    [InlineData(
        """ "kind": "rectangle", "width": 40, "depth": 30, "corners": [0, -1, 0, 0] """,
        "/cushions/2/outline/corners/1 out-of-range 0..60"
    )]
    [InlineData(
        """ "kind": "rectangle", "width": 40, "depth": 30, "corners": [0, "six", 0, 0] """,
        "/cushions/2/outline/corners/1 not-a-length"
    )]
    [InlineData(
        """ "kind": "rectangle", "width": 40, "depth": 30, "corners": [20, 20, 0, 0] """,
        "/cushions/2/outline/corners/1 out-of-range ..20"
    )]
    [InlineData(""" "kind": "circle", "diameter": 30, "corners": [1, 1, 1] """, "/cushions/2/outline/corners not-applicable")]
    [InlineData(
        """ "kind": "rectangle", "width": 40, "depth": 30, "arcs": [{ "side": 1, "bulge": 2 }] """,
        "/cushions/2/outline/arcs not-applicable"
    )]
    [InlineData($$""" "kind": "polygon", {{Points}}, "corners": [1, 1, 1] """, "/cushions/2/outline/corners out-of-range 4..4")]
    [InlineData(
        $$""" "kind": "polygon", {{Points}}, "corners": [1, 1, 1, 1], "cornerRadius": 1 """,
        "/cushions/2/outline/corners not-combinable"
    )]
    [InlineData($$""" "kind": "polygon", {{Points}}, "corners": [16, 16, 16, 16] """, "/cushions/2/outline/corners out-of-range ..15")]
    [InlineData(
        $$""" "kind": "polygon", {{Points}}, "arcs": [{ "side": 5, "bulge": 2 }] """,
        "/cushions/2/outline/arcs/0/side out-of-range 1..4"
    )]
    [InlineData(
        $$""" "kind": "polygon", {{Points}}, "arcs": [{ "side": 1, "bulge": 21 }] """,
        "/cushions/2/outline/arcs/0/bulge out-of-range -20..20"
    )]
    [InlineData(
        $$""" "kind": "polygon", {{Points}}, "arcs": [{ "side": 1, "radius": 19 }] """,
        "/cushions/2/outline/arcs/0/radius out-of-range 20.."
    )]
    [InlineData($$""" "kind": "polygon", {{Points}}, "arcs": [{ "side": 1 }] """, "/cushions/2/outline/arcs/0 required")]
    [InlineData(
        $$""" "kind": "polygon", {{Points}}, "arcs": [{ "side": 1, "bulge": 1, "radius": 90 }] """,
        "/cushions/2/outline/arcs/0 required"
    )]
    [InlineData(
        $$""" "kind": "polygon", {{Points}}, "arcs": [{ "side": 1, "bulge": 1 }, { "side": 1, "bulge": 2 }] """,
        "/cushions/2/outline/arcs/1/side duplicate"
    )]
    [InlineData(
        $$""" "kind": "polygon", {{Points}}, "corners": [0, 2, 0, 0], "arcs": [{ "side": 1, "bulge": 2 }] """,
        "/cushions/2/outline/corners not-combinable"
    )]
    public void What_makes_no_outline(string outline, string violation) =>
        Assert.Equal(
            [violation],
            SampleOrder
                .Validate(
                    $$"""
                    { "/cushions/2/outline": { {{outline}} }, "/cushions/2/closure": { "kind": "zipper", "side": "back" },
                      "/cushions/2/boxing": { "joins": "back" } }
                    """
                )
                .Violations.Select(SampleOrder.Written)
        );

    [Theory]
    [InlineData(
        $$""" {{Points}}, "corners": [0, 6, 0, 0], "arcs": [{ "side": 3, "bulge": 4 }] """,
        $$""" {{Turned}}, "corners": [0, 0, 0, 6], "arcs": [{ "side": 2, "bulge": 4 }] """
    )]
    [InlineData($$""" {{Points}}, "arcs": [{ "side": 2, "radius": 40 }] """, $$""" {{Turned}}, "arcs": [{ "side": 3, "radius": 40 }] """)]
    public void Points_may_be_written_either_way_round(string one, string other) => Assert.Equal(Corners(one), Corners(other));

    private static (double, double)[] Corners(string outline)
    {
        PiecesAnswer answer = new OrderDesk()
            .Handle(
                new(
                    SampleOrder.Changed(
                        $$"""
                        { "/cushions/2/outline": { "kind": "polygon", {{outline}} }, "/cushions/2/construction": "knife-edge",
                          "/cushions/2/thickness": null, "/cushions/2/boxing": null, "/cushions/2/closure": { "kind": "hand-sewn" } }
                        """
                    ),
                    []
                ),
                Purposes.Pieces,
                CancellationToken.None
            )
            .Answer!;
        return
        [
            .. answer
                .Pieces.Single(piece => piece is { Cushion: "bench", Part: "top" })
                .Points!.Select(point => (Math.Round(point.X, 4), Math.Round(point.Y, 4)))
                .Order(),
        ];
    }
}
