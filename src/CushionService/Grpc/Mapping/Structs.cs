using System.Text.Json;
using System.Text.Json.Nodes;
using Google.Protobuf.WellKnownTypes;

namespace CushionService.Grpc.Mapping;

/// <summary>Values by name, which no message describes, as the protocol's own structure.</summary>
internal static class Structs
{
    /// <summary>The structure of a JSON object.</summary>
    /// <param name="values">Objects, lists, text, numbers, and yes or no; numbers become doubles, as the protocol has no
    /// others.</param>
    public static Struct Write(JsonObject values)
    {
        Struct message = new();
        foreach ((string name, JsonNode? value) in values)
        {
            message.Fields.Add(name, Write(value));
        }

        return message;
    }

    private static Value Write(JsonNode? value) =>
        value switch
        {
            null => Value.ForNull(),
            JsonObject inner => Value.ForStruct(Write(inner)),
            JsonArray list => Value.ForList([.. list.Select(Write)]),
            _ => value.GetValueKind() switch
            {
                JsonValueKind.True or JsonValueKind.False => Value.ForBool(value.GetValue<bool>()),
                JsonValueKind.Number => Value.ForNumber(value.GetValue<double>()),
                _ => Value.ForString(value.GetValue<string>()),
            },
        };
}
