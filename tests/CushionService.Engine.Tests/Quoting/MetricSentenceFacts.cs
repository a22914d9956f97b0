using System.Text.RegularExpressions;
using CushionService.Engine.Cutting;
using CushionService.Engine.Instructions;
using CushionService.Engine.Materials;
using CushionService.Engine.Measures;
using CushionService.Engine.Messages;
using CushionService.Engine.Quoting;
using CushionService.Engine.Specifications;
using CushionService.Engine.Specifications.Fillings;
using CushionService.Engine.Specifications.Practices;
using CushionService.Engine.Tests.Patterns;

namespace CushionService.Engine.Tests.Quoting;

/// <summary>What an order in centimetres says holds no inch, yard or pound, nor a converted figure.</summary>
public sealed partial class MetricSentenceFacts
{
    [Fact]
    public void No_sentence_of_a_metric_order_speaks_of_inches()
    {
        Assert.All(
            Enumerable.Range(0, OfferedCushions.Combinations.Count),
            number =>
            {
                CushionSpecification cushion = OfferedCushions.Cushion(number);
                foreach (string sentence in Sentences(Metric(cushion)))
                {
                    Assert.False(Imperial().IsMatch(sentence), sentence);
                    Assert.False(ManyDecimals().IsMatch(sentence), sentence);
                }
            }
        );
    }

    [Theory]
    [InlineData("Turn 1 in under", true)]
    [InlineData("1/8 in from the edge", true)]
    [InlineData("up to the next 1/8 yd", true)]
    [InlineData("4 in all, turned in by 1.3 cm in the seam", false)]
    public void The_check_knows_an_inch_from_a_preposition(string sentence, bool imperial) =>
        Assert.Equal(imperial, Imperial().IsMatch(sentence));

    private static IEnumerable<string> Sentences(OrderSpecification order)
    {
        var writer = new MessageWriter(Language.English, order.Unit);
        var drafting = Drafting.Of(order);
        IEnumerable<string> drafted =
        [
            .. drafting.Pieces.Select(piece => writer.Text(Derivation.Of(piece))),
            .. drafting.Pieces.SelectMany(piece => PieceMarks.Of(piece)).Select(mark => writer.Text(mark.Because)),
            .. drafting.Violations.Concat(drafting.Warnings).Select(violation => writer.Text(violation.Detail)),
        ];
        return
        [
            .. drafted,
            .. BillOfMaterials
                .Of(order, drafting.Patterns, [], new AnswerSteps(drafting).Beside(CancellationToken.None))
                .Select(material => writer.Text(material.Because)),
            .. SewingOrder.Of(order, drafting.Patterns, drafting.Pieces).Select(step => writer.Text(step.Text)),
            .. Cautions.For(order).Select(caution => writer.Text(caution.Text)),
        ];
    }

    private static OrderSpecification Metric(CushionSpecification cushion) =>
        Order(
            cushion with
            {
                Practice = WorkroomPractice.Metric,
                SeamAllowance = WorkroomPractice.Metric.SeamAllowance,
                Fill = cushion.Thickness > Length.Zero ? new FillSpecification(FillKind.Foam, "foam", 30, Length.Zero, 0.9m) : null,
            },
            Fabric with
            {
                Width = Mm(3000),
                Sold = new SaleRule(SaleUnit.M, Mm(100), Length.Zero),
            }
        ) with
        {
            Unit = LengthUnit.Centimetre,
            Workroom = WorkroomPractice.Metric,
        };

    [GeneratedRegex(@"\d in\b(?! all)|inch|\byd|\blb|ft³")]
    private static partial Regex Imperial();

    [GeneratedRegex(@"\.\d{4}")]
    private static partial Regex ManyDecimals();
}
