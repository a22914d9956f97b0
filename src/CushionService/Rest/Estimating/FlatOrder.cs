using System.Collections.Frozen;
using System.Globalization;
using System.Text.Json;
using System.Text.Json.Nodes;
using CushionService.Engine.Patterns;
using CushionService.Engine.Specifications;
using Microsoft.Extensions.Primitives;

namespace CushionService.Rest.Estimating;

/// <summary>An order of one cushion and one cloth, read from the parameters of a query.</summary>
/// <param name="Reading">The order; its violations name the parameters.</param>
/// <param name="Values">What was said or taken for granted, by parameter.</param>
internal sealed record FlatOrder(Reading Reading, IReadOnlyDictionary<string, string> Values)
{
    private static readonly FrozenDictionary<string, FlatField> ByName = FlatField.All.ToFrozenDictionary(field => field.Name);
    private static readonly FrozenDictionary<string, string> NameAt = FlatField.All.ToFrozenDictionary(field => field.Pointer, field => field.Name);

    /// <summary>Reads the parameters.</summary>
    public static FlatOrder Read(IEnumerable<KeyValuePair<string, StringValues>> query)
    {
        List<Violation> faults = [];
        SortedDictionary<string, string> values = new(StringComparer.Ordinal);
        foreach ((string name, StringValues given) in query)
        {
            string pointer = "/" + JsonText.Escape(name);
            if (!ByName.ContainsKey(name))
            {
                faults.Add(new Violation(pointer, "unknown-field", $"There is no such parameter; the parameters are {string.Join(", ", FlatField.All.Select(field => field.Name))}."));
            }
            else if (given.Count != 1)
            {
                faults.Add(new Violation(pointer, "duplicate-field", "The parameter is given more than once."));
            }
            else
            {
                values[name] = given.ToString();
            }
        }

        TakeForGranted(values);
        Reading reading = OrderBody.Parse(JsonSerializer.SerializeToUtf8Bytes(Nested(values)));
        return new FlatOrder(new Reading(reading.Order, [.. faults, .. reading.Violations.Select(Flat)]), values);
    }

    /// <summary>A violation of the order as one of the parameters.</summary>
    public static Violation Flat(Violation violation)
    {
        string pointer = violation.Pointer;
        return violation with { Pointer = NameAt.TryGetValue(pointer, out string? name) || NameAt.TryGetValue(pointer + "/kind", out name) ? "/" + name : "" };
    }

    // A page asks for cloth; how the cover opens and how the cloth is sold it may leave to custom.
    private static void TakeForGranted(SortedDictionary<string, string> values)
    {
        values.TryAdd("effort", "quick");
        string unit = values.GetValueOrDefault("units") is "cm" or "mm" ? "m" : "yd";
        values.TryAdd("fabricSoldUnit", unit);
        values.TryAdd("fabricSoldStep", values["fabricSoldUnit"] == "m" ? "0.1" : "1/8");
        if (Words<Construction>.Named(values.GetValueOrDefault("construction", "")) is { } construction)
        {
            ClosureOffer[] offers = [.. Constructions.Of(construction).Offer.Closures];
            values.TryAdd("closure", Words<ClosureKind>.Of(Array.Find(offers, offer => offer.Kind == ClosureKind.Zipper)?.Kind ?? offers[0].Kind));
        }
    }

    private static JsonObject Nested(SortedDictionary<string, string> values)
    {
        JsonObject cushion = new() { ["id"] = "cushion" }, fabric = new() { ["id"] = "cloth" };
        JsonObject order = new() { ["cushions"] = new JsonArray(cushion), ["fabrics"] = new JsonArray(fabric) };
        foreach ((string name, string value) in values)
        {
            FlatField field = ByName[name];
            string[] path = field.Pointer.Split('/')[1..];
            JsonObject record = path[0] switch { "cushions" => cushion, "fabrics" => fabric, _ => order };
            foreach (string step in path[(record == order ? 0 : 2)..^1])
            {
                record = (record[step] ??= new JsonObject()).AsObject();
            }

            record[path[^1]] = field.IsList ? new JsonArray([.. value.Split(',').Select(part => (JsonNode)Node(part, field.Type))]) : Node(value, field.Type);
        }

        return order;
    }

    // What is not of its type stays text, and is told as such.
    private static JsonValue Node(string value, Type type) =>
        type == typeof(bool) && value is "true" or "false" ? JsonValue.Create(value == "true")
        : type == typeof(int) && Number(value) is { } whole && decimal.IsInteger(whole) && Math.Abs(whole) <= int.MaxValue ? JsonValue.Create((int)whole)
        : type == typeof(double) && Number(value) is { } number ? JsonValue.Create(number)
        : JsonValue.Create(value);

    /// <summary>A number of a parameter; null when it is none.</summary>
    internal static decimal? Number(string value) =>
        decimal.TryParse(value, NumberStyles.AllowLeadingSign | NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out decimal number) ? number : null;
}
