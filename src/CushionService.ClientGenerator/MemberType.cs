using System.Text.Json.Nodes;

namespace CushionService.ClientGenerator;

/// <summary>The type in C# of a member of a schema.</summary>
/// <param name="Name">Its name.</param>
/// <param name="MayBeNull">Whether an answer may have null.</param>
internal readonly record struct MemberType(string Name, bool MayBeNull)
{
    // The form of an amount of money in an order.
    private const string Digits = "^[0-9]";

    // Amounts of money in answers, which are decimal strings.
    private static readonly string[] Money = ["amount", "unitPrice", "total", "beforeTax", "cutFee"];

    /// <summary>Schemas that the package has types of its own for.</summary>
    public static IReadOnlyDictionary<string, string> HandWritten { get; } =
        new Dictionary<string, string>
        {
            ["Measure"] = "Length",
            ["Quantity"] = "Quantity",
            ["Corner"] = "IReadOnlyList<Length>",
            ["PointAnswer"] = "IReadOnlyList<double>",
        };

    /// <summary>The type of a member.</summary>
    /// <param name="record">The schema that has it.</param>
    /// <param name="member">Its name.</param>
    /// <param name="schema">Its own schema.</param>
    /// <exception cref="NotSupportedException">The document has a form of schema that it did not have before.</exception>
    public static MemberType Of(string record, string member, JsonNode schema)
    {
        if (schema["oneOf"] is JsonArray { Count: 2 } choices)
        {
            return Of(record, member, choices[0]!) with { MayBeNull = true };
        }

        if ((string?)schema["$ref"] is { } reference)
        {
            string name = reference.Split('/')[^1];
            return new MemberType(HandWritten.GetValueOrDefault(name, name), false);
        }

        string[] types = schema["type"] is JsonArray several ? [.. several.Select(type => (string)type!)] : [(string)schema["type"]!];
        // A list of types is one type and null in our documents; a second one would need a hand-written type.
        string only = types.Single(type => type != "null");
        string csharp = only switch
        {
            "string" when IsMoney(record, member, schema) => "decimal",
            "string" => "string",
            "boolean" => "bool",
            "integer" => (string?)schema["format"] == "int64" ? "long" : "int",
            "number" => "double",
            "object" => "JsonElement",
            "array" => $"IReadOnlyList<{Of(record, member, schema["items"]!).Name}>",
            _ => throw new NotSupportedException($"{record}.{member} is {only}."),
        };
        return new MemberType(csharp, types.Length > 1);
    }

    // In orders a pattern says so; answers have no patterns, so their members are known by name.
    private static bool IsMoney(string record, string member, JsonNode schema) =>
        ((string?)schema["pattern"])?.StartsWith(Digits, StringComparison.Ordinal) == true
        || (record.EndsWith("Answer", StringComparison.Ordinal) && Money.Contains(member));
}
