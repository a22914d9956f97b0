using System.Text;
using System.Text.Json.Nodes;
using CushionService.Desk;
using CushionService.Json;
using CushionService.Tests.Orders.Covers;

namespace CushionService.Tests.Orders;

/// <summary>Fabric that is sold by weight (follows from the arithmetic; that it is sold so is common practice, no source).</summary>
public sealed class WeightSaleTests
{
    // Four pads of 40, faces of 43: on 140 cm three side by side, so eight take three rows, 129 cm; washed by 5 %, 135.79 cm. 1.40 m ×
    // 1.3579 m × 250 g/m² = 475.3 g, up to 0.48 kg at 18.00 = 8.64.
    [Fact]
    public void Felt_by_the_kilogram()
    {
        JsonObject quote = QuotedCover
            .Of(
                JsonNode
                    .Parse(
                        """
                        { "units": "cm", "currency": "EUR", "effort": "standard",
                          "cushions": [ { "id": "pad", "quantity": 4, "construction": "knife-edge",
                            "outline": { "kind": "rectangle", "width": 40, "depth": 40 }, "closure": { "kind": "hand-sewn" } } ],
                          "fabrics": [ { "id": "felt", "width": 140, "weight": 250, "shrinkage": { "length": 0.05, "width": 0 },
                            "sold": { "unit": "kg", "step": 0.01 }, "price": { "amount": "18.00", "per": "kg" } } ] }
                        """
                    )!
                    .AsObject()
            )
            .Answer;

        JsonNode line = quote["yardage"]![0]!;
        Assert.Equal((129, 0.48, "kg"), (Number("layoutLength"), Number("soldLength"), line["soldUnit"]!.GetValue<string>()));
        Assert.Equal(
            "129 cm laid out ÷ (1 − 5 % shrinkage) = about 135.8 cm, 0.4753 kg at 250 g/m², up to the next 0.01 kg: 0.48 kg",
            line["because"]!.GetValue<string>()
        );
        Assert.Equal("8.64", quote["cost"]!["lines"]![0]!["amount"]!.GetValue<string>());
        // 0.48 kg are 137.14 cm of 140: what no piece covers, 1 − 8 × 43² / (140 × 137.14).
        Assert.Equal(0.2296, Number("waste"), 4);

        double Number(string name) => line[name]!.GetValue<double>();
    }

    // Four pads of 45, faces of 48: two side by side, 4 × 48 = 192 cm. By the metre 2 m at 24.00; by weight 1.40 × 1.92 × 300 = 806.4 g, up
    // to 0.85 kg at 30.00: 48.00 − 25.50 = 22.50 less.
    [Fact]
    public void A_comparison_tells_kilograms_beside_metres()
    {
        const string Order = """
            { "units": "cm", "currency": "EUR", "effort": "standard",
              "cushions": [ { "id": "pad", "quantity": 4, "construction": "knife-edge",
                "outline": { "kind": "rectangle", "width": 45, "depth": 45 }, "closure": { "kind": "hand-sewn" } } ],
              "fabrics": [ { "id": "main", "width": 140, "shrinkage": { "length": 0 }, "sold": { "unit": "m", "step": 0.1 },
                "price": { "amount": "24.00", "per": "m" } } ],
              "candidates": [ { "fabric": "main", "options": [ { "id": "felt", "width": 140, "weight": 300, "shrinkage": { "length": 0 },
                "sold": { "unit": "kg", "step": 0.05 }, "price": { "amount": "30.00", "per": "kg" } } ] } ] }
            """;
        string change = new OrderDesk()
            .Handle(OrderText.Parse(Encoding.UTF8.GetBytes(Order)), Purposes.Comparison, CancellationToken.None)
            .Answer!.Options[0]
            .Change;

        Assert.EndsWith(": 0.85 kg of main instead of 2 m of main, 22.50 EUR less", change, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("""{ "unit": "kg", "step": 0.01 }""", "", "weight required")]
    [InlineData("""{ "unit": "lb", "step": "5 cm" }""", "250", "sold/step not-a-quantity")]
    [InlineData("""{ "unit": "kg" }""", "250", "sold/step required")]
    [InlineData("""{ "unit": "kg", "step": 0.001 }""", "250", "sold/step out-of-range")]
    [InlineData("""{ "unit": "kg", "step": 0.1, "minimum": -1 }""", "250", "sold/minimum not-a-quantity")]
    [InlineData("""{ "unit": "kg", "step": 0.1, "minimum": 101 }""", "250", "sold/minimum out-of-range")]
    [InlineData("""{ "unit": "kg", "step": "1/3" }""", "9", "weight out-of-range")]
    [InlineData("""{ "unit": "sq-m", "step": 1 }""", "250", "sold/unit not-combinable")]
    public void What_cannot_be_weighed_is_refused(string sold, string weight, string violation) =>
        Assert.Equal(
            [$"/fabrics/0/{violation}"],
            SampleOrder
                .Validate(
                    weight.Length == 0
                        ? $$"""{ "/fabrics/0/sold": {{sold}}, "/fabrics/0/price": null }"""
                        : $$"""{ "/fabrics/0/sold": {{sold}}, "/fabrics/0/weight": {{weight}}, "/fabrics/0/price": null }"""
                )
                .Violations.Select(one => $"{one.Pointer} {one.Code}")
        );
}
