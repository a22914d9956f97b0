namespace CushionService.Tests.Orders;

/// <summary>What has no room on its cushion, and a cushion that leaves no room. The limits are common practice, no source.</summary>
public sealed class RoomRuleTests
{
    [Theory]
    [InlineData("""{ "/workroom/boxingTautness": "1/2", "/cushions/2/thickness": "1/2" }""", "/cushions/2/thickness out-of-range 0.5..")]
    [InlineData("""{ "/workroom/boxingTautness": "1/2", "/cushions/2/thickness": "1/4" }""", "/cushions/2/thickness out-of-range 0.5..")]
    // Six straps of 4 in are 24 in, on a depth of 18.
    [InlineData("""{ "/cushions/2/straps": { "count": 6, "width": 4 } }""", "/cushions/2/straps/count side-too-short")]
    // 44 in in channels of at least 1/2 in each are 88.
    [InlineData(
        """{ "/cushions/2/outline/width": 20, "/cushions/2/channels": { "count": 60 } }""",
        "/cushions/2/channels/count out-of-range ..40"
    )]
    // The free side is the right one: 12 vents 3/4 in apart take 13 times that, 9 3/4 in.
    [InlineData("""{ "/cushions/0/vents": 12, "/cushions/0/outline/depth": 9 }""", "/cushions/0/vents side-too-short")]
    // Arms of at least 1 in are left.
    [InlineData(
        """
            { "/cushions/2/outline": { "kind": "ell", "width": 20, "depth": 20, "notchWidth": 19.5, "notchDepth": 19 },
              "/cushions/2/closure": { "kind": "hand-sewn" } }
            """,
        "/cushions/2/outline/notchWidth out-of-range ..19"
    )]
    [InlineData(
        """
            { "/cushions/2/outline": { "kind": "u", "width": 20, "depth": 20, "notchWidth": 18.5, "notchDepth": 19 },
              "/cushions/2/closure": { "kind": "hand-sewn" } }
            """,
        "/cushions/2/outline/notchWidth out-of-range ..18"
    )]
    [InlineData(
        """
            { "/cushions/2/outline": { "kind": "tee", "width": 20, "depth": 20, "earWidth": 9.75, "earDepth": 5 },
              "/cushions/2/closure": { "kind": "hand-sewn" } }
            """,
        "/cushions/2/outline/earWidth out-of-range ..9.5"
    )]
    // 40 by 0.3 is 2 × 12 / 80.6 = 0.298 in wide on average.
    [InlineData(
        """
            { "/cushions/2/outline": { "kind": "polygon", "points": [[0, 0], [40, 0], [40, 0.3], [0, 0.3]] },
              "/cushions/2/closure": { "kind": "hand-sewn" } }
            """,
        "/cushions/2/outline/points not-a-shape"
    )]
    // A corner as large as the side beside it is at fault, not the sharp one at the other end.
    [InlineData(
        """
            { "/cushions/2/outline": { "kind": "rectangle", "width": 44, "depth": 10, "corners": [0, 10, 0, 0] },
              "/cushions/2/closure": { "kind": "hand-sewn" } }
            """,
        "/cushions/2/outline/corners/1 out-of-range ..10"
    )]
    public void Is_refused(string changes, string violation) =>
        Assert.Equal([violation], SampleOrder.Validate(changes).Violations.Select(SampleOrder.Written));

    [Theory]
    [InlineData("""{ "/workroom/boxingTautness": "1/2", "/cushions/2/thickness": "3/4" }""")]
    [InlineData("""{ "/cushions/2/straps": { "count": 4, "width": 4 } }""")]
    [InlineData("""{ "/cushions/2/outline/width": 20, "/cushions/2/channels": { "count": 40 } }""")]
    [InlineData(
        """
            { "/cushions/2/outline": { "kind": "ell", "width": 20, "depth": 20, "notchWidth": 19, "notchDepth": 19 },
              "/cushions/2/closure": { "kind": "hand-sewn" } }
            """
    )]
    public void Is_taken(string changes) => Assert.Empty(SampleOrder.Validate(changes).Violations);

    /// <summary>Foam that is weighed needs a density, at the stock or where it is used (common practice, no source).</summary>
    [Theory]
    [InlineData("""{ "kind": "foam", "stock": "block" }""", "/cushions/2/fill/density required")]
    [InlineData("""{ "kind": "foam", "stock": "block", "density": 35 }""")]
    [InlineData(
        """{ "kind": "foam", "layers": [ { "stock": "block", "thickness": 2 }, { "stock": "block", "thickness": 1, "density": 35 } ] }""",
        "/cushions/2/fill/layers/0/density required"
    )]
    public void Foam_by_weight_needs_a_density(string fill, params string[] violations) =>
        Assert.Equal(
            violations,
            SampleOrder
                .Validate(
                    $$"""
                    { "/stocks": [ { "id": "block", "kind": "foam", "sold": { "unit": "kg", "step": 0.1 } } ],
                      "/cushions/2/fill": {{fill}} }
                    """
                )
                .Violations.Select(SampleOrder.Written)
        );

    [Fact]
    public void Layers_are_not_compared_with_a_thickness_that_is_left_out() =>
        Assert.Equal(
            ["/cushions/2/thickness required"],
            SampleOrder
                .Validate("""{ "/cushions/2/thickness": null, "/cushions/2/fill": { "kind": "foam", "layers": [ { "thickness": 2 } ] } }""")
                .Violations.Select(SampleOrder.Written)
        );
}
