using System.Text.Json.Nodes;
using CushionService.Json;

namespace CushionService.Tests.Pages;

/// <summary>JSON as a short example shows it.</summary>
internal static class ExampleJson
{
    /// <summary>The values of what an example shows: its members, and as many elements of a list, from a whole answer.</summary>
    public static JsonNode? Part(JsonNode? shown, JsonNode? whole) =>
        (shown, whole) switch
        {
            (JsonObject members, JsonObject all) => new JsonObject(
                members.Select(member =>
                {
                    Assert.True(all.ContainsKey(member.Key), $"The answer has no {member.Key}.");
                    return KeyValuePair.Create(member.Key, Part(member.Value, all[member.Key]));
                })
            ),
            (JsonArray some, JsonArray all) => new JsonArray([.. some.Zip(all, Part)]),
            _ => whole?.DeepClone(),
        };

    /// <summary>A member a line, and an element a line where a list holds objects.</summary>
    public static string Text(JsonNode example) =>
        $"{{\n{string.Join(",\n", example.AsObject().Select(member => $"  \"{member.Key}\": {Member(member.Value)}"))}\n}}";

    private static string Member(JsonNode? value) =>
        value is JsonArray { Count: > 0 } list && list[0] is JsonObject
            ? $"[\n{string.Join(",\n", list.Select(element => $"    {Line(element)}"))}\n  ]"
            : Line(value);

    private static string Line(JsonNode? value) =>
        value switch
        {
            JsonObject members => $"{{ {string.Join(", ", members.Select(member => $"\"{member.Key}\": {Line(member.Value)}"))} }}",
            JsonArray elements => $"[{string.Join(", ", elements.Select(Line))}]",
            null => "null",
            _ => value.ToJsonString(ContractJson.Options),
        };
}
