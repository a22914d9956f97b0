using System.Globalization;
using System.Text.Json;
using System.Text.Json.Nodes;
using CushionService.Contract.Answers;
using CushionService.Contract.Orders;
using CushionService.Desk;
using CushionService.Json;

namespace CushionService.Tests.Orders;

/// <summary>An order that keeps every rule, and what becomes of it when it is changed.</summary>
internal static class SampleOrder
{
    public const string Text = """
        {
          "units": "in", "currency": "USD",
          "cushions": [
            { "id": "seat", "construction": "boxed", "outline": { "kind": "rectangle", "width": 22, "depth": 20 }, "thickness": 3,
              "boxing": { "joins": "corners" },
              "closure": { "kind": "hook-and-loop", "side": "back", "fold": "1/2", "overlap": "1 1/4", "tapeWidth": "3/4" },
              "handle": { "kind": "folded-strap", "side": "front", "width": 1.25, "length": 10.5, "span": 9.75 },
              "fabrics": { "top": "main" }, "fill": { "kind": "foam", "density": 30, "oversize": "1/4" } },
            { "id": "pillow", "construction": "knife-edge", "outline": { "kind": "rectangle", "width": 18, "depth": 18 },
              "closure": { "kind": "envelope", "fold": "1/2", "overlap": 4 },
              "fabrics": { "top": "trim" }, "fill": { "kind": "loose", "material": "feather", "plumpness": 0.9 } },
            { "id": "bench", "construction": "boxed", "outline": { "kind": "rectangle", "width": 44, "depth": 18 }, "thickness": 3,
              "boxing": { "joins": "back" }, "closure": { "kind": "zipper", "return": 3, "turnUnder": "3/4" },
                "fabrics": { "top": "main" } }
          ],
          "pieces": [ { "id": "runner", "fabric": "main", "quantity": 2, "width": 12, "length": 40, "rotation": "none" } ],
          "fabrics": [
            { "id": "main", "width": 54, "selvedge": "1/2", "shrinkage": { "length": 0.03, "width": 0.02 }, "squaring": 1,
              "repeat": { "length": 13.5, "drop": "straight" },
              "sold": { "unit": "yd", "step": "1/8", "minimum": "1/2" }, "price": { "amount": "18.90", "per": "yd" } },
            { "id": "trim", "width": 45, "shrinkage": { "length": 0 }, "sold": { "unit": "m", "step": 0.1 } }
          ],
          "workroom": { "cuttingStep": "1/8" },
          "prices": [ { "item": "thread", "amount": "0.02", "per": "yd" } ]
        }
        """;

    /// <summary>What the rules say of the order once it is changed.</summary>
    /// <param name="changes">A JSON object of JSON Pointers and the values that are set there; null removes, and the index that is a list's
    /// length adds.</param>
    public static ValidationAnswer Validate(string changes) =>
        new OrderDesk().Handle(new(Changed(changes), []), Purposes.Validation, CancellationToken.None).Answer!;

    public static Order Changed(string changes)
    {
        JsonNode order = JsonNode.Parse(Text)!;
        foreach ((string pointer, JsonNode? value) in JsonNode.Parse(changes)!.AsObject())
        {
            Set(order, pointer, value);
        }

        return order.Deserialize<Order>(ContractJson.Options)!;
    }

    public static string Written(ViolationAnswer violation) =>
        string.Create(
            CultureInfo.InvariantCulture,
            $"{violation.Pointer} {violation.Code}"
                + $"{(violation is { Minimum: null, Maximum: null } ? "" : $" {violation.Minimum}..{violation.Maximum}")}"
        );

    private static void Set(JsonNode order, string pointer, JsonNode? value)
    {
        string[] steps = pointer[1..].Split('/');
        JsonNode parent = steps[..^1].Aggregate(order, (node, step) => node is JsonArray list ? list[int.Parse(step)]! : node[step]!);
        if (parent is JsonArray entries)
        {
            int index = int.Parse(steps[^1]);
            if (index < entries.Count)
            {
                entries.RemoveAt(index);
            }

            if (value is not null)
            {
                entries.Insert(index, value.DeepClone());
            }
        }
        else if (value is null)
        {
            Assert.True(parent.AsObject().Remove(steps[^1]), $"{pointer} is not there.");
        }
        else
        {
            parent[steps[^1]] = value.DeepClone();
        }
    }
}
