using System.Text.Json.Nodes;
using Microsoft.OpenApi;

namespace CushionService.Rest.OpenApi;

/// <summary>A small order for each construction, as a caller would begin with it.</summary>
internal static class ConstructionExamples
{
    private static readonly string[] Fabrics = ["main", "trim"];

    /// <summary>The examples, by the construction's name.</summary>
    public static IReadOnlyDictionary<string, JsonObject> All { get; } = Read();

    /// <summary>The same for the document, after one for the whole of the nook.</summary>
    /// <param name="nook">The order for the nook.</param>
    public static Dictionary<string, IOpenApiExample> With(JsonNode nook)
    {
        Dictionary<string, IOpenApiExample> examples = new()
        {
            ["nook"] = new OpenApiExample { Summary = "A reading nook: a bench, pillows and a runner", Value = nook },
        };
        foreach ((string name, JsonObject order) in All)
        {
            examples[name] = new OpenApiExample { Summary = $"The construction {name}", Value = order.DeepClone() };
        }

        return examples;
    }

    // The file has what differs: the cushion.
    private static Dictionary<string, JsonObject> Read()
    {
        using Stream file = typeof(ConstructionExamples).Assembly.GetManifestResourceStream(typeof(Examples), "constructions.json")!;
        return JsonNode.Parse(file)!.AsObject().ToDictionary(entry => entry.Key, entry => Order(entry.Key, entry.Value!.AsObject()));
    }

    private static JsonObject Order(string construction, JsonObject own)
    {
        JsonObject cushion = new() { ["id"] = construction, ["construction"] = construction };
        foreach ((string field, JsonNode? value) in own)
        {
            cushion[field] = value!.DeepClone();
        }

        return new JsonObject
        {
            ["units"] = "in",
            ["cushions"] = new JsonArray(cushion),
            ["fabrics"] = new JsonArray([
                .. Fabrics
                    .Where(id => id == "main" || own.ToJsonString().Contains("trim", StringComparison.Ordinal))
                    .Select(id => new JsonObject
                    {
                        ["id"] = id,
                        ["width"] = 54,
                        ["sold"] = new JsonObject { ["unit"] = "yd", ["step"] = "1/8" },
                    }),
            ]),
        };
    }
}
