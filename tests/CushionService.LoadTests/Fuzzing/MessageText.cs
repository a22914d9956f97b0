using System.Text.Json.Nodes;
using CushionService.Grpc.V1;
using Google.Protobuf;
using Google.Protobuf.Reflection;
using FieldType = Google.Protobuf.Reflection.FieldType;

namespace CushionService.LoadTests.Fuzzing;

/// <summary>Writes an order in JSON as a message, as far as it goes: what has no place in a message is left out.</summary>
internal static class MessageText
{
    /// <summary>The bytes of a request with the order; an empty order when the text is no JSON.</summary>
    /// <param name="json">The order.</param>
    /// <param name="fields">The fields asked for; all when left out.</param>
    public static byte[] Of(string json, params IReadOnlyList<string> fields)
    {
        Order order = new();
        try
        {
            if (JsonNode.Parse(json) is JsonObject record)
            {
                Fill(order, record);
            }
        }
        catch (Exception fault) when (fault is System.Text.Json.JsonException or ArgumentException)
        {
            // A text that is no JSON, or has a name twice, has no message.
        }

        EstimateYardageRequest request = new() { Order = order };
        if (fields.Count > 0)
        {
            request.Fields = new Google.Protobuf.WellKnownTypes.FieldMask { Paths = { fields } };
        }

        return request.ToByteArray();
    }

    private static void Fill(IMessage message, JsonObject record)
    {
        foreach (FieldDescriptor field in message.Descriptor.Fields.InDeclarationOrder())
        {
            if (!record.TryGetPropertyValue(field.JsonName, out JsonNode? value) || value is null)
            {
                continue;
            }

            if (!field.IsRepeated)
            {
                if (One(field, value) is { } one)
                {
                    field.Accessor.SetValue(message, one);
                }
            }
            else if (value is JsonArray list)
            {
                var target = (System.Collections.IList)field.Accessor.GetValue(message);
                foreach (object element in list.OfType<JsonNode>().Select(node => One(field, node)).OfType<object>())
                {
                    target.Add(element);
                }
            }
        }
    }

    private static object? One(FieldDescriptor field, JsonNode value)
    {
        if (field.FieldType == FieldType.Message)
        {
            return field.MessageType == Measure.Descriptor ? MeasureOf(value)
                : value is JsonObject record ? Filled(field.MessageType, record)
                : null;
        }

        return value is not JsonValue leaf
            ? null
            : field.FieldType switch
            {
                FieldType.String => leaf.TryGetValue(out string? text) ? text : null,
                FieldType.Double => leaf.TryGetValue(out double number) ? number : null,
                FieldType.Int32 => leaf.TryGetValue(out double number) ? (int)Math.Clamp(number, int.MinValue, int.MaxValue) : null,
                FieldType.Bool => leaf.TryGetValue(out bool flag) ? flag : null,
                FieldType.Enum => leaf.TryGetValue(out string? word) ? Number(field.EnumType, word)
                : leaf.TryGetValue(out double number) ? Enum.ToObject(field.EnumType.ClrType, (int)Math.Clamp(number, -9, 99))
                : null,
                _ => null,
            };
    }

    private static IMessage Filled(MessageDescriptor type, JsonObject record)
    {
        IMessage inner = (IMessage)Activator.CreateInstance(type.ClrType)!;
        Fill(inner, record);
        return inner;
    }

    private static Measure? MeasureOf(JsonNode value) =>
        value is not JsonValue leaf ? null
        : leaf.TryGetValue(out string? text) ? new Measure { Text = text }
        : leaf.TryGetValue(out double number) ? new Measure { Number = number }
        : null;

    private static object? Number(EnumDescriptor type, string word)
    {
        string ending = "_" + word.Replace('-', '_').ToUpperInvariant();
        EnumValueDescriptor? found = type.Values.FirstOrDefault(value => value.Name.EndsWith(ending, StringComparison.Ordinal));
        return found is null ? null : Enum.ToObject(type.ClrType, found.Number);
    }
}
