using System.Text.Json.Nodes;

namespace CushionService.Tests.Contract;

/// <summary>What in a new OpenAPI document breaks a caller of the old one. What a caller may send must still be taken, and what it was
/// promised must
/// still come. The schemas of requests and of answers are distinguished by what the operations refer to.</summary>
internal static class ContractDifference
{
    private static readonly string[] Methods = ["get", "post", "put", "delete", "patch", "head"];

    /// <summary>Every difference that breaks a caller.</summary>
    public static IReadOnlyList<string> Breaking(JsonNode old, JsonNode now)
    {
        List<string> found = [];
        foreach ((string path, JsonNode? item) in old["paths"]!.AsObject())
        {
            foreach (string method in Methods.Where(method => item![method] is not null))
            {
                if (now["paths"]![path]?[method] is { } operation)
                {
                    Operation($"{method} {path}", item![method]!, operation, found);
                }
                else
                {
                    found.Add($"{method} {path} is gone");
                }
            }
        }

        HashSet<string> asked = Reached(old, "requestBody"),
            told = Reached(old, "responses");
        foreach ((string name, JsonNode? schema) in old["components"]!["schemas"]!.AsObject())
        {
            if (now["components"]!["schemas"]![name] is { } changed)
            {
                Schema(name, schema!, changed, asked.Contains(name), told.Contains(name), found);
            }
            else
            {
                found.Add($"{name} is gone");
            }
        }

        return found;
    }

    private static void Operation(string name, JsonNode old, JsonNode now, List<string> found)
    {
        Dictionary<string, JsonNode> parameters = ByName(now),
            before = ByName(old);
        found.AddRange(before.Keys.Where(key => !parameters.ContainsKey(key)).Select(key => $"{name}: the parameter {key} is gone"));
        found.AddRange(
            parameters
                .Where(pair => IsRequired(pair.Value) && !(before.TryGetValue(pair.Key, out JsonNode? was) && IsRequired(was)))
                .Select(pair => $"{name}: the parameter {pair.Key} is required")
        );
        foreach ((string status, JsonNode? response) in old["responses"]!.AsObject())
        {
            JsonNode? changed = now["responses"]![status];
            if (changed is null)
            {
                found.Add($"{name}: the answer {status} is gone");
                continue;
            }

            found.AddRange(
                (response!["content"]?.AsObject() ?? [])
                    .Where(form => changed["content"]?[form.Key] is null)
                    .Select(form => $"{name}: {status} as {form.Key} is gone")
            );
        }

        found.AddRange(
            (old["requestBody"]?["content"]?.AsObject() ?? [])
                .Where(form => now["requestBody"]?["content"]?[form.Key] is null)
                .Select(form => $"{name}: an order as {form.Key} is gone")
        );
    }

    private static void Schema(string name, JsonNode old, JsonNode now, bool asked, bool told, List<string> found)
    {
        Type(name, old, now, found);
        string[] required = Required(old),
            requiredNow = Required(now);
        if (asked)
        {
            found.AddRange(requiredNow.Except(required).Select(property => $"{name}.{property} is required"));
        }

        if (told)
        {
            found.AddRange(required.Except(requiredNow).Select(property => $"{name}.{property} is no longer required"));
        }

        found.AddRange(Words(old).Except(Words(now)).Select(word => $"{name} no longer takes {word}"));
        foreach ((string property, JsonNode? schema) in old["properties"]?.AsObject() ?? [])
        {
            if (now["properties"]?[property] is { } changed)
            {
                Type($"{name}.{property}", schema!, changed, found);
            }
            else
            {
                found.Add($"{name}.{property} is gone");
            }
        }
    }

    // A range or a form that is narrower is for the rules to tell; a type is for the program that was generated from it.
    private static void Type(string name, JsonNode old, JsonNode now, List<string> found)
    {
        foreach (string word in (string[])["type", "$ref", "items", "oneOf", "anyOf", "allOf"])
        {
            JsonNode? was = Bare(old[word]),
                becomes = Bare(now[word]);
            if (!JsonNode.DeepEquals(was, becomes))
            {
                found.Add($"{name} has another type: {was?.ToJsonString()} becomes {becomes?.ToJsonString()}");
            }
        }
    }

    // Words for people and ranges are no part of a type.
    private static JsonNode? Bare(JsonNode? node) =>
        node switch
        {
            JsonObject record => new JsonObject(
                record
                    .Where(pair => pair.Key is "type" or "$ref" or "items" or "oneOf" or "anyOf" or "allOf")
                    .Select(pair => new KeyValuePair<string, JsonNode?>(pair.Key, Bare(pair.Value)))
            ),
            JsonArray list => new JsonArray([.. list.Select(Bare)]),
            _ => node?.DeepClone(),
        };

    private static HashSet<string> Reached(JsonNode document, string part)
    {
        HashSet<string> reached = [];
        foreach (
            JsonNode? operation in document["paths"]!
                .AsObject()
                .SelectMany(path => path.Value!.AsObject().Where(pair => Methods.Contains(pair.Key)).Select(pair => pair.Value))
        )
        {
            Follow(operation![part]);
        }

        return reached;

        void Follow(JsonNode? node)
        {
            if (node is JsonArray list)
            {
                foreach (JsonNode? element in list)
                {
                    Follow(element);
                }
            }
            else if (node is JsonObject record)
            {
                foreach ((string key, JsonNode? value) in record)
                {
                    if (key == "$ref" && value!.GetValue<string>().Split('/')[^1] is { } name && reached.Add(name))
                    {
                        Follow(document["components"]!["schemas"]![name]);
                    }
                    else
                    {
                        Follow(value);
                    }
                }
            }
        }
    }

    private static Dictionary<string, JsonNode> ByName(JsonNode operation) =>
        (operation["parameters"]?.AsArray() ?? []).ToDictionary(
            parameter => $"{parameter!["in"]} {parameter["name"]}",
            parameter => parameter!
        );

    private static bool IsRequired(JsonNode parameter) => parameter["required"]?.GetValue<bool>() == true;

    private static string[] Required(JsonNode schema) =>
        [.. (schema["required"]?.AsArray() ?? []).Select(name => name!.GetValue<string>())];

    private static IEnumerable<string> Words(JsonNode schema) => (schema["enum"]?.AsArray() ?? []).Select(word => word!.ToJsonString());
}
