using CushionService.Desk;
using CushionService.Documents;
using CushionService.Documents.TrueSize;
using CushionService.Engine.Messages;
using CushionService.Intake;
using CushionService.Json;

namespace CushionService.Tests.Documents.TrueSize;

/// <summary>Orders as far as the engine's drafting.</summary>
internal static class Drafted
{
    /// <summary>A round box of 41 cm.</summary>
    public const string Disc =
        """ "construction": "boxed", "outline": { "kind": "circle", "diameter": 410 }, "thickness": 60, "closure": { "kind": "zipper" } """;

    /// <summary>An order of one cushion, in millimetres, on a wide fabric.</summary>
    public static string Order(string cushion, string units = "mm") =>
        $$"""
            { "reference": "terrace", "units": "{{units}}", "cushions": [{ "id": "seat", "seamAllowance": {{(
                units == "mm" ? "12" : "\"1/2\""
            )}}, "fabrics": { "top": "main" }, {{cushion}} }],
              "fabrics": [{ "id": "main", "width": {{(units == "mm" ? "1400" : "54")}}, "sold": { "unit": "m", "step": 0.1 } }] }
            """;

    /// <summary>The order as the desk has it after its checks.</summary>
    public static CheckedOrder Check(string order)
    {
        CheckedOrder? kept = TryCheck(order);
        Assert.NotNull(kept);
        return kept;
    }

    /// <summary>The same; null for an order that breaks a rule.</summary>
    public static CheckedOrder? TryCheck(string order)
    {
        CheckedOrder? kept = null;
        var purpose = new Purpose<PrintedDocument>(
            Purpose.Making,
            (found, _) =>
            {
                kept = found;
                return PrintedDocument.Missing;
            }
        );
        new OrderDesk().Handle(OrderText.Parse(System.Text.Encoding.UTF8.GetBytes(order)), purpose, CancellationToken.None);
        return kept;
    }

    /// <summary>The pieces of an order.</summary>
    public static IReadOnlyList<PatternPiece> Pieces(string order)
    {
        CheckedOrder found = Check(order);
        return PatternPiece.Of(found.Drafting, found.Unit, Language.English);
    }
}
