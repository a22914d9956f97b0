using CushionService.Contract;
using CushionService.Contract.Answers;
using CushionService.Desk;

namespace CushionService.Tests.Orders;

/// <summary>Orders that are allowed but unwise: they are answered, with a warning.</summary>
public sealed class WarningTests
{
    [Theory]
    [InlineData("""{ "/cushions/0/closure/side": "front", "/cushions/0/handle/side": "left" }""", "/cushions/0/closure/side closure-shows")]
    [InlineData("""{ "/cushions/0/fill/oversize": 0.75 }""", "/cushions/0/fill/oversize foam-too-large")]
    [InlineData("""{ "/cushions/0/closure/fold": 1.25 }""", "/cushions/0/closure/fold hem-eats-strip")]
    [InlineData("""{ "/cushions/1/fill": { "kind": "loose", "weight": 0.6 } }""", "/cushions/1/fill/weight overfilled")]
    [InlineData("""{ "/fabrics/0/oneWay": true, "/pieces/0/rotation": "quarter-turns" }""", "/pieces/0/rotation one-way-fabric")]
    [InlineData("""{ "/cushions/1/seamAllowance": "1/8" }""", "/cushions/1/seamAllowance overedge-too-wide")]
    [InlineData("""{ "/cushions/2/thickness": 1, "/cushions/2/seamAllowance": 0.75 }""", "/cushions/2/seamAllowance seam-too-deep")]
    [InlineData("""{ "/cushions/1/fabrics/top": "main" }""", "/fabrics/1 unused-fabric")]
    public void What_is_unwise_is_said_and_still_answered(string changes, string warning)
    {
        ValidationAnswer answer = SampleOrder.Validate(changes);
        Outcome<QuoteAnswer> outcome = new OrderDesk().Handle(
            new(SampleOrder.Changed(changes), []),
            Purposes.Quote,
            CancellationToken.None
        );

        Assert.True(answer.Valid);
        Assert.Equal([warning], answer.Warnings.Select(SampleOrder.Written));
        Assert.Contains(warning, outcome.Answer!.Warnings.Select(SampleOrder.Written));
    }

    [Fact]
    public void What_cannot_lie_on_a_motif_is_said()
    {
        // A top of 39 in on 53 in of a motif that is 4 in from its edge.
        ValidationAnswer answer = SampleOrder.Validate(
            """{ "/fabrics/0/repeat/width": 54, "/fabrics/0/repeat/motif": { "x": 4 }, "/cushions/2/outline/width": 30 }"""
        );

        Assert.True(answer.Valid);
        Assert.Contains("/cushions/2 not-matched", answer.Warnings.Select(SampleOrder.Written));
    }

    [Fact]
    public void A_total_that_leaves_something_out_says_what()
    {
        QuoteAnswer quote = new OrderDesk().Handle(new(SampleOrder.Changed("{}"), []), Purposes.Quote, CancellationToken.None).Answer!;

        Assert.Equal(["trim", "foam", "feather", "hook-and-loop-tape", "zipper"], quote.Cost!.Unpriced);
        Assert.Equal(["motif-unknown", "unpriced"], quote.Warnings.Select(warning => warning.Code));
    }

    [Fact]
    public void What_has_no_price_is_named_by_its_label_and_listed_by_its_id()
    {
        QuoteAnswer quote = new OrderDesk()
            .Handle(
                new(SampleOrder.Changed("""{ "/fabrics/1/label": "Navy piping fabric" }"""), []),
                Purposes.Quote,
                CancellationToken.None
            )
            .Answer!;

        Assert.Contains("trim", quote.Cost!.Unpriced);
        string said = quote.Warnings.Single(warning => warning.Code == "unpriced").Detail;
        Assert.Contains("no time: Navy piping fabric, foam,", said, StringComparison.Ordinal);
    }
}
