using System.Text;
using System.Text.Json;
using System.Text.Json.Nodes;
using CushionService.Contract.Orders;
using CushionService.Engine.Messages;
using CushionService.Engine.Quoting;
using CushionService.Intake;
using CushionService.Json;
using CushionService.Wording;

namespace CushionService.Tests.Orders.Covers;

/// <summary>An order, quoted as any other: what the engine made of it, and what its caller reads.</summary>
/// <param name="Order">The order as it was sent.</param>
/// <param name="Quote">The quote.</param>
/// <param name="Answer">The same in the contract's words.</param>
internal sealed record QuotedCover(JsonObject Order, Quote Quote, JsonObject Answer)
{
    /// <summary>Quotes an order that breaks no rule.</summary>
    public static QuotedCover Of(JsonObject order)
    {
        Order written = OrderText.Parse(Encoding.UTF8.GetBytes(order.ToJsonString())).Order!;
        IntakeResult intake = OrderIntake.Read(written, null, Purpose.Making);
        Drafting drafting = Drafting.Of(intake.Specification!);
        Quote quote = QuotePipeline.Of(drafting, CancellationToken.None);
        AnswerWording words = new(Language.English, drafting.Order.Unit, intake.Warnings.AddRange(drafting.Warnings));
        JsonNode answer = JsonSerializer.SerializeToNode(words.Quote(written, quote), ContractJson.Options)!;
        return new QuotedCover(order, quote, answer.AsObject());
    }

    /// <summary>What it is, in a few words.</summary>
    public string Name
    {
        get
        {
            JsonObject[] cushions = [.. Order["cushions"]!.AsArray().Select(cushion => cushion!.AsObject())];
            return string.Join(
                ", ",
                cushions.Select(cushion =>
                    $"{cushion["quantity"]} × {cushion["construction"]} {cushion["outline"]!["kind"]} {cushion["closure"]!["kind"]}"
                    + $" {cushion["edging"]?["kind"] ?? "plain"}"
                )
            );
        }
    }
}
