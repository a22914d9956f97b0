using System.Text.Json.Nodes;

namespace CushionService.Rest.Estimating;

/// <summary>Writes the parameters of an estimate as the JSON of an order with one cushion and one fabric. A query has
/// no types and no nesting: both come from the fields of the contract.</summary>
internal static class FlatOrderJson
{
    /// <summary>The order. Values that are not of their type are written as text, so that the checks of the order
    /// report them.</summary>
    /// <param name="flat">The parameters, sound or not.</param>
    public static JsonObject Of(FlatOrder flat)
    {
        JsonObject cushion = new() { ["id"] = "cushion" },
            fabric = new() { ["id"] = "fabric", ["label"] = flat.FabricLabel };
        JsonObject order = new() { ["cushions"] = new JsonArray(cushion), ["fabrics"] = new JsonArray(fabric) };
        foreach (FlatField field in FlatField.All)
        {
            if (flat[field.Name] is { } value)
            {
                Set(order, cushion, fabric, field, value);
            }
        }

        return order;
    }

    // A pointer is /cushions/0/..., /fabrics/0/... or a path within the order; the records on the way are made when
    // they are first needed.
    private static void Set(JsonObject order, JsonObject cushion, JsonObject fabric, FlatField field, string value)
    {
        string[] path = field.Pointer.Split('/')[1..];
        JsonObject record = path[0] switch
        {
            "cushions" => cushion,
            "fabrics" => fabric,
            _ => order,
        };
        foreach (string step in path[(record == order ? 0 : 2)..^1])
        {
            record = (record[step] ??= new JsonObject()).AsObject();
        }

        record[path[^1]] = field.IsList
            ? new JsonArray([.. value.Split(',').Select(part => (JsonNode)Node(part, field.Type))])
            : Node(value, field.Type);
    }

    // 1.0 is a whole number in a query, which has no types; in JSON it is not.
    private static JsonValue Node(string value, Type type) =>
        type == typeof(bool) && value is "true" or "false" ? JsonValue.Create(value == "true")
        : type == typeof(int) && FlatOrder.Number(value) is { } whole && decimal.IsInteger(whole) && Math.Abs(whole) <= int.MaxValue
            ? JsonValue.Create((int)whole)
        : (type == typeof(int) || type == typeof(double)) && FlatOrder.Number(value) is { } number ? JsonValue.Create(number)
        : JsonValue.Create(value);
}
